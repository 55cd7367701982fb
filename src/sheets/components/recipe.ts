import { nutrientsTables } from '../../compute/growing/nutrients-tables.ts';
import { saltsTable } from '../../compute/growing/salts-table.ts';
import { say } from '../../model/say.ts';
import { askedTrial, trialAttribute } from '../asked-trial.ts';
import type { SheetComponent } from '../component.ts';
import { named } from '../named.ts';
import { refuseNoValue } from '../refuse.ts';

export const recipe: SheetComponent = {
  name: 'Recipe',
  stands: 'on its own',
  holds: 'nothing',
  meaning:
    'What went into the solution: the salts in grams per litre, and what they amount to in mg/L of each element.',
  attributes: [
    { name: 'amounts', choices: ['no'], meaning: 'no leaves out the table of what the salts amount to.' },
    trialAttribute,
  ],
  example: ({ item }) => (saltsTable(item.trial) === null ? null : '<Recipe amounts="no" />'),
  resolve(asked) {
    const item = askedTrial(asked);
    if (item === null) return null;
    const { trial } = item;
    const salts = saltsTable(trial);
    if (salts === null)
      return refuseNoValue(asked, 'trial', say('there is no recipe: trial.yaml gives no salts'));
    const amounts = asked.attribute('amounts') === 'no' ? [] : nutrientsTables(trial).slice(0, 1);
    const tables = [salts, ...amounts].map((table) => ({
      ...table,
      caption: named(asked, trial, table.caption),
    }));
    return [{ kind: 'tables', tables, page: `trials/${trial.id}/` }];
  },
};
