import { say } from '../../model/say.ts';
import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';
import { nearest, otherLetters } from '../nearest.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'unknown-container',
  severity: 'error',
  acceptable: false,
  title: 'Unknown container',
  meaning: 'The row names a container that trial.yaml does not list.',
  example: '"T12" is no container of trial.yaml; did you mean "T1"?',
};
export default rule;

export function reportUnknownContainer(
  report: Report,
  table: Table,
  row: CsvRow,
  container: string,
  known: readonly string[],
): void {
  report(rule, {
    file: table.file,
    place: table.place(row, 'container'),
    found: container,
    message: messageOf(container, known),
  });
}

function messageOf(container: string, known: readonly string[]): string {
  const names = known.length <= 12 ? known.join(', ') : null;
  if (container === '')
    return names === null
      ? say('the container is empty')
      : say('the container is empty; containers: {names}', { names });
  const shown = { container: showText(container) };
  if (/^(grand |sub)?(total|sum|mean|average)/i.test(container))
    return say('{container} is no container of trial.yaml; delete the line of totals', shown);
  if (container.toLowerCase() === 'container')
    return say('{container} is no container of trial.yaml; delete the headings that stand here again', shown);
  const best = nearest(container, known);
  if (best !== null)
    return (
      say('{container} is no container of trial.yaml; did you mean "{name}"?', { ...shown, name: best }) +
      otherLetters(container, best)
    );
  return names === null
    ? say('{container} is no container of trial.yaml', shown)
    : say('{container} is no container of trial.yaml; containers: {names}', { ...shown, names });
}
