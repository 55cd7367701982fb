import { digitsOfValue } from '../compute/format/digits-of-value.ts';
import { formatBare, formatQuantity } from '../compute/format/format-quantity.ts';
import { treatmentName } from '../compute/format/level-names.ts';
import { printedResolution } from '../compute/format/printed-resolution.ts';
import { tell } from '../compute/words/tell.ts';
import type { Words } from '../compute/words/words.ts';
import type { Figure } from '../model/figure.ts';
import type { Findings } from '../model/findings.ts';
import type { Container, Trial } from '../model/trial.ts';
import { say, sayCount } from '../model/say.ts';
import { distinct, figureId } from './figure-id.ts';
import { type FigureOptions, withDefaults } from './figure-options.ts';
import { gridMap, type MapCell } from './grid-map.ts';
import { markKey, nameKey, scaleKey } from './map-keys.ts';
import { type PotOutcome, potOutcomes } from './pot-outcome.ts';
import { placeName, positionTable } from './position-table.ts';
import { shortNames } from './short-names.ts';
import { drawing } from './svg.ts';
import { valueSteps, type ValueSteps } from './value-steps.ts';

interface Shared {
  trial: Trial;
  unit: string;
  variable: string;
  digits: number;
  scale: ValueSteps;
  cuts: readonly number[];
  nameOf: (outcome: PotOutcome) => string;
  short: ReadonlyMap<string, string>;
}

/**
 * The map of each container, turned the way the harvester stood: every pot's weight over all cuts in its
 * cell, shaded on one scale for the whole trial, with marks for what was not weighed. Empty where the trial
 * has no positions.
 */
export function drawPositionMaps(trial: Trial, findings: Findings, options: FigureOptions = {}): Figure[] {
  const { names } = withDefaults(trial, options);
  const { outcomes, cuts } = potOutcomes(trial);
  const values = outcomes.flatMap(({ value, nothingWeighed }) =>
    value === null || nothingWeighed ? [] : [value],
  );
  const nameOf = (outcome: PotOutcome) => treatmentName(trial, outcome.position.treatment, names);
  const shared: Shared = {
    trial,
    unit: findings.variable.unit,
    variable: findings.variable.name,
    digits: digitsOfValue(printedResolution(trial.metadata.variables[0])),
    scale: valueSteps(values.length === 0 ? [0] : values),
    cuts,
    nameOf,
    short: shortNames(outcomes.map(nameOf)),
  };
  const containers = trial.metadata.containers.filter(({ id }) =>
    outcomes.some(({ position }) => position.container === id),
  );
  const ids = distinct(containers.map(({ id }) => figureId('position-map', id)));
  return containers.map((container, index) =>
    drawContainer(
      container,
      outcomes.filter(({ position }) => position.container === container.id),
      ids[index]!,
      shared,
    ),
  );
}

function drawContainer(
  container: Container,
  outcomes: readonly PotOutcome[],
  id: string,
  shared: Shared,
): Figure {
  const names = new Set(outcomes.map(shared.nameOf));
  const only = names.size === 1 && (shared.trial.metadata.factors ?? []).length > 0 ? [...names][0]! : null;
  const cells = cellsOf(container, outcomes, names.size > 1, shared);
  const heading = only === null ? container.id : `${container.id}: ${only}`;
  const map = gridMap(container, cells, heading);
  const at = { x: 2, y: map.height + 6, width: map.width - 4 };
  const shades = scaleKey(shared.scale, (step) => `swatch step-${String(step)}`, shared.unit, at);
  const marks = markKey(new Set(outcomes.flatMap(({ statuses }) => statuses)), {
    ...at,
    y: at.y + shades.height,
  });
  const used = new Map([...names].map((name) => [name, shared.short.get(name) ?? name]));
  const listed = names.size > 1 && map.shortNames ? used : new Map<string, string>();
  const keyed = nameKey(listed, { ...at, y: at.y + shades.height + marks.height });
  const height = at.y + shades.height + marks.height + keyed.height;
  const title = titleOf(container, outcomes, only, shared);
  const description = descriptionOf(container, outcomes, map.orientation.columnsReversed, shared);
  return {
    id,
    title,
    description,
    svg: drawing(
      { id, title, description, kind: 'position-map' },
      { width: map.width, height },
      map.svg,
      shades.svg,
      marks.svg,
      keyed.svg,
    ),
    table: positionTable(title, outcomes, shared),
  };
}

