import { describe, expect, it } from 'vitest';
import { rules } from '../../src/check/rules.ts';
import { languages } from '../../src/model/language.ts';
import meanings from '../../src/model/meanings.json' with { type: 'json' };
import messages from '../../src/model/messages.json' with { type: 'json' };
import { dictionary } from '../../src/publish/dictionary.ts';

const known: Readonly<Record<string, Readonly<Record<string, string>>>> = { ...messages, ...meanings };
const explained = [
  ...rules.flatMap(({ title, meaning, example }) => [title, meaning, example]),
  ...dictionary().flatMap(({ about, fields }) => [about, ...fields.map(({ meaning }) => meaning)]),
];
const others = languages.filter((each) => each !== 'en');

describe('The meanings of rules and fields', () => {
  it.each(others)('are all told in %s', (other) => {
    expect(explained.filter((text) => (known[text]?.[other] ?? '') === '')).toEqual([]);
  });

  it('are of rules and fields that there are', () => {
    const used = new Set(explained);
    expect(Object.keys(meanings).filter((text) => !used.has(text))).toEqual([]);
  });

  it.each(others)('keep names of files, keys and codes as they are in %s', (other) => {
    const codes =
      /\b[a-z_]+\.(?:yaml|csv|json|mdx)\b|\b[a-z]+_[a-z_]+\b|\bSHA-256\b|\bUCUM\b|\bORCID\b|\bSPDX\b/g;
    const changed = Object.entries(meanings as typeof known).filter(([text, told]) => {
      const sorted = (words: string) => [...new Set(words.match(codes) ?? [])].sort().join();
      return sorted(text) !== sorted(told[other] ?? '');
    });
    expect(changed.map(([text]) => text)).toEqual([]);
  });
});
