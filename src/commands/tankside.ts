/** The command line: `npm run -s tankside -- <verb> [folder]`, started by launch.mjs on the pinned Node. */
import { enableCompileCache } from 'node:module';
import { join } from 'node:path';
import { say } from '../model/say.ts';
import { root } from './folders.ts';
import { inPlainWords } from './in-plain-words.ts';
import { isWrongUse, usage, wrongUse } from './usage.ts';

/** A verb takes the words after it and answers with the exit code. */
interface Command {
  run(args: string[]): Promise<number>;
}

const commands = new Map<string, () => Promise<Command>>([
  ['check', () => import('./check.ts')],
  ['findings', () => import('./findings.ts')],
  ['seasons', () => import('./seasons.ts')],
  ['plan', () => import('./plan.ts')],
  ['import', () => import('./import.ts')],
  ['gather', () => import('./gather.ts')],
  ['release', () => import('./release.ts')],
  ['print', () => import('./print.ts')],
  ['sheet', () => import('./sheet.ts')],
  ['build', () => import('./build.ts')],
  ['serve', () => import('./serve.ts')],
  ['start', () => import('./start.ts')],
  ['dev', () => import('./dev.ts')],
  ['test', () => import('./test.ts')],
  ['bench', () => import('./bench.ts')],
]);

/** These load the same program each time; the others also load what Astro makes anew, which would pile up. */
const keepsCompiled = new Set([
  'check',
  'findings',
  'seasons',
  'plan',
  'import',
  'gather',
  'release',
  'sheet',
]);

async function tankside([verb, ...args]: string[]): Promise<number> {
  if (verb === 'help' || verb === '--help' || verb === '-h' || args.includes('--help')) {
    process.stdout.write(usage);
    return 0;
  }
  try {
    if (verb === undefined) throw wrongUse('A verb is missing.');
    const load = commands.get(verb);
    if (load === undefined) throw wrongUse(`There is no verb "${verb.slice(0, 60)}".`);
    // The next run then starts sooner (check of the demo in 0.8 s for 1.0); a disk that is read only is passed over.
    if (keepsCompiled.has(verb)) enableCompileCache(join(root, 'node_modules', '.tankside-compiled'));
    const command = await load();
    return await command.run(args);
  } catch (error) {
    if (isWrongUse(error)) {
      // Node goes on to tell programmers how to pass what looks like an option.
      const [told] = error.message.split('. To specify ');
      process.stderr.write(`${told ?? ''}\n\n${usage}`);
      return 2;
    }
    process.stderr.write(`${inOneSentence(error)}\n`);
    return 1;
  }
}

/** What a person is shown of a fault nobody foresaw; the stack is for those who ask for it. */
function inOneSentence(error: unknown): string {
  if (!(error instanceof Error)) return say('Tankside stopped: {fault}.', { fault: String(error) });
  if (process.env['TANKSIDE_DEBUG'] === '1') return error.stack ?? error.message;
  const plain = inPlainWords(error);
  if (plain !== null) return say('Tankside stopped: {fault}', { fault: plain });
  const fault = error.message.split('\n')[0]?.replace(/\.$/, '') ?? error.name;
  return say('Tankside stopped: {fault}. (TANKSIDE_DEBUG=1 shows where.)', { fault });
}

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  // The reader of a pipe has seen enough (such as `head`): nothing is wrong.
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});
process.exitCode = await tankside(process.argv.slice(2));
