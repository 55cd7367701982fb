import { levelNames } from '../../compute/format/level-names.ts';
import type { Cultivar } from '../../model/library.ts';
import type { Factor, Trial } from '../../model/trial.ts';
import type { Sentence } from '../prose/passage.ts';
import type { ClaimWords } from './claim-words.ts';
import { phrase } from './phrases.ts';

/** A level of a factor that a sentence names. */
export interface NamedLevel {
  factor: string;
  level: string;
  /** Where its first name stands. */
  index: number;
  /** As named there. */
  text: string;
}

/** The levels of a trial's factors that a text names, in its order, each once. */
export function namedLevels(
  text: string,
  trial: Trial,
  cultivars: readonly Cultivar[],
  words: Pick<ClaimWords, 'check' | 'levels'>,
): NamedLevel[] {
  const names = levelNames(trial, cultivars);
  const found = (trial.metadata.factors ?? []).flatMap((factor) =>
    factor.levels.flatMap(({ id }): NamedLevel[] => {
      const own = [names(factor.id, id), id.replaceAll('-', ' '), id, ...synonymsOf(id, factor, cultivars)];
      const spoken = own.filter((name) => !/^[\d.,]+$/.test(name)).map(phrase);
      const check = factor.check === id ? words.check.map(phrase) : [];
      const all = [...spoken, ...check, ...asNumber(id, factor, words)];
      if (all.length === 0) return [];
      // A name that an "s" makes plural, or that begins another, is still that name.
      const pattern = new RegExp(
        `(?<![\\p{L}\\p{N}.])(?:${all.join('|')})(?:['’]?s)?(?![\\p{L}\\p{N}])`,
        'iu',
      );
      const match = pattern.exec(text);
      return match === null ? [] : [{ factor: factor.id, level: id, index: match.index, text: match[0] }];
    }),
  );
  return found.sort((a, b) => a.index - b.index);
}

function synonymsOf(id: string, { kind }: Factor, cultivars: readonly Cultivar[]): readonly string[] {
  if (kind !== 'cultivar') return [];
  return cultivars.find((each) => each.id === id)?.synonyms ?? [];
}

/** "half strength", "strength 0.5", "two plants": a number beside a word of its factor's name. */
function asNumber(id: string, { name }: Factor, words: Pick<ClaimWords, 'levels'>): string[] {
  const value = Number(id);
  if (id.trim() === '' || Number.isNaN(value)) return [];
  const spoken = Object.entries(words.levels).flatMap(([word, number]) => (number === value ? [word] : []));
  const number = [id, ...spoken].map(phrase).join('|');
  const parts = name.split(/\s+/).filter((part) => part.length > 3);
  return parts.flatMap((part) => {
    const stem = `${phrase(part.replace(/s$/i, ''))}s?`;
    return [`(?:${number})[\\s-]*${stem}`, `${stem}\\s+(?:${number})`];
  });
}

/** The levels that a sentence names in words, or by what its components ask for. */
export function levelsInSentence(
  { text, components }: Pick<Sentence, 'text' | 'components'>,
  trial: Trial,
  cultivars: readonly Cultivar[],
  words: Pick<ClaimWords, 'check' | 'levels'>,
): NamedLevel[] {
  const found = namedLevels(text, trial, cultivars, words);
  const asked = components.flatMap(({ index, component }) =>
    component.attributes
      .filter(({ name }) => name === 'where' || name === 'a' || name === 'b')
      .flatMap(({ value }) => value.split(','))
      .map((part) => part.split('=').map((each) => each.trim()))
      .map(([factor = '', level = '']) => ({ factor, level, index, text: level })),
  );
  for (const each of asked) {
    const known = found.some(({ factor, level }) => factor === each.factor && level === each.level);
    if (!known && each.level !== '') found.push(each);
  }
  return found.sort((a, b) => a.index - b.index);
}
