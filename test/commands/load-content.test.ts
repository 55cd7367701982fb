import { cp, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, describe, expect, onTestFinished, test } from 'vitest';
import { siteLanguage } from '../../src/check/site-language.ts';
import { crewOf } from '../../src/commands/crew/crew.ts';
import { loadContent, loadTrial } from '../../src/commands/load-content.ts';
import { firstUnits } from '../../src/model/first-units.ts';
import { writeIn } from '../../src/model/language.ts';
import { demo } from '../support/site.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const silent = { done: () => undefined, end: () => undefined };
const id = 'four-lettuces-2024';
const spanish = 'no es un número; escriba solo cifras, como ';

afterEach(() => {
  writeIn('en');
});

/** A content folder of one trial that holds a weight with a letter in it. */
async function faultyContent(site: string): Promise<string> {
  const folder = await temporaryFolder({ 'site.yaml': site });
  await cp(join(demo, 'trials', id), join(folder, 'trials', id), { recursive: true });
  await rm(join(folder, 'trials', id, 'versions'), { recursive: true, force: true });
  const harvest = join(folder, 'trials', id, 'harvest.csv');
  const text = await readFile(harvest, 'utf8');
  expect(text).toMatch(/,\d+0,/);
  await writeFile(harvest, text.replace(/,(\d+)0,/, ',$1O,'));
  return folder;
}

const site = (language: string): string =>
  `title: Ensayos\nurl: https://example.org/\npublisher: Nadie\nlicence: CC0-1.0\nlanguage: ${language}\n`;

const weightMessage = (problems: readonly { rule: string; message: string }[]): string =>
  problems.find(({ rule }) => rule === 'weight-not-a-number')?.message ?? '';

test('Figures are described in the units that the site shows first', async () => {
  await loadContent(await temporaryFolder({ 'site.yaml': `${site('en')}units: us\n` }), silent);
  expect(firstUnits()).toBe('us');
  await loadContent(await temporaryFolder({ 'site.yaml': site('en') }), silent);
  expect(firstUnits()).toBe('metric');
});

describe('The language of a check', () => {
  test('is that of the site', async () => {
    const { problems, language } = await loadContent(await faultyContent(site('es')), silent);
    expect(language).toBe('es');
    expect(weightMessage(problems)).toContain(spanish);
  });

  test('is that of the site in every thread of a crew', async () => {
    const crew = crewOf(1);
    onTestFinished(() => crew.dismiss());
    const folder = await faultyContent(site('es'));
    const [examine] = crew.hands('examine');
    const context = { cultivars: null, today: '2026-01-15', prefix: 'trials/' };
    const trial = join(folder, 'trials', id);
    const told = await examine!({ folder: trial, context, language: 'es', withFindings: false });
    expect(weightMessage(told.problems)).toContain(spanish);
    const { problems } = await loadContent(folder, silent, crew);
    expect(weightMessage(problems)).toContain(spanish);
  });

  test('is that of the site that a trial checked by itself lies in', async () => {
    const folder = await faultyContent(site('es-MX'));
    const { problems } = await loadTrial(join(folder, 'trials', id));
    expect(weightMessage(problems)).toContain(spanish);
  });

  test('is English for a site that asks for English, after one that does not', async () => {
    await loadContent(await faultyContent(site('es')), silent);
    const { problems } = await loadContent(await faultyContent(site('en')), silent);
    expect(weightMessage(problems)).toContain('is not a number; write digits only, such as ');
  });
});

describe('siteLanguage', () => {
  const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

  test('reads it whatever else is wrong with site.yaml', () => {
    expect(siteLanguage(bytes('language: es\n'))).toBe('es');
    expect(siteLanguage(bytes('{"language": "es"}'))).toBe('es');
    expect(siteLanguage(bytes('title: Lechuga: cuatro\nlanguage: "es"\n'))).toBe('es');
    const latin = Uint8Array.from([...'title: a\u00f1o\nlanguage: es\n'].map((each) => each.charCodeAt(0)));
    expect(siteLanguage(latin)).toBe('es');
  });

  test('is English where there is none, or none of ours', () => {
    for (const text of ['', 'title: A\n', 'language: cy\n', 'language: [es]\n', 'about: |\n  language: es\n'])
      expect(siteLanguage(bytes(text)), text).toBe('en');
    expect(siteLanguage(null)).toBe('en');
  });
});
