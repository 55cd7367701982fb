import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'trial-id',
  severity: 'error',
  acceptable: false,
  title: 'Folder name that is no id',
  meaning:
    'The name of the folder is the id of the trial and part of its address: 3 to 64 lower-case letters, digits and hyphens.',
  example: '"Autumn Lettuce" is no id for a trial; rename the folder to autumn-lettuce',
  check,
};
export default rule;

/** `/data/checks/` is a page of the site's own. */
const taken = 'checks';

function check({ id }: Facts, report: Report): void {
  if (id === taken) {
    const example = `${id}-of-2026`;
    const message = say(
      '{id} is the address of the page of checks; add what was tried and when, such as {example}',
      { id: showText(id), example },
    );
    report(rule, { file: 'trial.yaml', found: id, expected: example, message });
    return;
  }
  if (/^[a-z0-9-]{3,64}$/.test(id)) return;
  const plain = id
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 64);
  const shown = { id: showText(id) };
  const message =
    plain.length >= 3
      ? say('{id} is no id for a trial; rename the folder to {name}', { ...shown, name: plain })
      : say(
          '{id} is no id for a trial; rename the folder to 3 to 64 lower-case letters, digits and hyphens',
          shown,
        );
  report(rule, { file: 'trial.yaml', found: id, expected: plain, message });
}
