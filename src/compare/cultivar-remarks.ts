import { recordPlace, type Remark } from '../compute/growing/remarks-of.ts';
import { positionKey } from '../compute/position-key.ts';
import type { Trial } from '../model/trial.ts';
import { cultivarFactor, type CultivarIdentity } from './cultivar-identity.ts';

/** What was written in a trial beside the weights of one cultivar. */
export function cultivarRemarks(trial: Trial, cultivar: string, of: CultivarIdentity['of']): Remark[] {
  const factor = cultivarFactor(trial);
  const own = new Set(
    trial.positions
      .filter(({ treatment }) => of(trial, factor && treatment[factor.id]) === cultivar)
      .map((position) => positionKey(position)),
  );
  return trial.harvest.flatMap((record, index) =>
    record.remark === '' || !own.has(positionKey(record))
      ? []
      : [{ place: recordPlace(record), status: record.status, text: record.remark, row: index + 2 }],
  );
}
