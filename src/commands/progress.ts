/** How far a long piece of work has come, told on standard error. */
import { say } from '../model/say.ts';

export interface Progress {
  /** Says how many of all are done. */
  done(count: number, of: number): void;
  /** Ends the telling. */
  end(): void;
}

/** Nothing is said of work that is over sooner than this. */
const patience = 2000;
/** Milliseconds between two lines: often on a terminal, where a line replaces the one before. */
const everyOnTerminal = 100;
const everyElsewhere = 10_000;

/**
 * Shows done of how many and the time left: on a terminal in one line that moves, elsewhere in plain lines.
 *
 * @param what the work in a word, said when there is something to show: by then the site's language is known
 */
export function progressOf(what: () => string, stream: NodeJS.WriteStream = process.stderr): Progress {
  const started = performance.now();
  const every = stream.isTTY ? everyOnTerminal : everyElsewhere;
  let next = started + (stream.isTTY ? patience / 4 : patience);
  let shown = false;
  return {
    done(count, of) {
      const now = performance.now();
      if (now < next) return;
      next = now + every;
      shown = true;
      const left = Math.ceil((((now - started) / count) * (of - count)) / 1000);
      const line = lineOf(what(), count, of, left);
      stream.write(stream.isTTY ? `\r\u001b[2K${line}` : `${line}\n`);
    },
    end() {
      if (shown && stream.isTTY) stream.write('\r\u001b[2K');
    },
  };
}

function lineOf(what: string, count: number, of: number, seconds: number): string {
  return seconds < 90
    ? say('{what}: {count} of {of} trials, {seconds} s left', { what, count, of, seconds })
    : say('{what}: {count} of {of} trials, {minutes} min left', {
        what,
        count,
        of,
        minutes: Math.ceil(seconds / 60),
      });
}
