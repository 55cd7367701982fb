/** What `plan` is told on the command line, and what it takes from the site's newest trial of the crop. */
import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import { lotUnits } from '../compute/lots/lot-place.ts';
import type { Cultivar } from '../model/library.ts';
import type { Factor, Trial, Variable } from '../model/trial.ts';
import type { PlanFields } from '../plan/plan-fields.ts';
import { kinds, type PlanContainer, type PlanRequest, settings } from '../plan/plan-request.ts';
import { wrongUse } from './usage.ts';

const options = {
  question: { type: 'string' },
  title: { type: 'string' },
  crop: { type: 'string' },
  season: { type: 'string' },
  factor: { type: 'string', multiple: true },
  check: { type: 'string' },
  container: { type: 'string', multiple: true },
  kind: { type: 'string' },
  allot: { type: 'string', multiple: true },
  plot: { type: 'string' },
  border: { type: 'string' },
  seedlings: { type: 'string' },
  sizes: { type: 'string' },
  variation: { type: 'string' },
  seed: { type: 'string' },
  choose: { type: 'string' },
  site: { type: 'string' },
  setting: { type: 'string' },
  person: { type: 'string' },
  licence: { type: 'string' },
  unreplicated: { type: 'boolean' },
} as const;

/** Whether something is not said that proposals cannot be made without. */
export function lacksOptions(args: string[]): boolean {
  const { values } = parseArgs({ args, allowPositionals: true, options });
  const needed = ['question', 'crop', 'season', 'factor', 'container', 'allot'] as const;
  return needed.some((name) => values[name] === undefined);
}

/** What of the options a form's fields can begin from, and the folder. */
export function fieldsOfOptions(args: string[]): {
  fields: Partial<PlanFields>;
  folder: string | null;
  seed: number | null;
} {
  const { values, positionals } = parseArgs({ args, allowPositionals: true, options });
  if (positionals.length > 1) throw wrongUse(`One folder is expected; found ${positionals.length}.`);
  const season = values.season === undefined ? null : seasonOf(values.season);
  const plot = values.plot === undefined ? null : sizeOf('plot', values.plot);
  const grids = (values.container ?? []).map(containerOf);
  const only = onlyOf(values.factor ?? []);
  const factors = (values.factor ?? []).map((text, index) => {
    const { id, name, levels } = factorOf(text, index === 0 ? values.check : undefined, []);
    const ids = levels.map((level) => level.id);
    const check = index === 0 ? ids.filter((each) => each === values.check) : [];
    const inOrder = [...check, ...ids.filter((each) => !check.includes(each))];
    return { factor: name, levels: inOrder.join('\n'), bound: only[id] ?? '' };
  });
  const fields = {
    ...copied(values, ['question', 'crop', 'site', 'setting', 'person', 'kind', 'border', 'seedlings']),
    ...copied(values, ['variation', 'allot']),
    ...(season === null ? {} : { season: season.name, year: String(season.year) }),
    ...(plot === null ? {} : { plotRows: String(plot.rows), plotColumns: String(plot.columns) }),
    ...(grids.length === 0 ? {} : { grids: grids.map(gridLine).join('\n') }),
    ...(factors.length === 0 ? {} : { factors, hasCheck: values.check !== undefined }),
    ...(values.sizes === undefined ? {} : { sizes: values.sizes.replaceAll(',', ' ') }),
    ...(values.unreplicated === undefined ? {} : { unreplicated: values.unreplicated }),
  };
  const seed = values.seed === undefined ? null : wholeOf('seed', values.seed);
  return { fields, folder: positionals[0] ?? null, seed };
}

const gridLine = ({ id, rows, columns, block }: PlanContainer): string =>
  [id, `${String(rows)}x${String(columns)}`, block ?? ''].join(' ').trim();

/** Those of the names that are there. */
function copied<T extends object, Name extends keyof T>(values: T, names: readonly Name[]) {
  return Object.fromEntries(
    names.flatMap((name) => (values[name] === undefined ? [] : [[name, values[name]]])),
  ) as { [Each in Name]?: NonNullable<T[Each]> };
}

export interface PlanOptions {
  request: PlanRequest;
  /** The folder to write; null where proposals are only shown. */
  folder: string | null;
  /** Which proposal is written, from 1. */
  choose: number;
  /** Null where one is to be drawn. */
  seed: number | null;
  /** In percent; null to take the site's own. */
  variation: number | null;
  /** The trial that what was not said is taken from. */
  like: Trial | null;
}

