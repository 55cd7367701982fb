import { describe, expect, it } from 'vitest';
import type { SheetPage } from '../../../src/publish/sheet-pages.ts';
import { readFactSheet } from '../../../src/read/read-fact-sheet.ts';
import { readingGrade } from '../../../src/sheets/reading/reading-grade.ts';
import { readingNotes } from '../../../src/sheets/reading/reading-notes.ts';

/** Ten sentences of six words of one syllable: 0.39 x 6 + 11.8 x 1 - 15.59 = -1.45, by hand. */
const plain = Array.from({ length: 10 }, () => 'We cut the head at dawn.');

describe('readingGrade', () => {
  it('is the formula of Kincaid and others (1975), worked by hand', () => {
    expect(readingGrade(plain.map((text) => ({ text })))).toBeCloseTo(-1.45, 10);
    // Five sentences of twelve words with 24 syllables: 0.39 x 12 + 11.8 x 2 - 15.59 = 12.69.
    const twelve = 'Water under cover, water over cover, never water lettuce after summer weather.';
    expect(readingGrade(Array.from({ length: 5 }, () => ({ text: twelve })))).toBeCloseTo(12.69, 10);
  });

  it('is not told of a few words', () => {
    expect(readingGrade([{ text: 'We cut it.' }])).toBeNull();
  });
});

function notes(text: string, language = 'en'): string[] {
  const { sheet } = readFactSheet(text, 'factsheet.mdx');
  const page = { sheet: sheet!, language } as Partial<SheetPage> as SheetPage;
  return readingNotes(page).map(({ rule, line, column }) => `${rule} ${String(line)}:${String(column)}`);
}

describe('readingNotes', () => {
  const hard = `${'The experimental determination of fertiliser availability necessitates considerable preparation. '.repeat(8)}`;
  const long = `We cut it. ${'and then we cut the next '.repeat(5)}one.`;

  it('say nothing of a plain sheet', () => {
    expect(notes(plain.join(' '))).toEqual([]);
  });

  it('tell the grade where it is above the aim, in English alone', () => {
    expect(notes(hard)).toEqual(['sheet-reading-grade null:null']);
    expect(notes(hard, 'es')).toEqual([]);
  });

  it('find a long sentence where it begins, in any language', () => {
    // A small letter behind a full stop goes on with the sentence.
    expect(notes(`# Cut\n\n${long}`)).toEqual(['sheet-long-sentence 3:1']);
    expect(notes(`# Cut\n\n${long.replace('and', 'Then')}`, 'es')).toEqual(['sheet-long-sentence 3:12']);
  });

  it('leave headings, tables and quotations out', () => {
    expect(notes(`# ${hard}\n\n> ${hard}\n\n| ${hard} |\n|---|\n| ${hard} |\n`)).toEqual([]);
  });
});
