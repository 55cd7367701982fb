/** What comes out of a weigh-in, and the check of it; loaded only when it is wanted. */
import { checkTaken } from '../../check/check-taken.ts';
import { hasError, type Problem } from '../../model/problem.ts';
import { exportedFiles, exportedTables, filesToCheck, zipOfFolder } from '../../weigh/exported-files.ts';
import { editLines, trialEdits, type TrialEdits } from '../../weigh/trial-edits.ts';
import type { Session } from './session.ts';

export { editLines, hasError, trialEdits, type TrialEdits };

/** What the check finds in the folder as the weigh-in leaves it, were the trial called finished. */
export function problemsOf({ opened, state }: Session, today: string): readonly Problem[] {
  const edits = trialEdits(state(), today);
  const { id } = opened.trial;
  const files = filesToCheck(opened, state(), edits);
  const taken = new Map([...files].map(([path, bytes]) => [`${id}/${path}`, bytes]));
  return checkTaken({ files: taken, refused: [] }, today).problems;
}

/** The tables as files for the device's share sheet or to be downloaded one by one. */
export function tableFiles({ opened, state }: Session): File[] {
  return [...exportedTables(opened, state())].map(
    ([name, text]) => new File([text], name, { type: 'text/csv' }),
  );
}

/** The whole folder as a zip. */
export function zipFile({ opened, state }: Session, edits: TrialEdits, today: string): File {
  const { id } = opened.trial;
  const bytes = zipOfFolder(id, exportedFiles(opened, state(), edits), today);
  return new File([bytes as Uint8Array<ArrayBuffer>], `${id}.zip`, { type: 'application/zip' });
}

/** Every entry with its moment, those taken back too, so that the record of the day can be kept. */
export function journalFile({ opened, journal }: Session): File {
  const text = `${JSON.stringify({ trial: opened.trial.id, entries: journal() }, null, 2)}\n`;
  return new File([text], `${opened.trial.id}-weigh-in.json`, { type: 'application/json' });
}
