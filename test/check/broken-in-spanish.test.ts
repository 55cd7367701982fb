import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { mistakenCodes } from '../../src/check/country-codes.ts';
import { sumsFile } from '../../src/check/frozen-versions.ts';
import { rules } from '../../src/check/rules.ts';
import { allCautions } from '../../src/compute/cautions/cautions-of.ts';
import { knownSalts } from '../../src/compute/nutrients/known-salts.ts';
import { inLanguage, language, writeIn } from '../../src/model/language.ts';
import meanings from '../../src/model/meanings.json' with { type: 'json' };
import messages from '../../src/model/messages.json' with { type: 'json' };
import '../../src/model/messages.ts';
import * as nutrients from '../../src/model/nutrient-keys.ts';
import type { Problem } from '../../src/model/problem.ts';
import { sheetComponents } from '../../src/sheets/components.ts';
import { names, pathOf, problemsOf } from './broken-folders.ts';
import { cultivars } from './good-folder.ts';

// A content folder is checked in the language that a test sets, whatever its own is.
vi.mock('../../src/check/site-language.ts', () => ({ siteLanguage: () => language() }));

/** Where the messages lie that are not English; in their place a test can put others. */
const shelf = globalThis as unknown as Record<symbol, unknown>;
const key = Symbol.for('tankside:messages');
const spanish = shelf[key];

/** Every English pattern that was asked for. */
const asked = new Set<string>();

/** Messages of which nothing is left but the values put in: what else can be read then was never a message. */
const blank = new Proxy<Record<string, { es: string }>>(
  {},
  {
    get: (_, english: string) => {
      asked.add(english);
      return { es: `·${(english.match(/\{\w+\}/g) ?? []).join('·')}·` };
    },
  },
);

interface Told {
  english: readonly Problem[];
  spanish: readonly Problem[];
  /** With blank messages. */
  values: readonly Problem[];
}

const told = new Map<string, Told>();

beforeAll(async () => {
  for (const name of names) {
    writeIn('en');
    const english = (await problemsOf(name)).problems;
    writeIn('es');
    const inSpanish = (await problemsOf(name)).problems;
    shelf[key] = blank;
    const values = (await problemsOf(name)).problems;
    shelf[key] = spanish;
    told.set(name, { english, spanish: inSpanish, values });
  }
  writeIn('en');
}, 120_000);

afterAll(() => {
  shelf[key] = spanish;
  writeIn('en');
});

/** All that a folder's faults can quote: the words of its files, and their names and its own. */
function ownWords(name: string): string {
  const path = pathOf(name);
  return readdirSync(path, { recursive: true, encoding: 'utf8', withFileTypes: true })
    .filter((entry) => entry.name !== 'expected.txt')
    .map((entry) => {
      const bytes = entry.isFile() ? readFileSync(join(entry.parentPath, entry.name)) : Buffer.alloc(0);
      // Some are no UTF-8, and quoted as they can be read.
      return `${entry.name} ${bytes.toString('latin1')} ${bytes.toString('utf8')}`;
    })
    .concat(name)
    .join(' ');
}

/** The words of the format of the files: keys, columns, fixed values and examples, components and rules. */
function formatWords(): string {
  const found: string[] = [];
  const folder = new URL('../../schemas/', import.meta.url);
  for (const name of readdirSync(folder)) {
    JSON.parse(readFileSync(new URL(name, folder), 'utf8'), (at, value: unknown) => {
      if (at === 'properties') found.push(...Object.keys(value as object));
      if (['enum', 'const', 'examples', 'name'].includes(at)) found.push(JSON.stringify(value));
      return value;
    });
  }
  for (const { name, attributes } of sheetComponents) {
    found.push(name, ...attributes.flatMap((each) => [each.name, ...(each.choices ?? [])]));
  }
  found.push(
    sumsFile,
    JSON.stringify(nutrients),
    ...rules.map(({ rule }) => rule),
    ...allCautions.map(({ id }) => id),
    JSON.stringify(cultivars),
    JSON.stringify(knownSalts.map(({ formulas }) => formulas)),
    Object.values(mistakenCodes).join(' '),
  );
  return found.join(' ');
}

