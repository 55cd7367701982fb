import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { addToYaml, inFlow, setInYaml } from '../../src/read/edit-yaml.ts';

describe('Setting a value in YAML', () => {
  test('changes its place and nothing else', () => {
    const text = '# mine\nstatus:   growing # until October\ntitle: "Two"\r\n';
    expect(setInYaml(text, ['status'], 'finished')).toBe(
      '# mine\nstatus:   finished # until October\ntitle: "Two"\r\n',
    );
  });

  test('adds a key to a mapping on one line, and to one of several', () => {
    expect(setInYaml('dates: {sown: 2025-08-25} # x\n', ['dates', 'cuts'], ['2025-10-20'])).toBe(
      'dates: {sown: 2025-08-25, cuts: [2025-10-20]} # x\n',
    );
    expect(setInYaml('dates:\n  sown: 2025-08-25 # dry\nb: 1\n', ['dates', 'cuts'], ['2025-10-20'])).toBe(
      'dates:\n  sown: 2025-08-25 # dry\n  cuts: [2025-10-20]\nb: 1\n',
    );
    expect(setInYaml('dates: {}\n', ['dates', 'sown'], '2025-08-25')).toBe('dates: {sown: 2025-08-25}\n');
  });

  test('makes the mapping that is not there', () => {
    expect(setInYaml('a: 1', ['dates', 'cuts'], ['2025-10-20'])).toBe('a: 1\ndates: {cuts: [2025-10-20]}\n');
  });

  test('finds its way into lists', () => {
    const total = { value: 12.5, unit: 'g' };
    expect(
      setInYaml('c:\n  - id: T1\n    treatment:\n      a: b\n  - id: T2\n', ['c', 0, 'total'], total),
    ).toBe('c:\n  - id: T1\n    treatment:\n      a: b\n    total: {value: 12.5, unit: g}\n  - id: T2\n');
  });

  test('writes JSON into JSON', () => {
    const text = '{"status": "growing", "dates": {"sown": "2025-08-25"}}';
    const changed = setInYaml(setInYaml(text, ['status'], 'finished'), ['dates', 'cuts'], ['2025-10-20']);
    expect(JSON.parse(changed)).toEqual({
      status: 'finished',
      dates: { sown: '2025-08-25', cuts: ['2025-10-20'] },
    });
  });

  test('puts another list in the place of one over several lines, and leaves the rest as it was', () => {
    const list = [{ file: 'a.csv', columns: { 2: 'weight, g', A: 'row', '-': 'x' } }];
    const before = 'a: { b: 1 } # mine\ns:\n  - {file: b.csv}\n  - {file: c.csv}\n\nz: 2\n';
    expect(setInYaml(before, ['s'], list)).toBe(
      'a: { b: 1 } # mine\ns:\n  - {file: a.csv, columns: {"2": "weight, g", A: row, "-": x}}\n\nz: 2\n',
    );
  });

  test('keeps comments where a form was not foreseen', () => {
    const changed = setInYaml('# mine\na: &x {b: 1}\nc:\n  - 1\n  - 2\n', ['c'], 'now a word');
    expect(parse(changed)).toEqual({ a: { b: 1 }, c: 'now a word' });
    expect(changed).toContain('# mine');
  });
});

describe('Adding to a list in YAML', () => {
  const item = { date: '2025-10-20', what: 'cut: all of it' };
  const line = '{date: 2025-10-20, what: "cut: all of it"}';

  test('adds a line after the last, in its column', () => {
    expect(addToYaml('events:\n- {date: 2025-10-01, what: a} # b\nz: 1\n', ['events'], item)).toBe(
      `events:\n- {date: 2025-10-01, what: a} # b\n- ${line}\nz: 1\n`,
    );
    expect(addToYaml('events: [{date: 2025-10-01, what: a}]\n', ['events'], item)).toBe(
      `events: [{date: 2025-10-01, what: a}, ${line}]\n`,
    );
  });

  test('makes the list that is not there, with a line for each item', () => {
    expect(addToYaml('a: 1\n', ['events'], item)).toBe(`a: 1\nevents:\n  - ${line}\n`);
  });
});

test.each([
  'true',
  '1.0',
  'null',
  '- a',
  'a: b',
  'a # b',
  '"',
  '',
  ' a',
  'a ',
  '{',
  '[',
  'née 12',
  'x,y',
  '~',
  '1e3',
  '0x1',
])('The text %j comes back as it was', (text) => {
  expect(parse(inFlow({ a: text, b: [text] }))).toEqual({ a: text, b: [text] });
});
