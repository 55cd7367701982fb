import { describe, expect, it } from 'vitest';
import type { FactSheet } from '../../src/model/fact-sheet.ts';
import type { Library } from '../../src/model/library.ts';
import { readFactSheet } from '../../src/read/read-fact-sheet.ts';
import { publishedFiles } from '../../src/publish/files.ts';
import { inOtherLanguages, sheetOfTrial, sheetPages } from '../../src/publish/sheet-pages.ts';
import { sitemap } from '../../src/publish/sitemap.ts';
import { bare, full, library } from './example.ts';

const sheet = (text: string, file: string): FactSheet => readFactSheet(text, file).sheet!;
const id = full.trial.id;
const english = '## Ours\n\nText.\n';
const item = {
  ...full,
  trial: {
    ...full.trial,
    files: new Map([...full.trial.files, ['factsheet.mdx', new TextEncoder().encode(english)]]),
    factSheets: [
      sheet(english, `trials/${id}/factsheet.mdx`),
      sheet('---\ntitle: En otras palabras\n---\n\nTexto.\n', `trials/${id}/factsheet.es.mdx`),
    ],
  },
};
const whole: Library = {
  ...library,
  trials: [item, bare],
  factSheets: [
    sheet(
      `---\ntitle: What we know\nsummary: What a trial says, and what not.\ntrials: [${id}, not-there]\ndate: 2026-01-10\npeople: [A. Writer]\n---\n\nText.\n`,
      'fact-sheets/what-we-know.mdx',
    ),
  ],
};
const pages = sheetPages(whole);

describe('the pages of fact sheets', () => {
  it('stand at the address of their trial, or by their own name, languages beneath', () => {
    expect(pages.map(({ path }) => path)).toEqual([
      'fact-sheets/what-we-know/',
      `trials/${id}/fact-sheet/`,
      `trials/${id}/fact-sheet/es/`,
    ]);
  });

  it('take from the trial what a sheet does not say at its top', () => {
    const [, own, spanish] = pages;
    expect(own).toMatchObject({ title: full.trial.metadata.title, language: library.site.language ?? 'en' });
    expect(own!.people.length).toBeGreaterThan(0);
    expect(own!.date).toMatch(/^\d{4}-\d\d-\d\d$/);
    expect(spanish).toMatchObject({ title: 'En otras palabras', language: 'es', date: own!.date });
  });

  it('take from the sheet across trials what it says, and the trials that there are', () => {
    expect(pages[0]).toMatchObject({ title: 'What we know', date: '2026-01-10', people: ['A. Writer'] });
    expect(pages[0]!.trials).toEqual([item]);
  });

  it('know one another as the same sheet in several languages', () => {
    expect(inOtherLanguages(pages[2]!, whole)).toEqual([pages[1], pages[2]]);
    expect(inOtherLanguages(pages[0]!, whole)).toEqual([pages[0]]);
    expect(sheetOfTrial(item, whole)).toBe(pages[1]);
    expect(sheetOfTrial(bare, whole)).toBeNull();
  });

  it('are in the sitemap, and the list of them where there are any', () => {
    for (const { path } of [...pages, { path: 'fact-sheets/' }])
      expect(sitemap(whole)).toContain(`/${path}</loc>`);
    expect(sitemap(library)).not.toContain('fact-sheet');
  });

  it('leave the sheet in the trial’s files and its archive byte for byte', () => {
    const file = publishedFiles(item, whole).find(({ name }) => name === 'factsheet.mdx');
    expect(new TextDecoder().decode(file!.bytes)).toBe(english);
    const zip = publishedFiles(item, whole).find(({ name }) => name.endsWith('.zip'))!;
    expect(new TextDecoder('latin1').decode(zip.bytes)).toContain('/factsheet.mdx');
  });
});
