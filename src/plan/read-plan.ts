import { addressPart } from '../compute/format/address-part.ts';
import { type LotUnit, lotUnits } from '../compute/lots/lot-place.ts';
import { listed } from '../compute/words/words.ts';
import { say } from '../model/say.ts';
import type { Factor, TrialMetadata } from '../model/trial.ts';
import type { PlanFacts } from '../publish/plan-facts.ts';
import { moreVariables, recordable } from './more-variables.ts';
import type { PlanFields } from './plan-fields.ts';
import { kinds, type PlanContainer, type PlanRequest, settings } from './plan-request.ts';
import { readFactors } from './read-factors.ts';
import { readGrids } from './read-grids.ts';

/** A field that is not understood, and what to write in it. */
export interface PlanFault {
  /** The field's name; that of a second factor has a 2 behind it. */
  field: string;
  message: string;
}

/** What the fields ask for. */
export interface PlanRead {
  request: PlanRequest;
  /** What the grower says that units vary by, in percent; null to take the site's own. */
  variation: number | null;
}

type TextField = {
  [Name in keyof PlanFields]: PlanFields[Name] extends string ? Name : never;
}[keyof PlanFields];

/** Reads all fields: what they ask for, or every field that is not understood. */
export function readPlan(fields: PlanFields, facts: PlanFacts): PlanRead | readonly PlanFault[] {
  const faults: PlanFault[] = [];
  const fault = (field: string, message: string) => {
    faults.push({ field, message });
  };
  const whole = (field: TextField, least: number, most: number): number => {
    const text = fields[field].trim();
    const value = Number(text);
    if (/^\d+$/.test(text) && value >= least && value <= most) return value;
    fault(field, say('Write a whole number from {least} to {most}.', { least, most }));
    return least;
  };
  const text = (field: TextField, shortest: number, longest: number, example: string) => {
    const value = fields[field].trim();
    if (value.length < shortest) fault(field, say('Write a little more, such as “{example}”.', { example }));
    if (value.length > longest) fault(field, say('Write at most {longest} characters.', { longest }));
    return value;
  };
  const question = text('question', 10, 500, say('Does the newcomer match the check?'));
  const crop = text('crop', 2, 100, say('Lettuce'));
  const known = facts.crops.find(({ name }) => name.toLowerCase() === crop.toLowerCase());
  const season = { year: whole('year', 1800, 2200), name: text('season', 2, 60, say('spring')) };
  const site = {
    ...(facts.site?.name === fields.site.trim() ? facts.site : {}),
    name: text('site', 2, 100, 'Fernhollow'),
    setting: settings.find((each) => each === fields.setting) ?? settings[0],
  };
  const person = text('person', 2, 200, 'Imke Farrant');
  const factors = readFactors(fields, facts.cultivars, fault);
  const only = boundOf(fields, factors);
  const allot = allottedTo(fields, factors, only);
  if (allot.length === 0) fault('allot', say('Choose at least one.'));
  const inPlots = allot.includes('plot') || Object.values(only).includes('plot');
  const records = recordable.filter((one) => fields.records.includes(one));
  const tasters = fields.tasters
    .split(/[,;\n]/)
    .map((name) => name.trim())
    .filter((name) => name !== '');
  if (records.includes('taste') && tasters.length === 0)
    fault('tasters', say('Write who tastes, such as “{example}”.', { example: 'A, B, C' }));
  if (tasters.some((name) => name.length > 60) || tasters.length > 12)
    fault('tasters', say('Write at most 12 names of at most 60 characters.'));
  const request: PlanRequest = {
    id: folderName(`${crop} ${season.name} ${String(season.year)}`),
    title: titleOf(crop, factors, season),
    question,
    crop: known?.crop ?? { name: crop },
    season,
    site,
    people: [{ name: person, part: 'grower' as const }] satisfies TrialMetadata['people'],
    licence: facts.licence,
    factors,
    containers:
      fields.grids.trim() === ''
        ? alike(whole('containers', 1, 60), whole('rows', 1, 40), whole('columns', 1, 40))
        : readGrids(fields.grids, fault),
    kind: kinds.find((each) => each === fields.kind) ?? kinds[0],
    allot,
    only,
    ...(inPlots ? { plot: { rows: whole('plotRows', 1, 40), columns: whole('plotColumns', 1, 40) } } : {}),
    border: whole('border', 0, 10),
    seedlings: fields.seedlings.trim() === '' ? null : whole('seedlings', 1, 100_000),
    sizes: sizesOf(fields.sizes, fault),
    unreplicated: fields.unreplicated,
    variables: [(known?.variables ?? plainWeight())[0]!, ...moreVariables(records, tasters)],
  };
  const variation = variationOf(fields.variation, fault);
  return faults.length > 0 ? faults : { request, variation };
}

