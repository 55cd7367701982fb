import { distance } from 'fastest-levenshtein';
import type { Cultivar } from '../../model/library.ts';
import { say } from '../../model/say.ts';
import type { Path } from '../../read/yaml.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';
import type { TrialText } from '../trial-text.ts';

const rule: Rule = {
  rule: 'cultivar-named-differently',
  severity: 'warning',
  acceptable: false,
  title: 'One cultivar under two names',
  meaning: 'A cultivar is followed across trials by its name. Two spellings make two cultivars of it.',
  example: '"Slate Egrett" is almost "Slate Egret" of cultivars.yaml; is it the same?',
};
export default rule;

/** A name in a trial that stands for no entry of cultivars.yaml, and where it stands. */
interface FreeName {
  name: string;
  text: TrialText;
  path: Path;
}

export function reportCultivarNamedDifferently(
  trials: readonly TrialText[],
  cultivars: readonly Cultivar[],
  report: Report,
): void {
  const known = new Map<string, string>();
  for (const { id, name, synonyms = [] } of cultivars) {
    for (const one of [name, ...synonyms, id]) known.set(one, 'cultivars.yaml');
  }
  for (const { name, text, path } of trials.flatMap((one) => freeNames(one, known))) {
    const alike = [...known].find(([other]) => isAlike(name, other));
    if (alike !== undefined) {
      const message = say('{name} is almost {other} of {where}; is it the same cultivar? Write one name', {
        name: showText(name),
        other: showText(alike[0]),
        where: alike[1],
      });
      report(rule, { file: text.file, place: text.place(path), found: name, expected: alike[0], message });
    }
    if (!known.has(name)) known.set(name, text.trial.id);
  }
}

function freeNames(text: TrialText, known: ReadonlyMap<string, string>): FreeName[] {
  const { factors = [], crop } = text.trial.metadata;
  const names: FreeName[] = [];
  for (const [index, factor] of factors.entries()) {
    if (factor.kind !== 'cultivar') continue;
    for (const [number, { id, name }] of factor.levels.entries()) {
      const path = ['factors', index, 'levels', number, 'name'];
      if (name !== undefined && !known.has(id) && !known.has(name)) names.push({ name, text, path });
    }
  }
  const { cultivar } = crop;
  if (cultivar !== undefined && !known.has(cultivar))
    names.push({ name: cultivar, text, path: ['crop', 'cultivar'] });
  return names;
}

const plain = (name: string): string =>
  name
    .normalize('NFKC')
    .toLowerCase()
    .replaceAll(/[\s_'’"-]+/g, '');

/** Alike but not the same: other case, spaces or hyphens, or a letter or two apart in a long name without digits. */
export function isAlike(a: string, b: string): boolean {
  if (a === b) return false;
  const [one, other] = [plain(a), plain(b)];
  if (one === other) return true;
  // Numbered lines (B-17, B-18) differ by a digit and are different.
  if (/\d/.test(one) || Math.min(one.length, other.length) < 6) return false;
  return distance(one, other) <= (one.length >= 9 ? 2 : 1);
}
