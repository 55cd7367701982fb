import { waterTable } from '../../compute/growing/water-table.ts';
import { say } from '../../model/say.ts';
import { askedFindings, trialAttribute } from '../asked-trial.ts';
import type { SheetComponent } from '../component.ts';
import { named } from '../named.ts';
import { refuseNoValue } from '../refuse.ts';

export const water: SheetComponent = {
  name: 'Water',
  stands: 'on its own',
  holds: 'nothing',
  meaning: 'The water that each container used, with the uncertainty of the readings.',
  attributes: [trialAttribute],
  example: ({ item }) => (item.findings && item.findings.water.length > 0 ? '<Water />' : null),
  resolve(asked) {
    const found = askedFindings(asked);
    if (found === null) return null;
    const { trial, findings } = found;
    const table = waterTable(trial, findings.water);
    if (table === null) return refuseNoValue(asked, 'trial', say('the trial has no readings of its water'));
    return [
      {
        kind: 'tables',
        tables: [{ ...table, caption: named(asked, trial, table.caption) }],
        page: `trials/${trial.id}/`,
      },
    ];
  },
};
