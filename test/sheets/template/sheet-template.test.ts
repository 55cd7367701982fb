import { join } from 'node:path';
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { unnamed } from '../../../src/commands/library-of.ts';
import { loadTrial } from '../../../src/commands/load-content.ts';
import { siteFindings } from '../../../src/compute/site-findings.ts';
import type { Findings } from '../../../src/model/findings.ts';
import { inLanguage } from '../../../src/model/language.ts';
import '../../../src/model/messages.ts';
import type { Library } from '../../../src/model/library.ts';
import { readFactSheet } from '../../../src/read/read-fact-sheet.ts';
import { checkSheets } from '../../../src/sheets/check-sheets.ts';
import { readingGrade } from '../../../src/sheets/reading/reading-grade.ts';
import { runningText } from '../../../src/sheets/reading/reading-notes.ts';
import { escapeText } from '../../../src/sheets/template/escape-text.ts';
import { sheetTemplate } from '../../../src/sheets/template/sheet-template.ts';
import { cultivarsOfDemo } from '../claims/demo-cultivars.ts';

const root = join(import.meta.dirname, '..', '..', '..');
const demo = readdirSync(join(root, 'content', 'trials')).map((id) => join(root, 'content', 'trials', id));
const published = ['mint', 'npk', 'oats', 'plant-growth']
  .map((id) => join(root, 'test', 'published', id))
  .filter((folder) => readdirSync(folder).includes('trial.yaml'));
const broken = ['sheet-claimed-difference--untested', 'sheet-no-value'].map((id) =>
  join(root, 'test', 'broken', id),
);
const cultivars = await cultivarsOfDemo();

async function templateOf(folder: string): Promise<{ text: string; library: Library }> {
  const { trial } = await loadTrial(folder);
  const [item] = siteFindings([trial!]);
  const findings: Findings = item!.findings!;
  const library: Library = { site: unnamed, cultivars, trials: [item!], problems: [] };
  return { text: sheetTemplate({ trial: trial!, findings }, library), library };
}

function problemsOf(text: string, library: Library, file = 'factsheet.mdx'): string[] {
  const { sheet, faults } = readFactSheet(text, file);
  const [item] = library.trials;
  const own = { ...item!, trial: { ...item!.trial, factSheets: [sheet!] } };
  const problems = checkSheets({ ...library, trials: [own] }, { alone: true });
  return [...faults.map(({ kind }) => kind), ...problems.map(({ rule, message }) => `${rule} ${message}`)];
}

describe.each([...demo, ...published, ...broken])('The first sheet of %s', async (folder) => {
  const { text, library } = await templateOf(folder);

  it('passes the check without a word', () => {
    expect(problemsOf(text, library)).toEqual([]);
  });

  it('has every part, types no number of the findings, and is easy to read', () => {
    for (const part of ['bottom line', 'What we asked', 'grew', 'found', 'does not show', 'citation'])
      expect(text).toContain(part);
    expect(text.replaceAll(/<[^>]*>/g, '')).not.toMatch(/\d\s?(?:g|kg|oz|lb|%)\b/);
    const grade = readingGrade(runningText(readFactSheet(text, 'factsheet.mdx').sheet!.blocks));
    expect(grade ?? 0).toBeLessThan(8.5);
  });

  it('passes in Spanish too', () => {
    const [item] = library.trials;
    const spanish = inLanguage('es', () =>
      sheetTemplate({ trial: item!.trial, findings: item!.findings! }, library),
    );
    expect(spanish).toContain('## Precauciones');
    expect(problemsOf(spanish, library, 'factsheet.es.mdx')).toEqual([]);
  });
});

describe('The trials that first sheets are written of', () => {
  it('are tested and not tested, and cut once and twice', async () => {
    const texts = await Promise.all(demo.map(async (folder) => (await templateOf(folder)).text));
    expect(texts.some((text) => text.includes('Nothing was tested'))).toBe(true);
    expect(texts.some((text) => text.includes('at cut 2'))).toBe(true);
  });
});

describe('escapeText', () => {
  it('leaves nothing that Markdown or a component could be made of', () => {
    const hostile = '# 1. *a* {b} <script>alert(1)</script> [c](javascript:d) `e`\n- f | g';
    const { sheet, faults } = readFactSheet(escapeText(hostile), 'factsheet.mdx');
    expect(faults).toEqual([]);
    expect(sheet!.blocks.map(({ kind }) => kind)).toEqual(['paragraph']);
    expect(JSON.stringify(sheet!.blocks)).toContain('<script>alert(1)</script>');
  });
});
