import { language } from '../../model/language.ts';
import { today } from '../local-day.ts';
import type { CheckAnswer, CheckRequest } from './check-worker.ts';
import type { PageFile } from './page-files.ts';

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
  options: Pick<CheckRequest, 'withTrials' | 'table'> = { withTrials: false, table: 'no' },
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
    asked.postMessage({
      files,
      today: today(),
      language: language(),
      cultivars: null,
      ...options,
    } satisfies CheckRequest);
  });
}
