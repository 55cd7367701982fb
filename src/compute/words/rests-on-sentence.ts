import type { Findings } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { measureNames } from '../tables/measures.ts';
import { headlineOf } from './headline.ts';
import { listed, type Words } from './words.ts';

const counted = (count: number, thing: string): string => `${count} ${thing}${count === 1 ? '' : 's'}`;

/** What the finding rests on: how much was set and weighed, of what, where, and what was lost on the way. */
export function restsOnSentence(trial: Trial, findings: Findings): Words {
  const { counts, treatments } = findings;
  const { measure } = headlineOf(trial, findings);
  const containers = trial.metadata.containers.length;
  const plants = treatments.map((each) => each.plants);
  const alike = plants.every((count) => count === plants[0]);
  const each =
    treatments.length < 2
      ? ''
      : alike
        ? `, ${counted(plants[0]!, 'plant')} of each of ${treatments.length} treatments`
        : `, ${Math.min(...plants)} to ${Math.max(...plants)} plants of each of ${treatments.length} treatments`;
  const total = plants.reduce((sum, count) => sum + count, 0);
  const lost = lostInWords(counts);
  return [
    `It rests on the ${findings.variable.name.toLowerCase()} ${measureNames[measure]} of ` +
      `${counted(total, 'plant')}${each}, in ${counted(containers, 'container')}.${lost}`,
  ];
}

/** "One plant died." and the like, only what occurred. */
function lostInWords(counts: Findings['counts']): string {
  const kinds: [number, string][] = [
    [counts.dead, 'died'],
    [counts.no_regrowth, 'did not regrow'],
    [counts.not_weighed, 'went unweighed at some cut'],
    [counts.culled, counts.culled === 1 ? 'was culled' : 'were culled'],
  ];
  const lost = kinds.filter(([count]) => count > 0).map(([count, what]) => `${count} ${what}`);
  return lost.length === 0 ? '' : ` Of what was set, ${listed(lost)}.`;
}