const plainWeight = (): PlanRequest['variables'] => [
  { id: 'fresh_weight', name: say('Fresh weight'), of: 'plant', kind: 'measured', unit: 'g', resolution: 1 },
];

/** The name of a folder, which is part of the trial's address: 3 to 64 letters, digits and hyphens. */
export function folderName(words: string): string {
  const name = addressPart(words).slice(0, 64).replace(/-$/, '');
  return name.length < 3 ? 'planned-trial' : name;
}

/** "Lettuce: cultivar, spring 2027", to be bettered by the grower; the question stands beside it. */
function titleOf(crop: string, factors: readonly Factor[], { name, year }: PlanRequest['season']): string {
  const compared = listed(factors.map((factor) => factor.name.toLowerCase()));
  return say('{crop}: {compared}, {season} {year}', { crop, compared, season: name, year }).slice(0, 200);
}

function alike(count: number, rows: number, columns: number): PlanContainer[] {
  return Array.from({ length: count }, (_, index) => ({ id: `T${String(index + 1)}`, rows, columns }));
}

/** The factors that can be allotted to one unit only. */
function boundOf({ factors: typed }: PlanFields, factors: readonly Factor[]): PlanRequest['only'] {
  const written = typed.filter(
    ({ factor, levels }, index) => index === 0 || `${factor}${levels}`.trim() !== '',
  );
  const bound = factors.flatMap(({ id }, index): [string, LotUnit][] => {
    const unit = lotUnits.find((each) => each === written[index]?.bound);
    return unit === undefined ? [] : [[id, unit]];
  });
  return Object.fromEntries(bound);
}

/** What is ticked; where every factor is bound to a unit, these too, as nothing else could be meant. */
function allottedTo(
  { allot }: PlanFields,
  factors: readonly Factor[],
  only: PlanRequest['only'],
): readonly LotUnit[] {
  const bound = Object.values(only);
  const isBound = factors.length > 0 && bound.length === factors.length;
  return lotUnits.filter((unit) => allot.includes(unit) || (isBound && bound.includes(unit)));
}

/** A decimal comma is read as a point. */
const decimal = (text: string): number =>
  /^\d+(?:[.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) : NaN;

function sizesOf(text: string, fault: (field: string, message: string) => void): readonly number[] | null {
  const written = text.split(/[\s;]+|,\s+/).filter((size) => size !== '');
  if (written.length === 0) return null;
  const wrong = written.find((size) => Number.isNaN(decimal(size)));
  if (wrong !== undefined)
    fault(
      'sizes',
      say('“{found}” is no size; write numbers with spaces between, such as 31 28.5 30.', {
        found: wrong.slice(0, 40),
      }),
    );
  return written.map(decimal);
}

function variationOf(text: string, fault: (field: string, message: string) => void): number | null {
  if (text.trim() === '') return null;
  const value = decimal(text.trim());
  if (!(value > 0 && value <= 200))
    fault('variation', say('Write a number above 0 and up to 200, such as 15.'));
  return value;
}
