import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'level-without-position',
  severity: 'warning',
  acceptable: true,
  title: 'Level that no position has',
  meaning:
    'A factor lists a level that was planted nowhere. It was left over from another trial, or its positions were written down as another level.',
  example:
    'no position has cultivar "russet-plover"; is it left over, or is another level written for it in layout.csv?',
  check,
};
export default rule;

function check({ metadata, layout }: Facts, report: Report): void {
  const { factors = [], status } = metadata.draft;
  // What is planned may still be laid out otherwise.
  if (status === 'planned' || layout === null || !layout.treated || layout.positions.length === 0) return;
  for (const [index, { id, levels }] of factors.entries()) {
    const present = new Set(layout.positions.map(({ treatment }) => treatment[id]));
    for (const [number, level] of levels.entries()) {
      if (present.has(level.id)) continue;
      const values = { factor: id, level: showText(level.id) };
      report(rule, {
        file: 'trial.yaml',
        place: metadata.place(['factors', index, 'levels', number, 'id']),
        found: level.id,
        message:
          layout.table === null
            ? say(
                'no position has {factor} {level}; is it left over, or is another level written for it under containers?',
                values,
              )
            : say(
                'no position has {factor} {level}; is it left over, or is another level written for it in layout.csv?',
                values,
              ),
      });
    }
  }
}
