import { describe, expect, it } from 'vitest';
import { checkTrial } from '../../src/check/check-trial.ts';
import { rules } from '../../src/check/rules.ts';
import { blocksHtml } from '../../src/components/sheet/sheet-html.ts';
import { unnamed } from '../../src/commands/library-of.ts';
import { siteFindings } from '../../src/compute/site-findings.ts';
import type { Problem } from '../../src/model/problem.ts';
import { readFactSheet } from '../../src/read/read-fact-sheet.ts';
import { checkSheets } from '../../src/sheets/check-sheets.ts';
import { cultivars, goodFiles } from '../check/good-folder.ts';
import { hostileSheets } from './hostile-sheets.ts';

const encoder = new TextEncoder();
const today = '2026-01-15';

/** All that the check says of the good trial with a fact sheet in it. */
function problemsOf(sheet: string): Problem[] {
  const files = new Map([...goodFiles()].map(([name, text]) => [name, encoder.encode(text)]));
  files.set('factsheet.mdx', encoder.encode(sheet));
  const { trial, problems } = checkTrial('two-lettuces', files, { cultivars, today, prefix: '' });
  if (trial === null) return problems;
  const library = { site: unnamed, cultivars, trials: siteFindings([trial]), problems: [] };
  return [...problems, ...checkSheets(library, { alone: true })];
}

/** Line and column of the sign; null where it stands nowhere. */
function markedPlace(sheet: string): { line: number; column: number } | null {
  const at = sheet.indexOf('§');
  if (at === -1) return null;
  const lines = sheet.slice(0, at).split('\n');
  return { line: lines.length, column: [...lines.at(-1)!].length + 1 };
}

const named = hostileSheets.map(([rule, sheet]) => ({
  rule,
  sheet: sheet.replace('§', ''),
  place: markedPlace(sheet),
  name: `${rule}: ${sheet.slice(0, 60).replaceAll('\n', '\\n').replaceAll('\u0000', 'NUL')}`,
}));

describe.each(named)('the sheet $name', ({ rule, sheet, place }) => {
  const problems = problemsOf(sheet);

  it('is a problem of its own rule, at its place, that keeps the trial from being published', () => {
    const found = problems.filter((problem) => problem.rule === rule);
    expect(found.map(({ severity, file }) => ({ severity, file }))).toContainEqual({
      severity: 'error',
      file: 'factsheet.mdx',
    });
    if (place !== null) expect(found.map(({ line, column }) => ({ line, column }))).toContainEqual(place);
  });

  it('runs nothing, and what is left of it is text', () => {
    expect(globalThis).not.toHaveProperty('ran');
    const read = readFactSheet(sheet, 'factsheet.mdx');
    const html = blocksHtml(read.sheet?.blocks ?? [], { pieces: new Map(), headings: [], first: 'metric' });
    expect(tagsOf(html).filter((tag) => !plainTags.has(tag))).toEqual([]);
    expect(html).not.toMatch(/<[^>]*\son|<[^>]*(javascript|vbscript|data):/i);
  });
});

const plainTags = new Set(
  'p em strong code br a ul ol li blockquote h2 table thead tbody tr th td pre hr q mark div'.split(' '),
);

function tagsOf(html: string): string[] {
  return [...html.matchAll(/<\/?([a-z0-9:!-]+)/gi)].map(([, tag]) => tag!.toLowerCase());
}

describe('the hostile sheets', () => {
  it('are more than a hundred, all different', () => {
    expect(hostileSheets.length).toBeGreaterThan(100);
    expect(new Set(hostileSheets.map(([, sheet]) => sheet)).size).toBe(hostileSheets.length);
  });

  it('try every rule of fact sheets', () => {
    const tried = new Set(hostileSheets.map(([rule]) => rule));
    // A name is no part of the text; broken/sheet-file-name tries it.
    // What makes a claim or a hard sentence is not at fault in its form, and only a warning or a note.
    const errors = rules.filter(({ severity }) => severity === 'error').map(({ rule }) => rule);
    const own = errors.filter((rule) => /^sheet-(?!file-name)/.test(rule));
    expect(own.filter((rule) => !tried.has(rule))).toEqual([]);
  });
});
