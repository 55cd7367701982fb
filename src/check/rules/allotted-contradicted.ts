import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { positionPlace } from '../places.ts';
import { allotments, coarsestUnit, firstVariation, unitCount, unitOf, type Allotment } from '../strata.ts';
import { treatmentInWords } from '../treatment-words.ts';

const rule: Rule = {
  rule: 'allotted-contradicted',
  severity: 'error',
  acceptable: false,
  title: 'Allotment contradicted by the layout',
  meaning:
    'What the treatments were allotted to is the experimental unit, and everything that the trial can support hangs on it. The layout must bear it out.',
  example:
    'design.allotted is position, but every container has one treatment, so the containers were allotted; write allotted: container',
  check,
};
export default rule;

function check({ metadata, layout }: Facts, report: Report): void {
  const { design, factors = [] } = metadata.draft;
  if (design === undefined || layout === null || !layout.treated || layout.positions.length === 0) return;
  const { positions } = layout;
  const varied = factors.filter(({ id }) => new Set(positions.map((one) => one.treatment[id])).size > 1);
  if (varied.length === 0) return;
  const declared = design.allotted;
  const place = metadata.place(['design', 'allotted']);
  const hasPlots = positions.some(({ plot }) => plot !== null);
  if (declared === 'plot' && !hasPlots) {
    const message = say(
      'design.allotted is plot, but layout.csv names no plots; add the column plot, or write what was allotted',
    );
    report(rule, { file: 'trial.yaml', place, found: declared, message });
    return;
  }
  const at = firstVariation(positions, declared, treatmentInWords);
  if (at !== -1) {
    // A plot of two treatments is reported as such.
    if (declared === 'plot') return;
    const position = positions[at]!;
    const unit = unitOf(position, declared);
    const first = positions.find((one) => unitOf(one, declared) === unit)!;
    const message = say(
      'design.allotted is {declared}, but {declared} {unit} has {first} and {other}; correct the layout, or write what was allotted',
      {
        declared,
        unit,
        first: treatmentInWords(first.treatment),
        other: treatmentInWords(position.treatment),
      },
    );
    report(rule, {
      file: 'layout.csv',
      place: positionPlace(layout, at, varied[0]?.id),
      found: treatmentInWords(position.treatment),
      message,
      where: unit,
    });
    return;
  }
  // The finest of the factors' own units is what was allotted; where two strata coincide either name is right.
  const units = varied.map(({ id }) => coarsestUnit(positions, (treatment) => treatment[id] ?? ''));
  const finest = allotments.findLast((stratum) => units.includes(stratum)) ?? 'position';
  if (unitCount(positions, finest) >= unitCount(positions, declared)) return;
  const message = coarserThan(declared, finest);
  report(rule, { file: 'trial.yaml', place, found: declared, expected: finest, message });
}

function coarserThan(declared: Allotment, allotted: Allotment): string {
  if (allotted === 'container')
    return say(
      'design.allotted is {declared}, but every container has one treatment, so the containers were allotted; write allotted: container',
      { declared },
    );
  // Positions are the finest units there are, so they are never the coarser ones.
  return say(
    'design.allotted is {declared}, but every plot has one treatment, so the plots were allotted; write allotted: plot',
    { declared },
  );
}