/** Reads the options; a wrong use names the option and shows how it is written. */
export function planOptions(
  args: string[],
  known: { trials: readonly Trial[]; cultivars: readonly Cultivar[]; licence: string },
): PlanOptions {
  const { values, positionals } = parseArgs({ args, allowPositionals: true, options });
  if (positionals.length > 1) throw wrongUse(`One folder is expected; found ${positionals.length}.`);
  const needed = (name: 'question' | 'crop' | 'season', example: string) =>
    values[name] ?? refuse(`--${name} is missing, such as --${name} "${example}"`);
  const crop = needed('crop', 'Lettuce');
  const like =
    known.trials.find(({ metadata }) => metadata.crop.name.toLowerCase() === crop.toLowerCase()) ?? null;
  const nearest = like ?? known.trials[0] ?? null;
  const [folder] = positionals;
  const question = needed('question', 'Do the newcomers match the check cultivar?');
  const request: PlanRequest = {
    id: folder === undefined ? 'planned-trial' : basename(folder),
    title: values.title ?? titleOf(crop, values.factor ?? [], needed('season', 'spring 2027')),
    question,
    crop: { name: crop, ...(like?.metadata.crop.species ? { species: like.metadata.crop.species } : {}) },
    season: seasonOf(needed('season', 'spring 2027')),
    site: siteOf(values.site, values.setting, nearest),
    people: peopleOf(values.person, nearest),
    licence: values.licence ?? nearest?.metadata.licence ?? known.licence,
    factors: (values.factor ?? []).map((text, index) =>
      factorOf(text, index === 0 ? values.check : undefined, known.cultivars),
    ),
    containers: (values.container ?? []).map(containerOf),
    kind: oneOf('kind', values.kind ?? 'tank', kinds),
    only: onlyOf(values.factor ?? []),
    allot: (values.allot ?? []).map((text) => oneOf('allot', text, lotUnits)),
    ...(values.plot === undefined ? {} : { plot: sizeOf('plot', values.plot) }),
    border: values.border === undefined ? 0 : wholeOf('border', values.border),
    seedlings: values.seedlings === undefined ? null : wholeOf('seedlings', values.seedlings),
    sizes: values.sizes === undefined ? null : sizesOf(values.sizes),
    unreplicated: values.unreplicated ?? false,
    variables: variablesOf(like),
  };
  if (request.factors.length === 0)
    refuse('--factor is missing, such as --factor cultivar=cobalt-wren,slate-egret');
  if (request.containers.length === 0)
    refuse('--container is missing, such as --container T1=3x4, once for each');
  if (request.allot.length === 0)
    refuse(
      '--allot is missing: container, plot or position, once for each that treatments can be allotted to',
    );
  return {
    request,
    folder: folder ?? null,
    choose: values.choose === undefined ? 1 : wholeOf('choose', values.choose),
    seed: values.seed === undefined ? null : wholeOf('seed', values.seed),
    variation: values.variation === undefined ? null : percentOf(values.variation),
    like: nearest,
  };
}

function refuse(message: string): never {
  throw wrongUse(`${message}.`);
}

const shown = (text: string) => `"${text.slice(0, 60)}"`;

function seasonOf(text: string): PlanRequest['season'] {
  const [, before = '', year = '', after = ''] = /^(\D*?)\s*(\d{4})\s*(\D*)$/.exec(text.trim()) ?? [];
  const name = `${before}${after}`.trim();
  if (name === '') refuse(`--season is a name and a year, such as "spring 2027"; found ${shown(text)}`);
  return { year: Number(year), name };
}

/** "Lettuce: cultivar, spring 2027", to be bettered by the grower. */
function titleOf(crop: string, factors: readonly string[], season: string): string {
  const names = factors.map((text) => text.split('=')[0]!.replaceAll('_', ' '));
  return `${crop}: ${names.join(' and ')}, ${season}`;
}

function siteOf(
  name: string | undefined,
  setting: string | undefined,
  like: Trial | null,
): PlanRequest['site'] {
  const known = like?.metadata.site;
  if (known && name === undefined)
    return { ...known, ...(setting ? { setting: oneOf('setting', setting, settings) } : {}) };
  if (name === undefined || setting === undefined)
    refuse('--site and --setting are missing, such as --site Fernhollow --setting "rain shelter"');
  return { name, setting: oneOf('setting', setting, settings) };
}

