import { say } from '../../model/say.ts';
import type { Cultivar } from '../../model/library.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { nearest } from '../nearest.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'unknown-cultivar',
  severity: 'error',
  acceptable: false,
  title: 'Unknown cultivar',
  meaning:
    'A level of a cultivar factor is an entry of cultivars.yaml, so that the same cultivar is one across trials, or gives its own name.',
  example: '"slate-egrett" is not in cultivars.yaml; did you mean "slate-egret"?',
  check,
};
export default rule;

/** The id of the cultivar that has that name or synonym, whatever its case; null for none. */
export function idOfName(text: string, cultivars: readonly Cultivar[]): string | null {
  const wanted = text.trim().toLowerCase();
  const found = cultivars.find(({ name, synonyms = [] }) =>
    [name, ...synonyms].some((one) => one.toLowerCase() === wanted),
  );
  return found?.id ?? null;
}

/** The cultivar of a trial of one may have any name; one that is almost a known one is a slip of it. */
function checkCrop(
  { metadata }: Pick<Facts, 'metadata'>,
  cultivars: readonly Cultivar[],
  report: Report,
): void {
  const { cultivar } = metadata.draft.crop ?? {};
  const names = cultivars.flatMap(({ id, name, synonyms = [] }) => [id, name, ...synonyms]);
  if (cultivar === undefined || names.includes(cultivar)) return;
  const best = nearest(cultivar, names);
  // A number in a name tells one cultivar from the next.
  const digits = (name: string): string => name.replaceAll(/\D/g, '');
  if (best === null || digits(best) !== digits(cultivar)) return;
  const message = say('{level} is not in cultivars.yaml; did you mean "{name}"?', {
    level: showText(cultivar),
    name: best,
  });
  const place = metadata.place(['crop', 'cultivar']);
  report(rule, { file: 'trial.yaml', place, found: cultivar, expected: best, message });
}

function check({ metadata, cultivars }: Facts, report: Report): void {
  if (cultivars === null) return;
  const known = cultivars.map(({ id }) => id);
  checkCrop({ metadata }, cultivars, report);
  for (const [index, factor] of (metadata.draft.factors ?? []).entries()) {
    if (factor.kind !== 'cultivar') continue;
    for (const [number, level] of factor.levels.entries()) {
      if (level.name !== undefined || known.includes(level.id)) continue;
      const best = idOfName(level.id, cultivars) ?? nearest(level.id, known);
      const shown = { level: showText(level.id) };
      report(rule, {
        file: 'trial.yaml',
        place: metadata.place(['factors', index, 'levels', number, 'id']),
        found: level.id,
        message:
          best === null
            ? say('{level} is not in cultivars.yaml; add it there, or give the level its own name', shown)
            : say('{level} is not in cultivars.yaml; did you mean "{name}"?', { ...shown, name: best }),
      });
    }
  }
}
