import { digitsOfValue } from '../compute/format/digits-of-value.ts';
import { formatBare, formatQuantity } from '../compute/format/format-quantity.ts';
import { treatmentName } from '../compute/format/level-names.ts';
import { printedResolution } from '../compute/format/printed-resolution.ts';
import { tell } from '../compute/words/tell.ts';
import type { Words } from '../compute/words/words.ts';
import type { Figure } from '../model/figure.ts';
import type { Findings, PositionEffects } from '../model/findings.ts';
import type { Position, Trial } from '../model/trial.ts';
import { say } from '../model/say.ts';
import { cellsInBoth, columnsInBoth } from './columns-in-both.ts';
import { distinct, figureId } from './figure-id.ts';
import { type FigureOptions, withDefaults } from './figure-options.ts';
import { gridMap, type MapCell } from './grid-map.ts';
import { markKey, nameKey, scaleKey } from './map-keys.ts';
import { type PotOutcome, potOutcomes } from './pot-outcome.ts';
import { placeName } from './position-table.ts';
import { residualSteps, type ResidualSteps } from './residual-steps.ts';
import { shortNames } from './short-names.ts';
import { drawing } from './svg.ts';

interface Shared {
  trial: Trial;
  unit: string;
  digits: number;
  steps: ResidualSteps;
  nameOf: (position: Position) => string;
  short: ReadonlyMap<string, string>;
  fates: readonly PotOutcome[];
}

/**
 * The map of each container with what is left at each position after treatments, turned and drawn like the
 * map of the weights and shaded on one scale for the whole trial. Empty where no residuals were computed.
 */
export function drawResidualMaps(trial: Trial, findings: Findings, options: FigureOptions = {}): Figure[] {
  const { names } = withDefaults(trial, options);
  const entries = findings.position.filter(
    (entry, index, all) =>
      (entry.residuals ?? []).length > 0 &&
      all.findIndex(({ container }) => container === entry.container) === index,
  );
  const nameOf = (position: Position) => treatmentName(trial, position.treatment, names);
  const shared: Shared = {
    trial,
    unit: findings.variable.unit,
    digits: digitsOfValue(printedResolution(trial.metadata.variables[0])),
    steps: residualSteps(entries.flatMap(({ residuals = [] }) => residuals.map(({ residual }) => residual))),
    nameOf,
    short: shortNames(trial.positions.map(nameOf)),
    fates: potOutcomes(trial).outcomes,
  };
  const ids = distinct(entries.map(({ container }) => figureId('residual-map', container)));
  return entries.flatMap((entry, index) => drawContainer(entry, ids[index]!, shared) ?? []);
}

function drawContainer(entry: PositionEffects, id: string, shared: Shared): Figure | null {
  const { trial, unit, digits, steps, nameOf, short, fates } = shared;
  const container = trial.metadata.containers.find((each) => each.id === entry.container);
  if (!container) return null;
  const key = (place: { row: number; column: number }) => `${String(place.row)} ${String(place.column)}`;
  const residuals = new Map((entry.residuals ?? []).map((each) => [key(each), each.residual]));
  const positions = trial.positions.filter((position) => position.container === container.id);
  const names = new Set(positions.map(nameOf));
  const statuses = new Map(
    fates
      .filter(({ position }) => position.container === container.id)
      .map((fate) => [key(fate.position), fate.statuses]),
  );
  const cells = positions.map((position): MapCell => {
    const residual = residuals.get(key(position));
    const full = nameOf(position);
    return {
      row: position.row,
      column: position.column,
      shade: residual === undefined ? 'blank' : steps.shadeOf(residual),
      number: residual === undefined ? null : formatBare(residual, unit, digits, { plus: true }),
      name: names.size > 1 ? { full, short: short.get(full) ?? full } : null,
      statuses: statuses.get(key(position)) ?? [],
    };
  });
  const map = gridMap(container, cells, container.id);
  const at = { x: 2, y: map.height + 6, width: map.width - 4 };
  const scale = {
    boundaries: steps.boundaries,
    steps: steps.shades.map((_, index) => index),
    stepOf: () => 0,
  };
  const shades = scaleKey(scale, (step) => `swatch ${steps.shades[step]!}`, unit, { ...at, plus: true });
  const marks = markKey(new Set([...statuses.values()].flat()), { ...at, y: at.y + shades.height });
  const used = new Map([...names].map((name) => [name, short.get(name) ?? name]));
  const keyed = nameKey(names.size > 1 && map.shortNames ? used : new Map(), {
    ...at,
    y: at.y + shades.height + marks.height,
  });
  const title = say('{container}: what is left at each position after treatments', {
    container: container.id,
  });
  const description = describe(entry, unit, digits);
  return {
    id,
    title,
    description,
    svg: drawing(
      { id, title, description, kind: 'residual-map' },
      { width: map.width, height: at.y + shades.height + marks.height + keyed.height },
      map.svg,
      shades.svg,
      marks.svg,
      keyed.svg,
    ),
    table: residualTable(title, positions, (position) => residuals.get(key(position)) ?? null, shared),
  };
}

function describe(entry: PositionEffects, unit: string, digits: number): Words {
  const sorted = [...(entry.residuals ?? [])].sort((a, b) => a.residual - b.residual);
  const [least, most] = [sorted[0]!, sorted.at(-1)!];
  const said = ({ row, column, residual }: typeof least): Words => [
    formatQuantity(residual, unit, digits, { plus: true }),
    ` (${placeName({ row, column })})`,
  ];
  return tell(
    'Weight less the mean of its treatment, in the same place as on the map of weights; from {least} to {most}.',
    { least: said(least), most: said(most) },
  );
}

function residualTable(
  caption: string,
  positions: readonly Position[],
  residualOf: (position: Position) => number | null,
  { unit, digits, nameOf }: Shared,
) {
  return {
    caption,
    columns: [
      { heading: say('Position'), numeric: false },
      { heading: say('Treatment'), numeric: false },
      ...columnsInBoth(say('Residual'), unit),
    ],
    rows: positions.map((position) => {
      const residual = residualOf(position);
      const printed = residual === null ? null : formatBare(residual, unit, digits, { plus: true });
      return [placeName(position), nameOf(position), ...cellsInBoth(printed, unit)];
    }),
  };
}
