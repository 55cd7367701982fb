import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { positionPlace } from '../places.ts';
import { allotments, coarsestUnit, unitKeys } from '../strata.ts';
import { treatmentInWords } from '../treatment-words.ts';

const rule: Rule = {
  rule: 'plain-alternation',
  severity: 'note',
  acceptable: true,
  title: 'Lot that looks like none',
  meaning:
    'The trial says that lots were drawn, but the treatments follow each other in one and the same order throughout, as if laid out by hand.',
  example: 'the treatments follow each other in the same order 4 times, though design.randomised is true',
  check,
};
export default rule;

/** As many repeats of one order are beyond chance for three treatments or more; for two they must be more. */
const fewestRepeats = 3;
const fewestUnits = 8;

function check({ metadata, layout }: Facts, report: Report): void {
  const { design, factors = [] } = metadata.draft;
  if (design?.randomised !== true || layout === null || !layout.treated) return;
  const unit = allotments.findLast((stratum) =>
    factors.some(({ id }) => coarsestUnit(layout.positions, (treatment) => treatment[id] ?? '') === stratum),
  );
  const keys = unitKeys(layout.positions, unit ?? 'position', treatmentInWords);
  const period = new Set(keys).size;
  if (period < 2 || keys.length < Math.max(fewestUnits, period * fewestRepeats)) return;
  if (!keys.every((key, index) => key === keys[index % period])) return;
  const message = say(
    'the {treatments} treatments follow each other in the same order {times} times, though design.randomised is true; were lots drawn?',
    { treatments: period, times: Math.floor(keys.length / period) },
  );
  const place = positionPlace(layout, 0, factors[0]?.id) ?? metadata.place(['design', 'randomised']);
  report(rule, { file: layout.table === null ? 'trial.yaml' : 'layout.csv', place, message });
}
