import { allotSeedlings } from '../compute/lots/allot-seedlings.ts';
import { drawLots, LOT_METHOD } from '../compute/lots/draw-lots.ts';
import { layoutRows } from '../compute/lots/layout-rows.ts';
import { inOrderOfLots, type LotPlace } from '../compute/lots/lot-place.ts';
import { setOut } from '../compute/lots/set-out.ts';
import { sumsFile } from '../check/frozen-versions.ts';
import { say } from '../model/say.ts';
import { csvText } from '../publish/csv.ts';
import { sha256 } from '../read/sha256.ts';
import type { Candidate } from './candidates.ts';
import type { PlanRequest } from './plan-request.ts';

/**
 * The trial folder of a candidate drawn from a seed: trial.yaml with the status planned, layout.csv, harvest.csv with
 * a row for every plant, and seedlings.csv where they are graded; or why it cannot be drawn. The first three stand
 * frozen under `versions/` too: what was done otherwise is told against them once the trial is finished.
 *
 * @param today the day of the plan, year-month-day
 */
export function plannedFiles(
  request: PlanRequest,
  candidate: Candidate,
  seed: number,
  today: string,
): { files: Map<string, string>; plants: number } | { reason: string } {
  const containers = request.containers.map(({ id, rows, columns, block }, index) => ({
    id,
    kind: request.kind,
    rows,
    columns,
    ...blockOf(candidate, block, index),
  }));
  const ids = containers.map(({ id }) => id);
  const factors = request.factors.map(({ id, levels }, index) => ({
    id,
    levels: levels.map((level) => level.id),
    unit: candidate.units[index] ?? 'position',
  }));
  const { plot } = request;
  const inPlots = candidate.units.includes('plot') && plot !== undefined;
  const out = setOut(containers, { border: request.border, ...(inPlots ? { plot } : {}) });
  if ('reason' in out) return out;
  const drawn = drawLots(out.places, { arrangement: candidate.arrangement, seed, containers: ids, factors });
  if ('reason' in drawn) return drawn;
  const [columns = [], ...rows] = layoutRows(
    drawn.treatments,
    ids,
    factors.map(({ id }) => id),
  );
  const files = new Map([
    ['trial.yaml', trialYaml(request, candidate, seed, containers, today)],
    ['layout.csv', csvText({ columns, rows })],
    ['harvest.csv', emptyHarvest(inOrderOfLots(out.places, ids), request)],
  ]);
  const promised = new Map(files);
  for (const [name, text] of promised) files.set(`${promise}/${name}`, text);
  files.set(`${promise}/${sumsFile}`, sumsOf(promised));
  if (request.sizes !== null) {
    const seedlings = gradedSeedlings(out.places, ids, request.sizes, seed);
    if (typeof seedlings !== 'string') return seedlings;
    files.set('seedlings.csv', seedlings);
  }
  return { files, plants: out.places.length };
}

const version = '0.1.0';
const promise = `versions/${version}`;

/** The SHA-256 of each file, as a release writes it. */
function sumsOf(files: ReadonlyMap<string, string>): string {
  const names = [...files.keys()].sort();
  return names.map((name) => `${sha256(new TextEncoder().encode(files.get(name)!))}  ${name}\n`).join('');
}

function blockOf({ blocks }: Candidate, given: string | undefined, index: number): { block?: string } {
  if (blocks === 'containers') return { block: String(index + 1) };
  return blocks === 'given' && given !== undefined ? { block: given } : {};
}

/** YAML with a key a line and JSON behind it, which is YAML too: nothing in it can be read as something else. */
function trialYaml(
  request: PlanRequest,
  candidate: Candidate,
  seed: number,
  containers: readonly object[],
  today: string,
): string {
  const { title, question, crop, season, site, people, licence, factors, variables } = request;
  const { arrangement, units } = candidate;
  const design = {
    arrangement,
    allotted: finest(units),
    randomised: true,
    seed,
    lot: { method: LOT_METHOD },
  };
  const metadata = {
    title,
    version,
    status: 'planned',
    question,
    crop,
    season,
    site,
    people,
    licence,
    factors,
    design,
    containers,
    variables,
    releases: [{ version, date: today, note: say('The plan.') }],
  };
  const lines = Object.entries(metadata).map(([key, value]) =>
    Array.isArray(value)
      ? [`${key}:`, ...value.map((item) => `  - ${flow(item)}`)].join('\n')
      : `${key}: ${flow(value)}`,
  );
  return `${lines.join('\n')}\n`;
}

/** Words that stand in YAML without quotes and are read as nothing but text. */
const plain = /^(?!(?:true|false|null|yes|no|on|off|y|n)$)[a-z](?:[a-z0-9 _-]*[a-z0-9])?$/i;

/** JSON with a space behind each colon and comma and plain words unquoted, as YAML is written by hand. */
function flow(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(flow).join(', ')}]`;
  if (typeof value === 'string' && plain.test(value)) return value;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const entries = Object.entries(value).filter(([, item]) => item !== undefined);
  return `{${entries.map(([key, item]) => `${/^\w+$/.test(key) ? key : JSON.stringify(key)}: ${flow(item)}`).join(', ')}}`;
}

const finest = (units: Candidate['units']) =>
  (['position', 'plot', 'container'] as const).find((unit) => units.includes(unit)) ?? 'position';

/** A row for every plant, to be filled in at the scale. */
function emptyHarvest(places: readonly LotPlace[], { variables }: PlanRequest): string {
  const columns = ['container', 'row', 'column', ...variables.map(({ id }) => id), 'status', 'remark'];
  const rows = places.map(({ container, row, column }) => [
    container,
    row,
    column,
    ...variables.map(() => null),
    null,
    null,
  ]);
  return csvText({ columns, rows });
}

/** Which seedling goes where, in the order of the places, or why they cannot be allotted. */
function gradedSeedlings(
  places: readonly LotPlace[],
  containers: readonly string[],
  sizes: readonly number[],
  seed: number,
): string | { reason: string } {
  if (seed >= 2 ** 32) return { reason: `graded seedlings take a seed below 2^32, and it is ${seed}` };
  const out = allotSeedlings(sizes, places, containers, seed);
  if ('reason' in out) return out;
  const numberOf = new Map(out.planted.map(({ place, seedlings }) => [place, seedlings[0]!]));
  const rows = inOrderOfLots(places, containers).map((place) => {
    const number = numberOf.get(place)!;
    return [place.container, place.row, place.column, number, sizes[number - 1]!];
  });
  return csvText({ columns: ['container', 'row', 'column', 'seedling', 'size'], rows });
}
