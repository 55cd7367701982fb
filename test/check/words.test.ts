import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import harvestTable from '../../schemas/harvest.table.json' with { type: 'json' };
import readingsTable from '../../schemas/readings.table.json' with { type: 'json' };
import { explainDate, isDate } from '../../src/check/date.ts';
import { explainNumber } from '../../src/check/explain-number.ts';
import { harvestColumns } from '../../src/check/harvest-columns.ts';
import { nearest } from '../../src/check/nearest.ts';
import { parseDecimal, parseWhole } from '../../src/check/number.ts';
import { hasOrcidCheckDigit } from '../../src/check/orcid.ts';
import { patternWords } from '../../src/check/pattern-words.ts';
import { compareProblems, printCount, printProblem } from '../../src/check/print-problem.ts';
import { readingColumns } from '../../src/check/read-readings.ts';
import { showText } from '../../src/check/show-value.ts';
import { statuses } from '../../src/check/statuses.ts';
import { toGrams } from '../../src/check/to-grams.ts';
import { isUcum } from '../../src/check/ucum.ts';
import { compareVersions } from '../../src/check/versions.ts';
import { languages } from '../../src/model/language.ts';
import messages from '../../src/model/messages.json' with { type: 'json' };
import type { Problem } from '../../src/model/problem.ts';

const problem: Problem = {
  rule: 'weight-not-a-number',
  severity: 'error',
  file: 'trials/autumn-lettuce-2025/harvest.csv',
  line: 14,
  column: 7,
  found: '12O',
  expected: '120',
  message: '"12O" is not a number; write digits only, such as 120',
  hint: null,
  where: null,
};

describe('printProblem', () => {
  it('prints the line that the design shows', () => {
    expect(printProblem(problem)).toBe(
      'trials/autumn-lettuce-2025/harvest.csv:14:7  error  weight-not-a-number  "12O" is not a number; write digits only, such as 120',
    );
  });

  it('prints the path alone where there is no line, and escapes what would break the line', () => {
    const bare = { ...problem, file: 'a\nb.csv', line: null, column: null, message: 'x\u001b[31m' };
    expect(printProblem(bare)).toBe('a\\nb.csv  error  weight-not-a-number  x\\u{1b}[31m');
  });

  it('counts by severity, and sorts by file, line, column and rule', () => {
    const warning: Problem = { ...problem, severity: 'warning', line: 2 };
    const first: Problem = { ...problem, file: 'a', line: null, severity: 'note' };
    expect(printCount([problem, warning, first, warning])).toBe('1 error, 2 warnings, 1 note');
    expect([problem, warning, first].sort(compareProblems)).toEqual([first, warning, problem]);
  });
});

describe('showText', () => {
  it('cuts at 60 characters and escapes what does not show', () => {
    expect(showText('é'.repeat(61))).toBe(`"${'é'.repeat(60)}..."`);
    expect(showText('é'.repeat(60))).toBe(`"${'é'.repeat(60)}"`);
    expect(showText('a\u00a0b\tc\u200bd')).toBe('"a\\u{a0}b\\tc\\u{200b}d"');
  });
});

describe('nearest', () => {
  const known = ['fresh_weight', 'status', 'remark', 'row', 'T1'];
  it.each([
    ['fresh_wieght', 'fresh_weight'],
    ['Fresh Weight', 'fresh_weight'],
    ['stauts', 'status'],
    ['rmeark', 'remark'],
    ['t-1', 'T1'],
    ['colour', null],
    ['', null],
  ])('%s is most like %s', (name, best) => {
    expect(nearest(name, known)).toBe(best);
  });
});

describe('parseDecimal', () => {
  it.each([
    ['0', '.', 0],
    ['120', '.', 120],
    ['120.50', '.', 120.5],
    ['120,5', ',', 120.5],
    ['007', '.', 7],
  ] as const)('%s with mark %s is %d', (text, mark, value) => {
    expect(parseDecimal(text, mark)).toBe(value);
  });

  it.each([
    '',
    ' ',
    '.',
    '1.',
    '.5',
    '-1',
    '+1',
    '1e3',
    '0x1',
    '1 0',
    '1,5',
    '1.2.3',
    'NaN',
    '１',
    '1'.repeat(16),
  ])('refuses "%s"', (text) => {
    expect(parseDecimal(text, '.')).toBeNull();
  });
});

describe('parseWhole', () => {
  it('takes digits alone, and no more than nine', () => {
    expect(parseWhole('12')).toBe(12);
    for (const text of ['', '1.0', '-1', '1 ', '1234567890']) expect(parseWhole(text)).toBeNull();
  });
});

