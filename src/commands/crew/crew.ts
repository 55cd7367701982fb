/** Threads that take part in the work on many trials. */
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { Progress } from '../progress.ts';
import type { Tasks } from './tasks.ts';

/** What a thread is asked to do, and what it answers. */
export interface Asked {
  number: number;
  task: keyof Tasks;
  input: unknown;
}
export type Answer = { number: number; output: unknown } | { number: number; error: unknown };

export interface Crew {
  /** Two places in the queue of each thread, so that none waits while an answer is on its way; none in an empty crew. */
  hands<Task extends keyof Tasks>(task: Task): Tasks[Task][];
  /** Ends the threads. */
  dismiss(): Promise<void>;
}

/** Nobody. */
export const noCrew: Crew = { hands: () => [], dismiss: () => Promise.resolve() };

/** With fewer trials, starting a thread takes longer than it saves. */
const enoughTrials = 24;
const mostThreads = 6;

/** A crew for so many trials: a thread for each further processor of the machine, none where it would not pay. */
export const crewFor = (trials: number): Crew =>
  trials < enoughTrials ? noCrew : crewOf(Math.min(mostThreads, availableParallelism() - 1));

/** A crew of so many threads. */
export function crewOf(count: number): Crew {
  const threads = Array.from({ length: count }, startThread);
  return {
    hands: <Task extends keyof Tasks>(task: Task) =>
      [...threads, ...threads].map(({ ask }) => ((input: unknown) => ask(task, input)) as Tasks[Task]),
    dismiss: async () => {
      await Promise.all(threads.map(({ worker }) => worker.terminate()));
    },
  };
}

function startThread() {
  const worker = new Worker(new URL('thread.ts', import.meta.url));
  // The command ends when its own work is done.
  worker.unref();
  const waiting = new Map<number, PromiseWithResolvers<unknown>>();
  let asked = 0;
  worker.on('message', (answer: Answer) => {
    const settle = waiting.get(answer.number);
    waiting.delete(answer.number);
    if ('error' in answer) settle?.reject(answer.error);
    else settle?.resolve(answer.output);
    if (waiting.size === 0) worker.unref();
  });
  let failed: Error | null = null;
  worker.on('error', (error: Error) => {
    failed = error;
    for (const { reject } of waiting.values()) reject(error);
  });
  const ask = (task: keyof Tasks, input: unknown): Promise<unknown> => {
    if (failed !== null) return Promise.reject(failed);
    const number = (asked += 1);
    const settle = Promise.withResolvers<unknown>();
    waiting.set(number, settle);
    worker.ref();
    worker.postMessage({ number, task, input } satisfies Asked);
    return settle.promise;
  };
  return { worker, ask };
}

/**
 * Has every input worked on by some hand, each taking the next when it is done with one.
 *
 * @returns the outputs in the order of the inputs
 */
export async function shareOut<Input, Output>(
  inputs: readonly Input[],
  hands: readonly ((input: Input) => Promise<Output>)[],
  progress: Progress,
): Promise<Output[]> {
  const outputs: Output[] = [];
  let next = 0;
  let done = 0;
  const work = async (hand: (input: Input) => Promise<Output>) => {
    while (next < inputs.length) {
      const index = next++;
      outputs[index] = await hand(inputs[index]!);
      done += 1;
      progress.done(done, inputs.length);
    }
  };
  await Promise.all(hands.map(work));
  progress.end();
  return outputs;
}
