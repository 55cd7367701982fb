import type { CheckAnswer, CheckRequest } from './check-worker.ts';
import type { PageFile } from './page-files.ts';

/** The grower's own day, by which a date lies in the future: year-month-day. */
function today(): string {
  const now = new Date();
  const two = (number: number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

let running: Worker | null = null;

/**
 * Checks files in a worker of its own, which is loaded only now and let go of afterwards with all that it read. A
 * check that is still running is given up, and never answers. Nothing leaves the browser.
 */
export function checkFiles(
  files: readonly PageFile[],
  options: Pick<CheckRequest, 'cultivars' | 'withTrials'> = { cultivars: null, withTrials: false },
): Promise<CheckAnswer> {
  running?.terminate();
  const worker = new Worker(new URL('./check-worker.ts', import.meta.url), { type: 'module' });
  running = worker;
  return new Promise((done) => {
    const finish = (answer: CheckAnswer) => {
      worker.terminate();
      if (running === worker) running = null;
      done(answer);
    };
    worker.addEventListener('message', ({ data }: MessageEvent<CheckAnswer>) => finish(data));
    worker.addEventListener('error', ({ message }) => finish({ fault: message }));
    worker.postMessage({ files, today: today(), ...options } satisfies CheckRequest);
  });
}
