import { arrangementOf, containersOf, idOf } from '../check/folder-of-table.ts';
import { say } from '../model/say.ts';
import type { TrialMetadata } from '../model/trial.ts';
import { inFlow, type YamlValue } from '../read/edit-yaml.ts';
import type { ToldPosition } from './layout-of-rows.ts';
import type { TakenRow } from './take-rows.ts';

/** What a spreadsheet does not say of its trial, and whoever grew it does. */
export interface NewTrialAnswers {
  title: string;
  question: string;
  crop: { name: string; species?: string };
  /** The day of the harvest, year-month-day; rows may have dates of their own. */
  harvested: string;
  season: string;
  setting: TrialMetadata['site']['setting'];
  site: string;
  person: string;
  licence: string;
  allotted: TrialMetadata['design']['allotted'];
  randomised: boolean;
}

/**
 * trial.yaml of a trial that was nothing but a spreadsheet so far: what the answers and the rows say, and no more.
 *
 * @param today year-month-day, the day of the first release
 */
export function newTrialYaml(
  answers: NewTrialAnswers,
  positions: readonly ToldPosition[],
  rows: readonly TakenRow[],
  today: string,
): string {
  const cuts = cutDays(rows, answers.harvested);
  const names = new Map(
    positions.map(({ levels }) => levels.get('cultivar') ?? '').map((name) => [idOf(name), name]),
  );
  const places = positions.map(({ levels, ...place }) => ({
    ...place,
    container: place.container,
    cultivar: idOf(levels.get('cultivar') ?? ''),
  }));
  const metadata: Record<string, YamlValue> = {
    title: answers.title,
    version: '1.0.0',
    status: 'finished',
    question: answers.question,
    crop: answers.crop,
    season: { year: Number(cuts[0]!.slice(0, 4)), name: answers.season },
    dates: { cuts },
    site: { name: answers.site, setting: answers.setting },
    people: [{ name: answers.person, part: 'grower' }],
    licence: answers.licence,
    factors: [
      {
        id: 'cultivar',
        name: say('Cultivar'),
        kind: 'cultivar',
        levels: [...names].map(([id, name]) => ({ id, name })),
      },
    ],
    design: {
      arrangement: arrangementOf(places, answers.allotted),
      allotted: answers.allotted,
      randomised: answers.randomised,
    },
    containers: containersOf(positions),
    variables: [{ id: 'fresh_weight', name: say('Fresh weight'), of: 'plant', kind: 'measured', unit: 'g' }],
    releases: [{ version: '1.0.0', date: today, note: say('First release.') }],
  };
  return Object.entries(metadata)
    .map(([key, value]) =>
      Array.isArray(value)
        ? `${key}:\n${(value as YamlValue[]).map((item) => `  - ${inFlow(item)}\n`).join('')}`
        : `${key}: ${inFlow(value)}\n`,
    )
    .join('');
}

/** The day of each cut: that of its rows, else the day of the harvest. */
function cutDays(rows: readonly TakenRow[], harvested: string): string[] {
  const last = Math.min(60, Math.max(1, ...rows.map(({ keys }) => Number(keys.cut))));
  return Array.from({ length: last }, (_, index) => {
    const dated = rows.find(({ keys }) => Number(keys.cut || '1') === index + 1 && keys.date !== '');
    return dated?.keys.date ?? harvested;
  });
}

/** Levels as ids, as trial.yaml of a new trial has them. */
export function withCultivarIds(positions: readonly ToldPosition[]): ToldPosition[] {
  return positions.map((position) => {
    const name = position.levels.get('cultivar');
    return name === undefined ? position : { ...position, levels: new Map([['cultivar', idOf(name)]]) };
  });
}