/** Without escaped characters, bytes, words that were cut off, and checksums. */
const wordsOf = (text: string): string[] =>
  text
    .replaceAll(/\\(?:[nrt]|u\{[\da-f]+\})|\b0x[\dA-F]{2}\b|\p{L}+\.\.\.|\b[\da-f]{16,}\b/gu, ' ')
    .match(/\p{L}{2,}/gu) ?? [];

/** Units, forms of files and what else is the same word in every language. */
const same = new Set(wordsOf('kg mg lb oz cm mL mS µS UTF png'));

/** What to write instead of a claim is in the language of the sheet. */
const isClaim = (rule: string): boolean =>
  rule === 'sheet-claimed-difference' || rule === 'sheet-claimed-sameness';

/** The parts of a problem that are words, without those that are another's. */
function partsOf({ rule, message, hint, found, expected }: Problem): (string | null)[] {
  // The parser's own words, for those who look it up.
  if (rule === 'sheet-syntax') return [message, hint, expected];
  if (isClaim(rule)) return [message.replace(expected ?? '', ''), hint, found];
  return [message, hint, found, expected];
}

/** What is found and expected, without the parser's own words and what the sheet should say. */
const valuesOf = ({ rule, found, expected }: Problem): string[] =>
  [rule === 'sheet-syntax' ? null : found, isClaim(rule) ? null : expected].filter((text) => text !== null);

/** Little words that join what is said of a value. */
const ourOwn = /\b(?:an?|and|cells?|from|of|or|to)\b/;

const placeOf = ({ rule, severity, file, line, column, where }: Problem): string =>
  [file, line, column, severity, rule, where].join(' ');

describe('The broken folders in Spanish', () => {
  it.each(names)('%s has the same problems at the same places', (name) => {
    const { english, spanish: other } = told.get(name)!;
    expect(other.map(placeOf).sort()).toEqual(english.map(placeOf).sort());
  });

  it('have no message and no hint that is the English one', () => {
    const left = names.flatMap((name) => {
      const { english, spanish: other } = told.get(name)!;
      const texts = new Set(english.flatMap(({ message, hint }) => [message, hint]));
      return other
        .flatMap(({ message, hint }) => [message, hint])
        .filter((text) => text !== null && texts.has(text))
        .map((text) => `${name}: ${text}`);
    });
    expect(left).toEqual([]);
  });

  it('have no word that is neither a message nor of the files, in what is found, expected and said', () => {
    const known = new Set([...wordsOf(formatWords()), ...same]);
    const left = names.flatMap((name) => {
      const own = new Set(wordsOf(ownWords(name)));
      return told.get(name)!.values.flatMap((problem) => {
        const { rule } = problem;
        const texts = partsOf(problem).filter((text) => text !== null);
        const words = texts.flatMap(wordsOf).filter((word) => !own.has(word) && !known.has(word));
        return words.length === 0 ? [] : [`${name}: ${rule}: ${[...new Set(words)].join(' ')}`];
      });
    });
    expect(left).toEqual([]);
  });

  it('have nothing found or expected that the check words in English', () => {
    const format = formatWords();
    const left = names.flatMap((name) => {
      const { english, values } = told.get(name)!;
      const quoted = ownWords(name) + format;
      const inEnglish = new Set(english.flatMap(valuesOf));
      return values
        .flatMap(valuesOf)
        .filter((text) => inEnglish.has(text) && ourOwn.test(text))
        .filter(
          (text) =>
            !quoted.includes(text) && !quoted.includes(text.replace(/^\w+: /, '').replaceAll('"', '')),
        )
        .map((text) => `${name}: ${text}`);
    });
    expect(left).toEqual([]);
  });

  it('ask for no message that there is not in Spanish', () => {
    const catalogue: Readonly<Record<string, unknown>> = { ...messages, ...meanings };
    const all = names.map(ownWords).join(' ');
    expect([...asked].filter((text) => !Object.hasOwn(catalogue, text) && !all.includes(text))).toEqual([]);
  });

  it('are told in Spanish', () => {
    const [first] = told.get('weight-not-a-number--letter')!.spanish;
    expect(first?.message).toContain('no es un número; escriba solo cifras, como ');
    expect(inLanguage('es', language)).toBe('es');
  });
});
