import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { formatDate, formatShortDate } from '../../src/compute/format/format-date.ts';
import { formatNumber } from '../../src/compute/format/format-number.ts';
import { formatPercent } from '../../src/compute/format/format-percent.ts';
import { formatRange } from '../../src/compute/format/format-range.ts';
import { tell } from '../../src/compute/words/tell.ts';
import { inLanguage, language, languageOf, languages, writeIn } from '../../src/model/language.ts';
import messages from '../../src/model/messages.json' with { type: 'json' };
import '../../src/model/messages.ts';
import { say, sayCount } from '../../src/model/say.ts';
import { messagesInSource, messagesOf, namesIn } from '../support/messages-in-source.ts';

const known = new Map<string, Partial<Record<string, string>>>(Object.entries(messages));
const others = languages.filter((each) => each !== 'en');
const said = messagesInSource(join(import.meta.dirname, '..', '..', 'src'));

afterEach(() => {
  writeIn('en');
});

describe('The message file', () => {
  it.each(others)('has every message of the source in %s', (other) => {
    const missing = said.filter(({ text }) => (known.get(text)?.[other] ?? '') === '');
    expect(missing).toEqual([]);
  });

  it('has no message that nothing says', () => {
    const folder = join(import.meta.dirname, '..', '..', 'src');
    const source = readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.(ts|astro|json|yaml)$/.test(name) && !name.endsWith('messages.json'))
      .map((name) => readFileSync(join(folder, name), 'utf8'))
      .join('\n')
      // A long text may be put together of several.
      .replace(/['`] \+\s+['`]/g, '')
      .replaceAll('\\u00a0', '\u00a0');
    // Of a text with a value set into it, as in between ${units}, the rest is looked for.
    const composed = [...source.matchAll(/`([^`\n]*[a-z]{4}[^`\n]*)`/g)]
      .filter(([, text]) => text!.includes('${'))
      .map(([, text]) =>
        text!.split(/\$\{[^}]*\}/).map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')),
      )
      .map((parts) => new RegExp(`^${parts.join('[\\w ,.-]+')}$`));
    const written = (text: string) => {
      const escaped = text.replaceAll('\\', '\\\\');
      return [text, escaped, escaped.replaceAll("'", "\\'"), escaped.replaceAll('"', '\\"')];
    };
    const unused = [...known.keys()]
      .filter((text) => !written(text).some((each) => source.includes(each)))
      .filter((text) => !composed.some((each) => each.test(text)));
    expect(unused).toEqual([]);
  });

  it.each(others)('names the same values in %s as in English', (other) => {
    const unlike = [...known].filter(([english, translations]) => {
      const names = (text: string) => [...new Set(namesIn(text))].join();
      return names(english) !== names(translations[other] ?? '');
    });
    expect(unlike).toEqual([]);
  });

  it.each(others)('leads to the same addresses in %s as in English', (other) => {
    const addresses = (text: string) => [...text.matchAll(/\]\((\w+)\)/g)].map(([, name]) => name).sort();
    const unlike = [...known].filter(
      ([english, translations]) => addresses(english).join() !== addresses(translations[other] ?? '').join(),
    );
    expect(unlike).toEqual([]);
  });
});

describe('The reading of messages off the source', () => {
  it('finds those of calls, of both ways of a choice, and of a page between its braces', () => {
    const text = "const a = say('one');\nconst b = <p>{sayCount(n, 'two', many ? 'three' : 'four')}</p>;";
    expect(messagesOf(text, 'a.tsx').map((each) => each.text)).toEqual(['one', 'two', 'three', 'four']);
  });

  it('finds some in the source at all', () => {
    expect(said.length).toBeGreaterThan(300);
  });
});

describe('say', () => {
  it('is the English text with its values put in', () => {
    expect(say('cut {cut}', { cut: 2 })).toBe('cut 2');
    expect(sayCount(1, '{count} plant', '{count} plants')).toBe('1 plant');
    expect(sayCount(3, '{count} plant', '{count} plants')).toBe('3 plants');
  });

  it('is the message of the language being written', () => {
    expect(inLanguage('es', () => say('cut {cut}', { cut: 2 }))).toBe('corte 2');
    expect(inLanguage('es', () => tell('{count} plants', { count: 3 }))).toEqual(['3 plantas']);
  });

  it('puts a value in as it is, though it looks like a name in braces', () => {
    expect(say('{title} over {cuts} cuts', { title: '{cuts}', cuts: 2 })).toBe('{cuts} over 2 cuts');
  });

  it('joins by e and u in Spanish where the next word begins with the sound of y or o', () => {
    const and = (last: string): string =>
      inLanguage('es', () => say('{list} and {last}', { list: 'A', last }));
    expect(['Iceberg', '"Iris"', 'Hilda', 'Yara', 'hielo', 'Cobalt Wren'].map(and)).toEqual([
      'A e Iceberg',
      'A e "Iris"',
      'A e Hilda',
      'A y Yara',
      'A y hielo',
      'A y Cobalt Wren',
    ]);
    const or = (other: string | number): string =>
      inLanguage('es', () => say('{one} or {other}', { one: 7, other }));
    expect(['oz', 8, 80, 11, 110, 9].map(or)).toEqual([
      '7 u oz',
      '7 u 8',
      '7 u 80',
      '7 u 11',
      '7 o 110',
      '7 o 9',
    ]);
    expect(say('{list} and {last}', { list: 'A', last: 'Iceberg' })).toBe('A and Iceberg');
  });

  it('leaves a text that is no message as it is', () => {
    expect(inLanguage('es', () => say('Cobalt Wren'))).toBe('Cobalt Wren');
  });
});

describe('The language being written', () => {
  it('is English until another is set, and afterwards the one set', () => {
    expect(language()).toBe('en');
    writeIn('es');
    expect(language()).toBe('es');
  });

  it('comes back after a piece of work in another, even where that fails', () => {
    expect(() =>
      inLanguage('es', () => {
        throw new Error('no paper');
      }),
    ).toThrow('no paper');
    expect(language()).toBe('en');
  });

  it('is read off a language tag', () => {
    expect(languageOf('es-MX')).toBe('es');
    expect(languageOf('EN')).toBe('en');
    expect(languageOf('cy')).toBe('en');
    expect(languageOf(undefined)).toBe('en');
  });
});

describe('Numbers and dates in Spanish', () => {
  const spanish = <Result>(work: () => Result): Result => inLanguage('es', work);

  it('have a comma before the decimals and a narrow space between groups of three', () => {
    expect(spanish(() => formatNumber(-12345.678, 1))).toBe('−12\u202F345,7');
    expect(spanish(() => formatPercent(12.44))).toBe('12,4\u00A0%');
    expect(spanish(() => formatRange(1.5, 2.5, 'g', 1).metric)).toBe('1,5 a 2,5\u00A0g');
  });

  it('have the day, the month and the year with their small words', () => {
    expect(spanish(() => formatDate('2025-10-20'))).toBe('20\u00A0de\u00A0octubre de\u00A02025');
    expect(spanish(() => formatShortDate('2025-01-03'))).toBe('3\u00A0ene');
  });
});
