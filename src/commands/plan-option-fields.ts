/** The options of `plan` as the fields that its prompts begin from. */
import { parseArgs } from 'node:util';
import { say } from '../model/say.ts';
import type { PlanFields } from '../plan/plan-fields.ts';
import type { PlanContainer } from '../plan/plan-request.ts';
import { seasonOf, factorOf, onlyOf, containerOf, sizeOf, wholeOf } from './plan-option-values.ts';
import { options } from './plan-options.ts';
import { wrongUse } from './usage.ts';

/** What of the options a form's fields can begin from, and the folder. */
export function fieldsOfOptions(args: string[]): {
  fields: Partial<PlanFields>;
  folder: string | null;
  seed: number | null;
} {
  const { values, positionals } = parseArgs({ args, allowPositionals: true, options });
  if (positionals.length > 1)
    throw wrongUse(say('One folder is expected; found {count}.', { count: positionals.length }));
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
    ...copied(values, ['variation', 'allot', 'tasters']),
    ...(values.record === undefined ? {} : { records: values.record }),
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
