import { addressPart } from '../../compute/format/address-part.ts';
import { say } from '../../model/say.ts';
import type { Factor, Level, TrialMetadata } from '../../model/trial.ts';
import { kinds, type PlanContainer, type PlanRequest, settings } from '../../plan/plan-request.ts';
import type { PlanFacts } from '../../publish/plan-facts.ts';

/** What the fields of the page hold, as typed. */
export interface PlanFields {
  question: string;
  crop: string;
  season: string;
  year: string;
  site: string;
  setting: string;
  person: string;
  /** What is compared: cultivars, or the name of another factor. */
  factor: string;
  /** A level a line, the check first. */
  levels: string;
  hasCheck: boolean;
  containers: string;
  rows: string;
  columns: string;
  kind: string;
  allot: readonly string[];
  plotRows: string;
  plotColumns: string;
  border: string;
  seedlings: string;
  unreplicated: boolean;
}

/** A field that is not understood, and what to write in it. */
export interface PlanFault {
  field: keyof PlanFields;
  message: string;
}

const units = ['container', 'plot', 'position'] as const;

/** Reads all fields: what they ask for, or every field that is not understood. */
export function readPlan(fields: PlanFields, facts: PlanFacts): PlanRequest | readonly PlanFault[] {
  const faults: PlanFault[] = [];
  const fault = (field: keyof PlanFields, message: string) => faults.push({ field, message });
  const whole = (field: keyof PlanFields, least: number, most: number): number => {
    const text = String(fields[field]).trim();
    const value = Number(text);
    if (/^\d+$/.test(text) && value >= least && value <= most) return value;
    fault(field, say('Write a whole number from {least} to {most}.', { least, most }));
    return least;
  };
  const text = (
    field: 'question' | 'crop' | 'season' | 'site' | 'person',
    shortest: number,
    example: string,
  ) => {
    const value = fields[field].trim();
    if (value.length < shortest) fault(field, say('Write a little more, such as “{example}”.', { example }));
    return value;
  };
  const question = text('question', 10, say('Does the newcomer match the check?'));
  const crop = text('crop', 2, say('Lettuce'));
  const known = facts.crops.find(({ name }) => name.toLowerCase() === crop.toLowerCase());
  const factor = readFactor(fields, facts);
  if (typeof factor === 'string') fault('levels', factor);
  const plots = fields.allot.includes('plot');
  const allot = units.filter((unit) => fields.allot.includes(unit));
  if (allot.length === 0) fault('allot', say('Choose at least one.'));
  const season = { year: whole('year', 1800, 2200), name: text('season', 2, say('spring')) };
  const site = {
    ...(facts.site?.name === fields.site.trim() ? facts.site : {}),
    name: text('site', 2, 'Fernhollow'),
    setting: settings.find((each) => each === fields.setting) ?? settings[0],
  };
  const containers = containersOf(whole('containers', 1, 60), whole('rows', 1, 40), whole('columns', 1, 40));
  const request = {
    id: addressPart(`${crop} ${season.name} ${String(season.year)}`) || 'planned-trial',
    title: question.replace(/[?.!]+$/, ''),
    question,
    crop: known?.crop ?? { name: crop },
    season,
    site,
    people: [
      { name: text('person', 2, 'Imke Farrant'), part: 'grower' as const },
    ] satisfies TrialMetadata['people'],
    licence: facts.licence,
    factors: typeof factor === 'string' ? [] : [factor],
    containers,
    kind: kinds.find((each) => each === fields.kind) ?? kinds[0],
    allot,
    only: {},
    ...(plots ? { plot: { rows: whole('plotRows', 1, 40), columns: whole('plotColumns', 1, 40) } } : {}),
    border: whole('border', 0, 10),
    seedlings: fields.seedlings.trim() === '' ? null : whole('seedlings', 1, 100_000),
    sizes: null,
    unreplicated: fields.unreplicated,
    variables: known?.variables ?? plainWeight,
  };
  return faults.length > 0 ? faults : request;
}

const plainWeight: PlanRequest['variables'] = [
  { id: 'fresh_weight', name: 'Fresh weight', of: 'plant', kind: 'measured', unit: 'g', resolution: 1 },
];

function containersOf(count: number, rows: number, columns: number): PlanContainer[] {
  return Array.from({ length: count }, (_, index) => ({ id: `T${String(index + 1)}`, rows, columns }));
}

/** The factor with its levels, or what is wrong with them. */
function readFactor({ factor, levels, hasCheck }: PlanFields, facts: PlanFacts): Factor | string {
  const name = factor.trim() === '' ? say('Cultivar') : factor.trim();
  const ofCultivars = /^cultivar(?:s|es)?$/i.test(name);
  const names = levels
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
  const read = names.map((line): Level => {
    const listed = facts.cultivars.find(
      (cultivar) => cultivar.id === line || cultivar.name.toLowerCase() === line.toLowerCase(),
    );
    if (ofCultivars && listed) return { id: listed.id };
    const id = /^[\d.]+$/.test(line) ? line : addressPart(line);
    return id === line && !ofCultivars ? { id } : { id, name: line };
  });
  const ids = new Set(read.map(({ id }) => id));
  const [first, ...rest] = read;
  if (first === undefined || rest.length === 0) return say('Write at least two, each on a line of its own.');
  if (ids.has('')) return say('A name needs a letter or a figure.');
  if (ids.size < read.length) return say('Two of them are the same.');
  return {
    id: ofCultivars ? 'cultivar' : addressPart(name).replaceAll('-', '_') || 'treatment',
    name,
    ...(ofCultivars ? { kind: 'cultivar' as const } : {}),
    levels: [first, ...rest],
    ...(hasCheck ? { check: first.id } : {}),
  };
}
