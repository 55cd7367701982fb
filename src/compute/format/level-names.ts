import { say } from '../../model/say.ts';
import type { Cultivar } from '../../model/library.ts';
import type { Treatment, Trial } from '../../model/trial.ts';

/** The name of a factor's level as a reader sees it. */
export type LevelNames = (factor: string, level: string) => string;

/**
 * Names of a trial's levels: the level's own name, else the cultivar's from the site's list, else the id.
 */
export function levelNames(trial: Trial, cultivars: readonly Cultivar[] = []): LevelNames {
  return (factorId, levelId) => {
    const factor = trial.metadata.factors?.find((candidate) => candidate.id === factorId);
    const own = factor?.levels.find((level) => level.id === levelId)?.name;
    if (own !== undefined) return own;
    const listed = factor?.kind === 'cultivar' && cultivars.find((cultivar) => cultivar.id === levelId);
    return listed ? listed.name : levelId;
  };
}

/** Letters that are written from right to left. */
const rightToLeft = /[\u0590-\u08FF\uFB1D-\uFDFF\uFE70-\uFEFC\u{10800}-\u{10FFF}\u{1E800}-\u{1EFFF}]/u;

/**
 * A name written from right to left, within signs that keep it apart: a weight behind it would else be shown
 * before it, beside the name of another treatment.
 */
function keptApart(name: string): string {
  return rightToLeft.test(name) ? `\u2068${name}\u2069` : name;
}

/**
 * A treatment in words. A level that says nothing by itself (a number) carries its factor's name:
 * "Cobalt Wren, solution strength 0.5". The empty treatment is the whole trial.
 */
export function treatmentName(trial: Trial, treatment: Treatment, names: LevelNames): string {
  const factors = trial.metadata.factors ?? [];
  const ids = Object.keys(treatment).sort(
    (a, b) => factors.findIndex((factor) => factor.id === a) - factors.findIndex((factor) => factor.id === b),
  );
  if (ids.length === 0) return say('All plants');
  return ids
    .map((id) => {
      const name = names(id, treatment[id]!);
      const factor = factors.find((candidate) => candidate.id === id);
      return /^[\d.,\s]+$/.test(name) && factor
        ? `${keptApart(factor.name.toLowerCase())} ${name}`
        : keptApart(name);
    })
    .join(', ')
    .replace(/^\u2068?\p{Ll}/u, (letter) => letter.toUpperCase());
}

/** True where every factor that has a check stands at it. */
export function isCheck(trial: Trial, treatment: Treatment): boolean {
  const checks = (trial.metadata.factors ?? []).filter((factor) => factor.check !== undefined);
  return checks.length > 0 && checks.every((factor) => treatment[factor.id] === factor.check);
}
