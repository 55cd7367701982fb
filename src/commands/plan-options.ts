/** What `plan` is told on the command line, and what it takes from the site's newest trial of the crop. */
import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import { lotUnits } from '../compute/lots/lot-place.ts';
import type { Cultivar } from '../model/library.ts';
import { say } from '../model/say.ts';
import type { Trial, Variable } from '../model/trial.ts';
import { moreVariables, recordable } from '../plan/more-variables.ts';
import { kinds, type PlanRequest, settings } from '../plan/plan-request.ts';
import {
  refuse,
  seasonOf,
  factorOf,
  onlyOf,
  containerOf,
  sizeOf,
  sizesOf,
  wholeOf,
  percentOf,
  oneOf,
} from './plan-option-values.ts';
import { wrongUse } from './usage.ts';

export const options = {
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
  record: { type: 'string', multiple: true },
  tasters: { type: 'string' },
  unreplicated: { type: 'boolean' },
} as const;

/** Whether something is not said that proposals cannot be made without. */
export function lacksOptions(args: string[]): boolean {
  const { values } = parseArgs({ args, allowPositionals: true, options });
  const needed = ['question', 'crop', 'season', 'factor', 'container', 'allot'] as const;
  return needed.some((name) => values[name] === undefined);
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
  if (positionals.length > 1)
    throw wrongUse(say('One folder is expected; found {count}.', { count: positionals.length }));
  const needed = (name: 'question' | 'crop' | 'season', example: string) =>
    values[name] ??
    refuse(say('--{option} is missing, such as --{option} "{example}"', { option: name, example }));
  const crop = needed('crop', say('Lettuce'));
  const like =
    known.trials.find(({ metadata }) => metadata.crop.name.toLowerCase() === crop.toLowerCase()) ?? null;
  const nearest = like ?? known.trials[0] ?? null;
  const [folder] = positionals;
  const question = needed('question', say('Do the newcomers match the check cultivar?'));
  const season = needed('season', `${say('spring')} 2027`);
  const request: PlanRequest = {
    id: folder === undefined ? 'planned-trial' : basename(folder),
    title: values.title ?? titleOf(crop, values.factor ?? [], season),
    question,
    crop: { name: crop, ...(like?.metadata.crop.species ? { species: like.metadata.crop.species } : {}) },
    season: seasonOf(season),
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
    variables: [...variablesOf(like), ...recordsOf(values.record ?? [], values.tasters ?? '')],
  };
  if (request.factors.length === 0)
    refuse(say('--factor is missing, such as --factor cultivar=cobalt-wren,slate-egret'));
  if (request.containers.length === 0)
    refuse(say('--container is missing, such as --container T1=3x4, once for each'));
  if (request.allot.length === 0)
    refuse(
      say(
        '--allot is missing: container, plot or position, once for each that treatments can be allotted to',
      ),
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

/** "Lettuce: cultivar, spring 2027", to be bettered by the grower. */
function titleOf(crop: string, factors: readonly string[], season: string): string {
  const names = factors.map((text) => text.split('=')[0]!.replaceAll('_', ' '));
  return `${crop}: ${names.join(` ${say('and')} `)}, ${season}`;
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
    refuse(say('--site and --setting are missing, such as --site Fernhollow --setting "rain shelter"'));
  return { name, setting: oneOf('setting', setting, settings) };
}

function peopleOf(name: string | undefined, like: Trial | null): PlanRequest['people'] {
  if (name !== undefined) return [{ name, part: 'grower' }];
  return (
    like?.metadata.people ??
    refuse(say('--person is missing: who will grow it, such as --person "Imke Farrant"'))
  );
}

/** Those of the site's last trial of the crop; else the fresh weight of each plant, to the gram. */
function variablesOf(like: Trial | null): readonly Variable[] {
  const known = like?.metadata.variables.slice(0, 1) ?? [];
  if (known[0]?.of === 'plant') return known;
  return [
    {
      id: 'fresh_weight',
      name: say('Fresh weight'),
      of: 'plant',
      kind: 'measured',
      unit: 'g',
      resolution: 1,
    },
  ];
}

/** What is recorded beside the weight. */
function recordsOf(records: readonly string[], tasters: string): Variable[] {
  const chosen = records.map((text) => oneOf('record', text, recordable));
  const names = tasters
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');
  if (chosen.includes('taste') && names.length === 0)
    refuse(say('--tasters is missing: who tastes, such as --tasters A,B,C'));
  return moreVariables(chosen, names);
}
