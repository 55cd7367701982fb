/** The other end of a crew: a thread that does the tasks it is sent and answers each by its number. */
import { parentPort } from 'node:worker_threads';
import { tasks } from './tasks.ts';
import type { Asked, Answer } from './crew.ts';

parentPort?.on('message', (asked: Asked) => {
  void answerTo(asked).then((answer) => parentPort?.postMessage(answer));
});

async function answerTo({ number, task, input }: Asked): Promise<Answer> {
  try {
    return { number, output: await (tasks[task] as (given: unknown) => Promise<unknown>)(input) };
  } catch (error) {
    return { number, error };
  }
}
