import type { Cultivar } from '../../model/library.ts';
import { say } from '../../model/say.ts';
import type { Trial } from '../../model/trial.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';
import { isAlike } from './cultivar-named-differently.ts';

const rule: Rule = {
  rule: 'gathered-cultivar-alike',
  severity: 'warning',
  acceptable: false,
  title: 'Cultivar of another site under almost a name of this one',
  meaning:
    'Across sites a cultivar is followed by its name. Two spellings make two cultivars of it, which are then compared with each other.',
  example:
    '"Slate Egrett" of Trials at Otterbrook is almost "Slate Egret" of cultivars.yaml; if it is the same, put it under its synonyms',
};
export default rule;

const plain = (name: string): string => name.normalize('NFKC').trim().toLowerCase();

/** Reports the names of a gathered trial's cultivars that are almost, and not quite, those of cultivars.yaml. */
export function reportGatheredCultivarAlike(
  report: Report,
  { metadata, origin, cultivarsThere = [] }: Trial,
  known: readonly Cultivar[],
): void {
  const here = known.flatMap(({ name, synonyms = [] }) => [name, ...synonyms]);
  const isHere = (name: string) => here.some((other) => plain(other) === plain(name));
  const levels = metadata.factors?.find(({ kind }) => kind === 'cultivar')?.levels ?? [];
  const { cultivar } = metadata.crop;
  for (const { id, name } of cultivar === undefined ? levels : [{ id: cultivar, name: undefined }]) {
    const there = cultivarsThere.find((each) => each.id === id);
    const names = [there?.name ?? name ?? id, ...(there?.synonyms ?? [])];
    if (names.some(isHere)) continue;
    const [found, alike] = names
      .map((own) => [own, here.find((other) => isAlike(own, other))] as const)
      .find(([, other]) => other !== undefined) ?? [undefined, undefined];
    if (found === undefined || alike === undefined) continue;
    report(rule, {
      file: 'trial.json',
      found,
      expected: alike,
      message: say(
        '{name} of {site} is almost {other} of cultivars.yaml; if it is the same, put it under its synonyms, and if it is another, list it there too',
        {
          name: showText(found),
          site: origin?.title ?? say('another site'),
          other: showText(alike),
        },
      ),
    });
  }
}
