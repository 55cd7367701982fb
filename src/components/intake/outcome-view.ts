/** What comes of a spreadsheet: rows, faults, and the cells that are not used. */
import { statuses } from '../../check/statuses.ts';
import type { Intake } from '../../intake/bring-in.ts';
import { cellName, columnLetters } from '../../intake/cell-name.ts';
import { inSheet } from '../../intake/intake-problem.ts';
import type { Mapping } from '../../intake/mapping.ts';
import type { Problem } from '../../model/problem.ts';
import { say, sayCount } from '../../model/say.ts';
import type { Sheet } from '../../model/workbook.ts';
import { make } from '../weigh/dom.ts';

const rowsShown = 12;
const listed = 200;

/** The result in one sentence, to be read out. */
export function verdict({ rows, used, notUsed, files }: Intake, problems: readonly Problem[]): string {
  const errors = problems.filter(({ severity }) => severity === 'error').length;
  if (files === null)
    return sayCount(
      errors,
      '{count} thing must be said or mended first.',
      '{count} things must be said or mended first.',
    );
  return say('{rows}: {cells} used, {left} not used.', {
    rows: sayCount(rows.length, '{count} row of the harvest', '{count} rows of the harvest'),
    cells: sayCount(used.size, '{count} cell', '{count} cells'),
    left: notUsed.length,
  });
}

/** Signs in the place of a value that nothing explains yet, each with a choice of what it means. */
export function wordsView(
  problems: readonly Problem[],
  mappings: readonly Mapping[],
  explain: (word: string, meant: string) => void,
): HTMLElement | null {
  const unknown = problems.flatMap(({ rule, found }) =>
    rule === 'spreadsheet-value' && found !== null ? [found] : [],
  );
  const explained = mappings.flatMap(({ words }) => Object.keys(words));
  const all = [
    ...new Set([
      ...explained,
      ...unknown.filter((word) => !/^[-\d.,\s]+\p{L}*$/u.test(word) || word === '-'),
    ]),
  ];
  if (all.length === 0) return null;
  const fields = all.map((word) => {
    const meant = mappings.map(({ words }) => words[word]).find((one) => one !== undefined) ?? '';
    const choices = ['', ...statuses.filter((status) => status !== 'weighed'), 'blank'];
    const options = choices.map((value) =>
      make('option', {
        text:
          value === '' ? say('not said yet') : value === 'blank' ? say('nothing was written') : say(value),
        attributes: { value },
      }),
    );
    const select = make('select', {}, ...options);
    select.value = meant;
    select.addEventListener('change', () => {
      explain(word, select.value);
    });
    return make('label', { class: 'field' }, make('span', { text: say('“{word}” means', { word }) }), select);
  });
  return make(
    'div',
    {},
    make('h3', { text: say('Signs in the place of a weight') }),
    make('div', { class: 'fields' }, ...fields),
  );
}

/** Faults and remarks, one to a line. */
export function problemsView(problems: readonly Problem[], remarks: readonly string[]): HTMLElement {
  const lines = problems.slice(0, listed).map(({ severity, file, line, message }) => {
    const place =
      file.startsWith('source/') || line === null ? file : say('{file}, line {line}', { file, line });
    const isOfSheet = /!?[A-Z]{1,3}\d+: /.test(message);
    return make(
      'li',
      { class: `severity-${severity}` },
      make('strong', { text: severityWords(severity) }),
      ` ${isOfSheet ? '' : `${place}: `}${message}`,
    );
  });
  const more = problems.length - lines.length;
  return make(
    'ul',
    { class: 'intake-problems' },
    ...remarks.map((remark) => make('li', { text: remark })),
    ...lines,
    ...(more > 0 ? [make('li', { text: say('And {more} more.', { more }) })] : []),
  );
}

function severityWords(severity: Problem['severity']): string {
  if (severity === 'error') return say('To be mended:');
  return severity === 'warning' ? say('To be looked at:') : say('Note:');
}

/** The first rows that harvest.csv would have. */
export function rowsView({ rows }: Intake): HTMLElement {
  const variables = [...new Set(rows.flatMap(({ values }) => [...values.keys()]))];
  const factors = [...new Set(rows.flatMap(({ levels }) => [...levels.keys()]))];
  const keys = (['container', 'row', 'column', 'plant', 'cut', 'date'] as const).filter((key) =>
    rows.some((row) => row.keys[key] !== ''),
  );
  const shown = rows.slice(0, rowsShown).map((row) => [
    ...keys.map((key) => row.keys[key]),
    ...factors.map((factor) => row.levels.get(factor) ?? ''),
    ...variables.map((variable) => {
      const value = row.values.get(variable);
      return value === undefined ? '' : `${value.digits} ${value.unit}`.trim();
    }),
    row.status,
    row.remark,
  ]);
  const head = [...keys.map((key) => say(key)), ...factors, ...variables, say('status'), say('remark')];
  const isFilled = head.map((_, index) => shown.some((cells) => cells[index] !== ''));
  const kept = <T>(cells: readonly T[]): T[] => cells.filter((_, index) => isFilled[index]);
  return region(
    say('The first rows of harvest.csv'),
    make(
      'table',
      {},
      make(
        'thead',
        {},
        make('tr', {}, ...kept(head).map((text) => make('th', { text, attributes: { scope: 'col' } }))),
      ),
      make(
        'tbody',
        {},
        ...shown.map((cells) => make('tr', {}, ...kept(cells).map((text) => make('td', { text })))),
      ),
    ),
  );
}

/** Every cell that is not used, with the reason. */
export function notUsedView({ notUsed }: Intake): HTMLElement | null {
  if (notUsed.length === 0) return null;
  const rows = notUsed
    .slice(0, listed)
    .map(({ cell, text, why }) =>
      make(
        'tr',
        {},
        make('th', { text: cell, attributes: { scope: 'row' } }),
        make('td', { text }),
        make('td', { text: why }),
      ),
    );
  const head = [say('Cell'), say('What stands there'), say('Why it is not used')];
  return region(
    say('Cells that are not used'),
    make(
      'table',
      {},
      make(
        'thead',
        {},
        make('tr', {}, ...head.map((text) => make('th', { text, attributes: { scope: 'col' } }))),
      ),
      make('tbody', {}, ...rows),
    ),
  );
}

const lines = 60;
const fields = 40;

/** The sheet as it is, each cell with what it was taken for; those not used are crossed out. */
export function sheetView({ name, rows }: Sheet, { used }: Intake): HTMLElement {
  const shown = rows.slice(0, lines);
  const width = Math.min(fields, Math.max(1, ...shown.map((row) => row.length)));
  const head = Array.from({ length: width }, (_, column) =>
    make('th', { text: columnLetters(column), attributes: { scope: 'col' } }),
  );
  const body = shown.map((row, at) =>
    make(
      'tr',
      {},
      make('th', { text: String(at + 1), attributes: { scope: 'row' } }),
      ...Array.from({ length: width }, (_, column) => {
        const text = row[column]?.text ?? '';
        const isUsed = used.has(inSheet(name, cellName(at, column)));
        return text === '' || isUsed ? make('td', { text }) : make('td', {}, make('s', { text }));
      }),
    ),
  );
  return region(
    say('The sheet'),
    make(
      'table',
      { class: 'sheet' },
      make('thead', {}, make('tr', {}, make('td'), ...head)),
      make('tbody', {}, ...body),
    ),
  );
}

function region(name: string, table: HTMLElement): HTMLElement {
  return make(
    'div',
    { class: 'wide-table', attributes: { role: 'region', tabindex: '0', 'aria-label': name } },
    table,
  );
}
