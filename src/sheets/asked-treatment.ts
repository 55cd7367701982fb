import { showText } from '../check/show-value.ts';
import type { Findings, TreatmentDescription } from '../model/findings.ts';
import { say } from '../model/say.ts';
import type { Treatment } from '../model/trial.ts';
import type { Asked, ComponentAttribute } from './component.ts';
import type { Found } from './asked-trial.ts';
import { refuseForm, refuseMissing, refuseName } from './refuse.ts';

export const whereAttribute: ComponentAttribute = {
  name: 'where',
  meaning:
    'The treatment, as factor=level by their ids in trial.yaml, such as cultivar=slate-egret; several factors with commas between them. Left out where the trial has one treatment only.',
};

export const cutAttribute: ComponentAttribute = {
  name: 'cut',
  form: { pattern: /^(all|[1-9]\d?)$/, words: 'the number of a cut, or all' },
  meaning: 'The cut by its number, or all (as where it is left out) for all cuts together.',
};

/** The treatments that a cut's numbers are given for; null where the trial has no such cut, which is reported. */
export function askedCut(
  asked: Asked,
  findings: Findings,
): { cut: number | 'all'; descriptions: readonly TreatmentDescription[] } | null {
  const given = asked.attribute('cut') ?? 'all';
  const cuts = findings.treatments_by_cut.map(({ cut }) => String(cut));
  // Where there is one cut, it is all of them.
  if (given === 'all' || (given === '1' && cuts.length === 0))
    return { cut: 'all', descriptions: findings.treatments };
  const found = findings.treatments_by_cut.find(({ cut }) => String(cut) === given);
  if (found === undefined)
    return refuseName(
      asked,
      'cut',
      say('the trial has no cut {name}', { name: showText(given) }),
      given,
      cuts.length === 0 ? ['1'] : cuts,
    );
  return { cut: found.cut, descriptions: found.treatments };
}

/** A treatment, or a part of one, as an attribute names it: `factor=level, factor=level`. */
export function askedLevels(asked: Asked, attribute: string, { trial }: Found): Treatment | null {
  const text = asked.attribute(attribute);
  if (text === null) return {};
  const treatment: Record<string, string> = {};
  const factors = trial.metadata.factors ?? [];
  for (const part of text.split(',')) {
    const [id = '', level, ...more] = part.split('=').map((each) => each.trim());
    if (id === '' || level === undefined || level === '' || more.length > 0) {
      const factor = factors[0];
      const example =
        factor === undefined ? 'factor=level' : `${factor.id}=${factor.levels[0]?.id ?? 'level'}`;
      return refuseForm(
        asked,
        attribute,
        say('{attribute} names a treatment as factor=level, such as {attribute}="{example}"', {
          attribute,
          example,
        }),
      );
    }
    const factor = factors.find((each) => each.id === id);
    if (factor === undefined) {
      return refuseName(
        asked,
        attribute,
        say('the trial has no factor {name}', { name: showText(id) }),
        id,
        factors.map((each) => each.id),
      );
    }
    const levels = factor.levels.map((each) => each.id);
    if (!levels.includes(level)) {
      const fault = say('{factor} has no level {name}', { factor: id, name: showText(level) });
      return refuseName(asked, attribute, fault, level, levels);
    }
    if (Object.hasOwn(treatment, id)) {
      const fault = say('{attribute} names the factor {factor} twice; keep one', { attribute, factor: id });
      return refuseForm(asked, attribute, fault);
    }
    treatment[id] = level;
  }
  return treatment;
}

/** The one treatment that `where` names, with its place in the tables, from 0. */
export function askedTreatment(
  asked: Asked,
  found: Found,
  descriptions: readonly TreatmentDescription[],
): { description: TreatmentDescription; row: number } | null {
  const levels = askedLevels(asked, 'where', found);
  if (levels === null) return null;
  const fitting = descriptions.flatMap((description, row) =>
    fits(description.treatment, levels) ? [{ description, row }] : [],
  );
  const [only, another] = fitting;
  if (only !== undefined && another === undefined) return only;
  const known = descriptions.map(({ treatment }) => written(treatment));
  if (only === undefined) {
    const fault = say('the trial did not grow {name}', { name: showText(written(levels)) });
    return refuseName(asked, 'where', fault, written(levels), known);
  }
  const fewer =
    fitting.length === descriptions.length
      ? known
      : fitting.map(({ description }) => written(description.treatment));
  const values = { component: asked.component.name, treatments: fewer.join('; ') };
  if (asked.attribute('where') === null) {
    const message = say('{component} needs one treatment in where; there are {treatments}', values);
    return refuseMissing(asked, 'where', message);
  }
  const message = say('{component} needs one treatment in where; it fits {treatments}', values);
  return refuseForm(asked, 'where', message);
}

export function fits(treatment: Treatment, levels: Treatment): boolean {
  return Object.entries(levels).every(([factor, level]) => treatment[factor] === level);
}

/** A treatment as `where` names it. */
export function written(treatment: Treatment): string {
  return Object.entries(treatment)
    .map(([factor, level]) => `${factor}=${level}`)
    .join(', ');
}