function peopleOf(name: string | undefined, like: Trial | null): PlanRequest['people'] {
  if (name !== undefined) return [{ name, part: 'grower' }];
  return (
    like?.metadata.people ?? refuse('--person is missing: who will grow it, such as --person "Imke Farrant"')
  );
}

/** `strength=half,full@container`: what is behind the @ is all that it can be allotted to. */
function factorOf(text: string, check: string | undefined, cultivars: readonly Cultivar[]): Factor {
  const [, id = '', list = ''] = /^([^=]+)=([^@]+)(?:@.*)?$/.exec(text) ?? [];
  const levels = list
    .split(',')
    .map((level) => level.trim())
    .filter((level) => level !== '');
  const [first, ...rest] = levels;
  if (first === undefined || rest.length === 0)
    refuse(
      `--factor is a name and its levels, such as cultivar=cobalt-wren,slate-egret; found ${shown(text)}`,
    );
  if (check !== undefined && !levels.includes(check))
    refuse(`--check names a level of the first factor (${levels.join(', ')}); found ${shown(check)}`);
  const isCultivar = id === 'cultivar';
  const levelOf = (level: string) =>
    isCultivar && !cultivars.some((cultivar) => cultivar.id === level)
      ? { id: level, name: level }
      : { id: level };
  return {
    id,
    name: `${id[0]!.toUpperCase()}${id.slice(1).replaceAll('_', ' ')}`,
    ...(isCultivar ? { kind: 'cultivar' as const } : {}),
    levels: [levelOf(first), ...rest.map(levelOf)],
    ...(check === undefined ? {} : { check }),
  };
}

function onlyOf(factors: readonly string[]): PlanRequest['only'] {
  const bound = factors.flatMap((text) => {
    const [, id, unit] = /^([^=]+)=[^@]*@(.*)$/.exec(text) ?? [];
    return id === undefined || unit === undefined ? [] : [[id, oneOf('factor', unit, lotUnits)] as const];
  });
  return Object.fromEntries(bound);
}

function containerOf(text: string): PlanContainer {
  const [, id = '', size = '', block] = /^([^=]+)=([^@]+)(?:@(.+))?$/.exec(text) ?? [];
  if (id === '')
    refuse(
      `--container is an id, rows x columns and perhaps @ a block, such as T1=3x4@1; found ${shown(text)}`,
    );
  return { id, ...sizeOf('container', size), ...(block === undefined ? {} : { block }) };
}

function sizeOf(option: string, text: string): { rows: number; columns: number } {
  const [, rows, columns] = /^\s*([1-9]\d{0,3})\s*[x×]\s*([1-9]\d{0,3})\s*$/i.exec(text) ?? [];
  if (rows === undefined || columns === undefined)
    refuse(`--${option} gives rows x columns, such as 3x4; found ${shown(text)}`);
  return { rows: Number(rows), columns: Number(columns) };
}

function sizesOf(text: string): number[] {
  const sizes = text.split(',').map((size) => (size.trim() === '' ? NaN : Number(size)));
  const wrong = sizes.findIndex((size) => !Number.isFinite(size));
  if (wrong >= 0)
    refuse(
      `--sizes are numbers with commas between, such as 31,28.5; found ${shown(text.split(',')[wrong] ?? '')}`,
    );
  return sizes;
}

function wholeOf(option: string, text: string): number {
  const value = Number(text);
  if (!/^\d+$/.test(text) || !Number.isSafeInteger(value))
    refuse(`--${option} is a whole number; found ${shown(text)}`);
  return value;
}

function percentOf(text: string): number {
  const value = Number(text);
  if (!(value > 0 && value <= 200))
    refuse(`--variation is in percent, above 0, such as 15; found ${shown(text)}`);
  return value;
}

function oneOf<T extends string>(option: string, text: string, choices: readonly T[]): T {
  return (
    choices.find((choice) => choice === text) ??
    refuse(`--${option} is ${choices.join(', ')}; found ${shown(text)}`)
  );
}

/** Those of the site's last trial of the crop; else the fresh weight of each plant, to the gram. */
function variablesOf(like: Trial | null): readonly Variable[] {
  const known = like?.metadata.variables.slice(0, 1) ?? [];
  if (known[0]?.of === 'plant') return known;
  return [
    { id: 'fresh_weight', name: 'Fresh weight', of: 'plant', kind: 'measured', unit: 'g', resolution: 1 },
  ];
}
