import type { CheckAnswer, CheckRequest } from './check-worker.ts';
import type { PageFile } from './page-files.ts';

/** The grower's own day, by which a date lies in the future: year-month-day. */
function today(): string {
  const now = new Date();
  const two = (number: number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

let worker: Worker | null = null;
let isBusy = false;

/** The worker, loaded when first needed; one that is still at an older question is given up. */
function idleWorker(): Worker {
  if (isBusy) {
    worker?.terminate();
    worker = null;
  }
  isBusy = true;
  worker ??= new Worker(new URL('./check-worker.ts', import.meta.url), { type: 'module' });
  return worker;
}

/**
 * Checks files beside the page. A check that is still running is given up, and never answers. Nothing leaves the
 * browser.
 */
export function checkFiles(
  files: readonly PageFile[],
  options: Pick<CheckRequest, 'cultivars' | 'withTrials'> = { cultivars: null, withTrials: false },
): Promise<CheckAnswer> {
  const asked = idleWorker();
  return new Promise((done) => {
    const finish = (answer: CheckAnswer) => {
      isBusy = false;
      done(answer);
    };
    asked.onmessage = ({ data }: MessageEvent<CheckAnswer>) => finish(data);
    asked.onerror = ({ message }) => {
      // A worker that fell over, for want of memory perhaps, is not asked again.
      asked.terminate();
      worker = null;
      finish({ fault: message });
    };
    asked.postMessage({ files, today: today(), ...options } satisfies CheckRequest);
  });
}