function cellsOf(
  container: Container,
  outcomes: readonly PotOutcome[],
  named: boolean,
  { scale, unit, digits, nameOf, short }: Shared,
): MapCell[] {
  const byPlace = new Map(
    outcomes.map((each) => [`${String(each.position.row)} ${String(each.position.column)}`, each]),
  );
  return Array.from({ length: container.rows * container.columns }, (_, index) => {
    const row = 1 + Math.floor(index / container.columns);
    const column = 1 + (index % container.columns);
    const outcome = byPlace.get(`${String(row)} ${String(column)}`);
    if (!outcome) return { row, column, shade: 'outside', number: null, name: null, statuses: [] };
    const { value, nothingWeighed, statuses } = outcome;
    const shown = value !== null && !nothingWeighed;
    const full = nameOf(outcome);
    return {
      row,
      column,
      shade: shown ? `step-${String(scale.stepOf(value))}` : 'blank',
      number: shown ? formatBare(value, unit, digits) : null,
      name: named ? { full, short: short.get(full) ?? full } : null,
      statuses,
    };
  });
}

/** "pot" where any pot holds several plants or was weighed whole. */
export function whatWasWeighed(outcomes: readonly PotOutcome[]): 'plant' | 'pot' {
  return outcomes.every(({ position }) => position.plants === 1) ? 'plant' : 'pot';
}

function titleOf(
  container: Container,
  outcomes: readonly PotOutcome[],
  only: string | null,
  shared: Shared,
): string {
  const kind = say(container.kind).replace(/^./, (letter) => letter.toUpperCase());
  const grown = only === null ? '' : `, ${only}`;
  const place = `${kind} ${container.id}${grown}`;
  const variable = shared.variable.toLowerCase();
  const title =
    whatWasWeighed(outcomes) === 'plant'
      ? say('{place}: {variable} of each plant', { place, variable })
      : say('{place}: {variable} of each pot', { place, variable });
  const cuts = shared.cuts.length;
  return cuts > 1 ? say('{title} over {cuts} cuts', { title, cuts }) : title;
}

function descriptionOf(
  container: Container,
  outcomes: readonly PotOutcome[],
  reversed: boolean,
  { unit, digits }: Shared,
): Words {
  const sides = [
    container.row_1 === undefined
      ? null
      : say('row 1 at the top beside the {landmark}', { landmark: container.row_1 }),
    container.column_1 === undefined
      ? null
      : reversed
        ? say('column 1 at the right beside the {landmark}', { landmark: container.column_1 })
        : say('column 1 at the left beside the {landmark}', { landmark: container.column_1 }),
  ].filter((side) => side !== null);
  const grid = say('A grid of {rows} and {columns}', {
    rows: sayCount(container.rows, '{count} row', '{count} rows'),
    columns: sayCount(container.columns, '{count} column', '{count} columns'),
  });
  const weighed = outcomes
    .filter(({ value, nothingWeighed }) => value !== null && !nothingWeighed)
    .sort((a, b) => a.value! - b.value!);
  const [least, most] = [weighed[0], weighed.at(-1)];
  const said = ({ position, value }: PotOutcome): Words => [
    formatQuantity(value!, unit, digits),
    ` (${placeName(position)})`,
  ];
  const range =
    least === undefined || most === undefined
      ? [say('Nothing was weighed.')]
      : tell('From {least} to {most}.', { least: said(least), most: said(most) });
  const view = say('{view}, as the harvester stood.', { view: [grid, ...sides].join(', ') });
  return [`${view} `, ...range];
}
