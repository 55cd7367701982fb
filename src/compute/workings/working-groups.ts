import { say } from '../../model/say.ts';
import type { Findings } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import type { LevelNames } from '../format/level-names.ts';
import { measuresShown } from '../tables/measures.ts';
import { treatmentWorkings } from './treatment-workings.ts';
import type { TreatmentWorking } from './working.ts';

/** The workings of a trial: of all cuts together and, where there are several, of each. */
export function workingGroups(
  trial: Trial,
  findings: Findings,
  names: LevelNames,
): { heading: string; workings: TreatmentWorking[] }[] {
  const groups = [
    { cut: 'all' as const, heading: say('All cuts together'), descriptions: findings.treatments },
    ...findings.treatments_by_cut.map(({ cut, treatments }) => ({
      cut,
      heading: say('Cut {cut}', { cut }),
      descriptions: treatments,
    })),
  ];
  return groups.map(({ cut, heading, descriptions }) => ({
    heading,
    workings: treatmentWorkings(trial, findings, names, cut, descriptions, measuresShown(descriptions)),
  }));
}
