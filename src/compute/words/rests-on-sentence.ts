import { say, sayCount } from '../../model/say.ts';
import type { Findings } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { measureName } from '../tables/measures.ts';
import { headlineOf } from './headline.ts';
import { listed, type Words } from './words.ts';

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
        ? sayCount(
            plants[0]!,
            ', {count} plant of each of {treatments} treatments',
            ', {count} plants of each of {treatments} treatments',
            { treatments: treatments.length },
          )
        : say(', {least} to {most} plants of each of {treatments} treatments', {
            least: Math.min(...plants),
            most: Math.max(...plants),
            treatments: treatments.length,
          });
  const total = plants.reduce((sum, count) => sum + count, 0);
  const lost = lostInWords(counts);
  const rests = say('It rests on the {variable} {measure} of {plants}{each}, in {containers}.', {
    variable: findings.variable.name.toLowerCase(),
    measure: measureName(measure),
    plants: sayCount(total, '{count} plant', '{count} plants'),
    each,
    containers: sayCount(containers, '{count} container', '{count} containers'),
  });
  return [rests + lost];
}

/** "One plant died." and the like, only what occurred. */
function lostInWords(counts: Findings['counts']): string {
  const kinds: [number, string][] = [
    [counts.dead, sayCount(counts.dead, '{count} died', '{count} died')],
    [counts.no_regrowth, sayCount(counts.no_regrowth, '{count} did not regrow', '{count} did not regrow')],
    [
      counts.not_weighed,
      sayCount(
        counts.not_weighed,
        '{count} went unweighed at some cut',
        '{count} went unweighed at some cut',
      ),
    ],
    [counts.culled, sayCount(counts.culled, '{count} was culled', '{count} were culled')],
  ];
  const lost = kinds.filter(([count]) => count > 0).map(([, said]) => said);
  if (lost.length === 0) return '';
  const nothing = counts.dead + counts.no_regrowth > 0;
  // The figure below it leaves them out, so that its order may be another.
  const asNothing = nothing ? ` ${say('What died or did not regrow counts as 0 in it.')}` : '';
  return ` ${say('Of what was set, {lost}.', { lost: listed(lost) })}${asNothing}`;
}
