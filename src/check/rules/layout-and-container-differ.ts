import { say } from '../../model/say.ts';
import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'layout-and-container-differ',
  severity: 'error',
  acceptable: false,
  title: 'Layout and container differ',
  meaning: 'trial.yaml gives the whole container a treatment or a block, and layout.csv another.',
  example: 'cultivar is "slate-egret", but trial.yaml gives T1 "cobalt-wren"',
};
export default rule;

export function reportLayoutAndContainerDiffer(
  report: Report,
  table: Table,
  row: CsvRow,
  name: string,
  values: { layout: string; container: string; id: string },
): void {
  const { layout, container, id } = values;
  report(rule, {
    file: table.file,
    place: table.place(row, name),
    found: layout,
    expected: container,
    message: say('{column} is {found}, but trial.yaml gives {container} {other}; one of the two is wrong', {
      column: name,
      found: showText(layout),
      container: id,
      other: showText(container),
    }),
    where: id,
  });
}
