import { describe, expect, it } from 'vitest';
import { readYaml } from '../../src/read/yaml.ts';

describe('readYaml', () => {
  it('reads YAML 1.2, in which yes is a text and a date is one too', () => {
    expect(readYaml('a: yes\nb: 2025-10-20\nc: 0o10\n').value).toEqual({ a: 'yes', b: '2025-10-20', c: 8 });
  });

  it('knows where every value and key stands', () => {
    const yaml = readYaml('title: x\r\ncontainers:\r\n  - {id: T1, rows: 3}\r\n  - id: T2\r\n    rows:\r\n');
    expect(yaml.place(['title'])).toEqual({ line: 1, column: 8 });
    expect(yaml.keyPlace(['title'])).toEqual({ line: 1, column: 1 });
    expect(yaml.place(['containers', 0, 'rows'])).toEqual({ line: 3, column: 20 });
    expect(yaml.keyPlace(['containers', '0', 'rows'])).toEqual({ line: 3, column: 14 });
    expect(yaml.place(['containers', 1, 'rows'])).toEqual({ line: 5, column: 5 });
  });

  it('gives the nearest ancestor of what does not exist', () => {
    const yaml = readYaml('a:\n  b: 1\n');
    expect(yaml.place(['a', 'c', 'd'])).toEqual({ line: 2, column: 3 });
  });

  it('looks through an alias', () => {
    const yaml = readYaml('a: &x {b: 1}\nc: *x\n');
    expect(yaml.place(['c', 'b'])).toEqual({ line: 1, column: 11 });
  });

  it.each([
    ['duplicate key', 'a: 1\nb: 2\na: 3\n', 3],
    ['tab', 'a:\n\tb: 1\n', 2],
    ['syntax', 'a: [1, 2\nb: 3\n', 2],
    ['several documents', 'a: 1\n---\nb: 2\n', 2],
  ])('reports a fault of kind %s with its line', (kind, text, line) => {
    const fault = readYaml(text).faults.find((one) => one.kind === kind);
    expect(fault?.place?.line).toBe(line);
  });

  it('refuses aliases that unfold without end, and a number that never was', () => {
    const lines = ['a: &a [x,x,x,x,x,x,x,x,x]'];
    for (const [name, of] of ['ba', 'cb', 'dc', 'ed', 'fe'])
      lines.push(`${name!}: &${name!} [${Array(9).fill(`*${of!}`).join()}]`);
    const yaml = readYaml(lines.join('\n'));
    expect(yaml.value).toBeNull();
    expect(yaml.faults.map(({ kind }) => kind)).toEqual(['aliases']);
  });

  it('survives nesting beyond the stack', () => {
    expect(readYaml('a: ' + '['.repeat(50_000)).faults.length).toBeGreaterThan(0);
  });
});
