import { say } from '../../model/say.ts';
import type { Yaml } from '../../read/yaml.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'cultivar-alike',
  severity: 'warning',
  acceptable: false,
  title: 'One name for two cultivars',
  meaning:
    'Two entries of cultivars.yaml share a name or a synonym. If they are one cultivar, its trials are not compared with each other; if they are two, a reader cannot tell which is meant.',
  example:
    '"Blue Wren" is a name of both cobalt-wren and slate-egret; take it from one of them, or make one entry of the two',
};
export default rule;

const plain = (name: string): string =>
  name
    .normalize('NFKC')
    .trim()
    .toLowerCase()
    .replaceAll(/[\s-]+/g, ' ');
const textOf = (value: unknown): string | null => (typeof value === 'string' ? value : null);

/** Reports names and synonyms that two cultivars of one species have in common; each pair once. */
export function reportCultivarsAlike(
  entries: readonly unknown[],
  yaml: Pick<Yaml, 'place'>,
  report: Report,
): void {
  const owners = new Map<string, { index: number; id: string; species: string | null }[]>();
  const told = new Set<string>();
  for (const [index, entry] of entries.entries()) {
    const { id, name, species, synonyms } = (entry ?? {}) as Record<string, unknown>;
    if (typeof id !== 'string') continue;
    const own = { index, id, species: textOf(species) };
    const names: [name: string, path: (string | number)[]][] = [];
    if (typeof name === 'string') names.push([name, [index, 'name']]);
    for (const [at, synonym] of (Array.isArray(synonyms) ? (synonyms as unknown[]) : []).entries()) {
      if (typeof synonym === 'string') names.push([synonym, [index, 'synonyms', at]]);
    }
    for (const [one, path] of names) {
      const before = owners.get(plain(one)) ?? [];
      // A lettuce and a chard may well have one name.
      const other = before.find(
        (known) =>
          known.index !== index &&
          known.id !== id &&
          (known.species === null || own.species === null || plain(known.species) === plain(own.species)),
      );
      owners.set(plain(one), [...before, own]);
      if (other === undefined || told.has(`${other.id} ${id}`)) continue;
      told.add(`${other.id} ${id}`);
      const message = say(
        '{name} is a name of both {first} and {second}; take it from one of them, or make one entry of the two',
        { name: showText(one), first: other.id, second: id },
      );
      report(rule, { file: 'cultivars.yaml', place: yaml.place(path), found: one, message });
    }
  }
}