describe('explainNumber', () => {
  it.each([
    ['12O', '120'],
    ['1l8', '118'],
    ['118 g', '118'],
    ['0.118kg', '0.118'],
    ['118,5', '118.5'],
    ['1 118', '1118'],
    ["1'118.5", '1118.5'],
    ['1.118,5', '1118.5'],
    ['١١٨', '118'],
    ['１１８', '118'],
    ['118\u202f', '118'],
    ['~118', '118'],
    ['.5', '0.5'],
    ['+118', '118'],
    ['1.2e2', '120'],
    ['heavy', null],
    ['=1+1', null],
  ])('of "%s" it says to write %s', (text, expected) => {
    expect(explainNumber(text, '.').expected).toBe(expected);
  });
});

describe('dates', () => {
  it('are days of the calendar, written year-month-day', () => {
    for (const text of ['2024-02-29', '2000-02-29', '1999-12-31']) expect(isDate(text)).toBe(true);
    for (const text of ['2025-02-29', '1900-02-29', '2025-04-31', '2025-00-10', '2025-1-1', ' 2025-01-01']) {
      expect(isDate(text)).toBe(false);
    }
  });

  it.each([
    ['25.08.2025', '2025-08-25'],
    ['8/25/25', '2025-08-25'],
    ['03/04/2025', '2025-04-03 or 2025-03-04'],
    ['2025/8/5', '2025-08-05'],
    ['5 Aug 2025', '2025-08-05'],
    ['August 5, 2025', '2025-08-05'],
    ['2025-08-25 10:30', '2025-08-25'],
    ['2025-25-08', '2025-08-25'],
  ])('of %s it is said to write %s', (text, expected) => {
    expect(explainDate(text).expected).toBe(expected);
  });
});

describe('toGrams', () => {
  it('leaves grams alone and shifts the point of kilograms without a rounding', () => {
    expect(toGrams(0.1 + 0.2, 'g')).toBe(0.1 + 0.2);
    // 0.1234 * 1000 is 123.39999999999999 in binary arithmetic.
    expect(toGrams(0.1234, 'kg', '0.1234')).toBe(123.4);
    expect(toGrams(1.005, 'kg', '1,005')).toBe(1005);
    expect(toGrams(2, 'oz')).toBe(56.69904625);
    expect(toGrams(1, 'lb')).toBe(453.59237);
  });
});

describe('isUcum', () => {
  it.each([
    'g',
    'kg/m2',
    'g.m-2.d-1',
    'mS/cm',
    'umol/m2/s',
    '%',
    '{leaves}',
    '1/{pot}',
    '[lb_av]',
    '[bu_us]/[acr_us]',
    'Cel',
    '1',
  ])('knows %s', (unit) => {
    expect(isUcum(unit)).toBe(true);
  });

  it.each(['', 'grams', 'kilo', 'bushels/acre', 'g per plant', 'g²', '{open', 'oz'])(
    'does not know "%s"',
    (unit) => {
      expect(isUcum(unit)).toBe(false);
    },
  );
});

describe('compareVersions', () => {
  it('compares numbers, not letters', () => {
    expect(['1.10.0', '1.2.0', '1.2.10', '0.9.9'].sort(compareVersions)).toEqual([
      '0.9.9',
      '1.2.0',
      '1.2.10',
      '1.10.0',
    ]);
  });
});

describe('hasOrcidCheckDigit', () => {
  it('accepts the documented sample and an X, and refuses a swap of digits', () => {
    // 0000-0002-1825-0097 and 0000-0002-1694-233X are ORCID's own samples.
    expect(hasOrcidCheckDigit('0000-0002-1825-0097')).toBe(true);
    expect(hasOrcidCheckDigit('0000-0002-1694-233X')).toBe(true);
    expect(hasOrcidCheckDigit('0000-0002-1825-0079')).toBe(false);
  });
});

describe('the schemas', () => {
  it('have their patterns put into words, and no words stand idle', () => {
    const folder = new URL('../../schemas/', import.meta.url);
    const found = new Set<string>();
    for (const name of ['trial', 'site', 'cultivars', 'sheet']) {
      JSON.parse(readFileSync(new URL(`${name}.schema.json`, folder), 'utf8'), (key, value: unknown) => {
        if (key === 'pattern' && typeof value === 'string') found.add(value);
        return value;
      });
    }
    expect(readdirSync(folder)).toContain('trial.schema.json');
    expect([...found].sort()).toEqual(Object.keys(patternWords).sort());
  });

  it.each(languages.filter((each) => each !== 'en'))('are in words in %s', (other) => {
    const told: Readonly<Record<string, Partial<Record<string, string>>>> = messages;
    expect(Object.values(patternWords).filter((words) => told[words]?.[other] === undefined)).toEqual([]);
  });

  it('name the columns and statuses that are checked', () => {
    const names = (fields: readonly { name: string }[]): string[] => fields.map(({ name }) => name).sort();
    const { needed, optional } = harvestColumns;
    expect(names(harvestTable.fields)).toEqual([...needed, ...optional, '{variable}'].sort());
    expect(names(readingsTable.fields)).toEqual(['date', 'container', ...readingColumns, 'remark'].sort());
    const status = harvestTable.fields.find(({ name }) => name === 'status');
    expect(status?.constraints?.enum).toEqual(statuses);
  });
});
