import { type Drawn, drawLots } from '../../compute/lots/draw-lots.ts';
import { say, sayCount } from '../../model/say.ts';
import type { Position, TrialMetadata } from '../../model/trial.ts';
import type { Facts } from '../facts.ts';
import { positionInWords, whereOf } from '../grid.ts';
import { positionPlace } from '../places.ts';
import type { Report, Rule } from '../rule.ts';
import { coarsestUnit } from '../strata.ts';
import { treatmentInWords } from '../treatment-words.ts';

const rule: Rule = {
  rule: 'lot-contradicted',
  severity: 'error',
  acceptable: true,
  title: 'Layout not as its seed draws it',
  meaning:
    'design.lot says by which published method the layout was drawn from the seed, so that anyone can draw it again. A layout that differs was drawn otherwise, or changed afterwards.',
  example:
    'seed 8812 draws cultivar slate-egret for T1 row 1 column 2, and layout.csv has cultivar cobalt-wren',
  check,
};
export default rule;

type Design = TrialMetadata['design'];

function check({ metadata, layout }: Facts, report: Report): void {
  const { design, factors = [], containers = [] } = metadata.draft;
  if (design?.lot === undefined) return;
  const reportLot = (message: string) =>
    report(rule, { file: 'trial.yaml', place: metadata.place(['design', 'lot']), message });
  if (!design.randomised)
    return reportLot(say('design.lot says how lots were drawn, but design.randomised is false'));
  const { seed } = design;
  if (seed === undefined)
    return reportLot(
      say('design.lot says how lots were drawn, but there is no design.seed to draw them from again'),
    );
  if (layout === null || !layout.treated || layout.positions.length === 0) return;
  // Where these are refused, the order of the lots cannot be known.
  if (metadata.lost.has('containers') || metadata.lost.has('factors')) return;
  const { positions } = layout;
  const plan = {
    arrangement: design.arrangement,
    seed,
    containers: containers.map(({ id }) => id),
    factors: factors.map(({ id, levels }) => ({
      id,
      levels: levels.map((level) => level.id),
      unit: unitOfFactor(positions, design, id),
    })),
  };
  const drawn: Drawn<Position> = drawLots(positions, plan, ({ treatment }) => treatment);
  if ('reason' in drawn)
    return reportLot(say('the lots cannot be drawn again: {reason}', { reason: drawn.reason }));
  const drawnFor = (position: Position) => treatmentInWords(drawn.treatments.get(position) ?? {});
  const others = positions.filter((position) => drawnFor(position) !== treatmentInWords(position.treatment));
  const [first] = others;
  if (first === undefined) return;
  const found = treatmentInWords(first.treatment);
  const expected = drawnFor(first);
  report(rule, {
    file: layout.table === null ? 'trial.yaml' : 'layout.csv',
    place:
      positionPlace(layout, positions.indexOf(first), factors[0]?.id) ?? metadata.place(['design', 'lot']),
    found,
    expected,
    message: sayCount(
      others.length,
      'seed {seed} draws {expected} for {place}, and the layout has {found} ({count} position differs of {all}); correct the layout or the seed, or take design.lot away where it was drawn otherwise',
      'seed {seed} draws {expected} for {place}, and the layout has {found} ({count} positions differ of {all}); correct the layout or the seed, or take design.lot away where it was drawn otherwise',
      { seed, expected, place: positionInWords(first), found, all: positions.length },
    ),
    where: whereOf(first),
  });
}

/** In a split plot each factor has a unit of its own, read off the layout; elsewhere all have what was allotted. */
function unitOfFactor(positions: readonly Position[], { arrangement, allotted }: Design, factor: string) {
  return arrangement === 'split plot'
    ? coarsestUnit(positions, (treatment) => treatment[factor] ?? '')
    : allotted;
}
