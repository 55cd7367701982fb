/** The questions of the page for planning, asked one after the other on a terminal. */
import { say } from '../model/say.ts';
import {
  allotChoices,
  boundChoices,
  factorField,
  type FactorFields,
  mostFactors,
  type PlanFields,
  planQuestions,
} from '../plan/plan-fields.ts';
import { recordChoices } from '../plan/more-variables.ts';
import { kinds, settings } from '../plan/plan-request.ts';
import { readPlan } from '../plan/read-plan.ts';
import type { PlanFacts } from '../publish/plan-facts.ts';
import { askChoice, askChoices, askLines, askText, askYes, type Talk } from './talk.ts';

/**
 * Asks for every field, each until it is understood, beginning from what is known.
 *
 * @param from what an empty answer takes: the site's last trial, options of the command, or a first round's answers
 */
export async function askFields(talk: Talk, facts: PlanFacts, from: PlanFields): Promise<PlanFields> {
  const ask = planQuestions();
  let fields = from;
  /** What is wrong with a field as it now stands; others may not be written yet. */
  const faultOf = (name: string): string | null => {
    const read = readPlan(fields, facts);
    return 'request' in read ? null : (read.find(({ field }) => field === name)?.message ?? null);
  };
  /** Asks until the page's own reading finds no fault with the answer. */
  const until = async (name: string, once: () => Promise<void>): Promise<void> => {
    for (const before = fields; ; fields = before) {
      await once();
      const fault = faultOf(name);
      if (fault === null) return;
      talk.tell(`  ${fault}`);
    }
  };
  const text = (name: TextField, label: string) =>
    until(name, async () => {
      fields = { ...fields, [name]: await askText(talk, label, fields[name]) };
    });
  const lines = (name: 'grids' | 'sizes', label: string) =>
    until(name, async () => {
      fields = { ...fields, [name]: await askLines(talk, label, fields[name]) };
    });
  const choice = async (name: 'setting' | 'kind', label: string, values: readonly string[]) => {
    const choices = values.map((value) => ({ value, text: say(value) }));
    fields = { ...fields, [name]: await askChoice(talk, label, choices, fields[name]) };
  };

  await text('question', ask.question);
  await text('crop', ask.crop);
  await text('season', ask.season);
  await text('year', ask.year);
  await text('site', ask.site);
  await choice('setting', ask.setting, settings);
  await text('person', ask.person);
  for (let index = 0; index < mostFactors; index += 1) {
    const isGiven = await askFactor(talk, index, until, {
      get: () => fields.factors,
      set: (factors) => {
        fields = { ...fields, factors };
      },
    });
    if (!isGiven) break;
    if (index === 0) fields = { ...fields, hasCheck: await askYes(talk, ask.hasCheck, fields.hasCheck) };
  }
  await lines('grids', ask.grids);
  if (fields.grids.trim() === '') {
    await text('containers', ask.containers);
    await text('rows', ask.rows);
    await text('columns', ask.columns);
  }
  await choice('kind', ask.kind, kinds);
  await text('border', ask.border);
  await text('seedlings', ask.seedlings);
  await lines('sizes', ask.sizes);
  await until('allot', async () => {
    fields = { ...fields, allot: await askChoices(talk, ask.allot, allotChoices(), fields.allot) };
  });
  if (faultOf('plotRows') !== null || faultOf('plotColumns') !== null || inPlots(fields)) {
    await text('plotRows', ask.plotRows);
    await text('plotColumns', ask.plotColumns);
  }
  fields = {
    ...fields,
    records: await askChoices(talk, ask.records, recordChoices(), fields.records, say('nothing')),
  };
  if (fields.records.includes('taste')) await text('tasters', ask.tasters);
  await text('variation', ask.variation);
  return fields;
}

type TextField = {
  [Name in keyof PlanFields]: PlanFields[Name] extends string ? Name : never;
}[keyof PlanFields];

const inPlots = ({ allot, factors }: PlanFields): boolean =>
  allot.includes('plot') || factors.some(({ bound }) => bound === 'plot');

/** One more thing that differs; false where there is none, which the first may not say. */
async function askFactor(
  talk: Talk,
  index: number,
  until: (name: string, once: () => Promise<void>) => Promise<void>,
  factors: { get: () => readonly FactorFields[]; set: (factors: readonly FactorFields[]) => void },
): Promise<boolean> {
  const ask = planQuestions();
  const own = (): FactorFields => factors.get()[index] ?? { factor: '', levels: '', bound: '' };
  const put = (changed: Partial<FactorFields>): void => {
    factors.set([
      ...factors.get().slice(0, index),
      { ...own(), ...changed },
      ...factors.get().slice(index + 1),
    ]);
  };
  await until(factorField('factor', index), async () => {
    put({ factor: await askText(talk, index === 0 ? ask.factor : ask.another, own().factor) });
  });
  if (index > 0 && own().factor.trim() === '') {
    factors.set(factors.get().slice(0, index));
    return false;
  }
  await until(factorField('levels', index), async () => {
    put({ levels: await askLines(talk, index === 0 ? ask.levels : ask.otherLevels, own().levels) });
  });
  put({ bound: await askChoice(talk, ask.bound, boundChoices(), own().bound) });
  return true;
}
