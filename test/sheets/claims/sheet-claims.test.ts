import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { loadTrial } from '../../../src/commands/load-content.ts';
import { unnamed } from '../../../src/commands/library-of.ts';
import { siteFindings } from '../../../src/compute/site-findings.ts';
import type { Library } from '../../../src/model/library.ts';
import type { Problem } from '../../../src/model/problem.ts';
import { sheetPages } from '../../../src/publish/sheet-pages.ts';
import { readFactSheet } from '../../../src/read/read-fact-sheet.ts';
import { checkSheets } from '../../../src/sheets/check-sheets.ts';
import { claimProblems } from '../../../src/sheets/claims/sheet-claims.ts';
import { cultivarsOfDemo } from './demo-cultivars.ts';
import { cutTwice, type Judgement, potsWhole, sameness, strengths, tested, untested } from './corpus.ts';

const trials = join(import.meta.dirname, '..', '..', '..', 'content', 'trials');
const cultivars = await cultivarsOfDemo();

async function problemsIn(id: string): Promise<(judgement: Judgement) => Problem[]> {
  const { trial } = await loadTrial(join(trials, id));
  const [item] = siteFindings([trial!]);
  return ({ text, language }) => {
    const file = language === undefined ? 'factsheet.mdx' : `factsheet.${language}.mdx`;
    const { sheet } = readFactSheet(text, file);
    const own = { ...item!, trial: { ...item!.trial, factSheets: [sheet!] } };
    const library: Library = { site: unnamed, cultivars, trials: [own], problems: [] };
    return claimProblems(sheetPages(library)[0]!, library);
  };
}

const judgements = [
  { id: 'autumn-lettuce-2025', corpus: [...tested, ...sameness] },
  { id: 'four-lettuces-2024', corpus: untested },
  { id: 'solution-strength-2026', corpus: strengths },
  { id: 'sweet-basil-2025', corpus: cutTwice },
  { id: 'plants-per-pot-2024', corpus: potsWhole },
];

describe.each(judgements)('The claims of a sheet on $id', async ({ id, corpus }) => {
  const problems = await problemsIn(id);

  it.each(corpus.map((each) => [each.text, each] as const))('%s', (_text, judgement) => {
    const found = problems(judgement);
    const of = (rule: string) => found.filter((each) => each.rule === rule).map((each) => each.found);
    expect(of('sheet-typed-number')).toEqual(judgement.typed ?? []);
    expect(of('sheet-claimed-difference')).toEqual(judgement.claims === undefined ? [] : [judgement.claims]);
    expect(of('sheet-claimed-sameness')).toEqual(judgement.same === undefined ? [] : [judgement.same]);
    const { says } = judgement;
    if (says !== undefined) expect(found.map(({ message }) => message).join('\n')).toContain(says);
  });
});

describe('The place of a typed number', () => {
  it('is its line and column, through emphasis, links and line breaks', async () => {
    const problems = await problemsIn('autumn-lettuce-2025');
    const found = problems({
      text: '# Heads\n\nWe cut Russet Plover\nin *October*; it gave **192 g**, [and](/trials/)\n193 g.',
    });
    expect(found.map(({ line, column, found: typed }) => [line, column, typed])).toEqual([
      [4, 25, '192 g'],
      [5, 1, '193 g'],
    ]);
  });

  it('is that of the key for a summary above the text', async () => {
    const problems = await problemsIn('autumn-lettuce-2025');
    const found = problems({
      text: '---\nsummary: Slate Egret outyielded the check cultivar.\n---\n\nText.',
    });
    expect(found.map(({ line, column, rule }) => [line, column, rule])).toEqual([
      [2, 10, 'sheet-claimed-difference'],
    ]);
  });
});

describe('A slip that recurs', async () => {
  const { trial } = await loadTrial(join(trials, 'autumn-lettuce-2025'));
  const [item] = siteFindings([trial!]);
  const problemsOf = (text: string): Problem[] => {
    const { sheet } = readFactSheet(text, 'factsheet.mdx');
    const own = { ...item!, trial: { ...item!.trial, factSheets: [sheet!] } };
    const library: Library = { site: unnamed, cultivars, trials: [own], problems: [] };
    return checkSheets(library, { alone: true });
  };

  it('is told once, with the lines of the others', () => {
    const again = 'Russet Plover gave 192 g a head.\n\n';
    const [first, ...more] = problemsOf(`${again.repeat(3)}Text.\n\n${again}`);
    expect(more).toEqual([]);
    expect(first).toMatchObject({ line: 1, found: '192 g' });
    expect(first!.message).toMatch(/ \(also in lines 3, 5, 9\)$/);
  });

  it('is told once where it recurs in one line', () => {
    const found = problemsOf('Slate Egret was better. '.repeat(4));
    expect(found.map(({ message }) => message)).toEqual([
      expect.stringMatching(/^"better" claims .* \(also 3 more times in this line\)$/),
    ]);
  });

  it.each(['192 g ', 'better ', 'Slate Egret was better. ', '25% ', 'twice as much '])(
    'takes no time for a sheet of nothing but "%s"',
    (words) => {
      const taken = (count: number): number => {
        const text = words.repeat(Math.floor(count / words.length));
        const from = performance.now();
        problemsOf(text);
        return performance.now() - from;
      };
      // Read anew for each number it took five seconds and more.
      expect(taken(29_000)).toBeLessThan(3000);
    },
  );
});

describe('The corpus', () => {
  it('holds more than a hundred sentences, of both kinds', () => {
    const all = [...tested, ...untested];
    const faulty = all.filter(({ typed, claims }) => typed !== undefined || claims !== undefined);
    expect(all.length).toBeGreaterThan(100);
    expect(faulty.length).toBeGreaterThan(30);
    expect(all.length - faulty.length).toBeGreaterThan(60);
  });
});
