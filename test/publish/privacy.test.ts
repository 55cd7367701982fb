import { unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { datasetJsonLd, publishedFiles, siteFiles } from '../../src/publish/files.ts';
import { withoutEmails } from '../../src/publish/without-emails.ts';
import { bare, full, library, privateEmails, publicEmail, text } from './example.ts';
import { acrossTrials, published } from './published.ts';

const everything = (item: typeof full): string =>
  [
    ...publishedFiles(item, library)
      .filter((file) => !file.name.endsWith('.zip'))
      .map(text),
    JSON.stringify(datasetJsonLd(item, library)),
  ].join('\n');

describe('what is published', () => {
  test('holds no coordinate where the trial gives none', () => {
    const own = publishedFiles(bare, library).filter(
      (file) => !/\.zip$|metadata\.json$|datapackage/.test(file.name),
    );
    for (const file of own) expect(text(file), file.name).not.toMatch(/latitude|longitude|POINT\(/i);
    expect(JSON.stringify(datasetJsonLd(bare, library))).not.toMatch(/latitude|longitude/i);
  });
  test('gives coordinates as trial.yaml does, to the digit', () => {
    const places = [
      ...everything(full).matchAll(/"?(?:latitude|pointLatitude|locationLatitude)"?:\s*([-\d.]+)/g),
    ];
    expect(places.length).toBeGreaterThan(3);
    for (const [, value] of places) expect(value).toBe('52.9');
  });
  test('holds no formula that a spreadsheet would run in any table of ours', () => {
    for (const name of ['weights.csv', 'summary.csv', 'miappe.tsv']) {
      expect(published(name, full, library), name).not.toMatch(/(?:^|[,\t;"\n])[=@](?=\S)/);
    }
    expect(acrossTrials('data/all-weights.csv', library)).not.toMatch(/(?:^|[,\t;"\n])[=@](?=\S)/);
  });
  test('holds no e-mail of anyone who did not make it public: in no file, page data, archive or earlier version', () => {
    const files = [...publishedFiles(full, library), ...siteFiles(library)];
    const texts = [
      ...files.flatMap(textsOf),
      ['the page', JSON.stringify(datasetJsonLd(full, library))] as const,
    ];
    expect(texts.some(([name]) => name.includes('1.0.0.zip/'))).toBe(true);
    for (const [name, content] of texts) {
      for (const email of privateEmails) expect(content, name).not.toContain(email);
      expect(content, name).not.toContain('private.example.org');
    }
  });
  test('holds the e-mail of who made it public where a standard has a place for it', () => {
    for (const name of ['trial.json', 'datapackage.json', 'CITATION.cff', 'ro-crate-metadata.json']) {
      expect(published(name, full, library), name).toContain(publicEmail.email);
    }
    expect(JSON.stringify(datasetJsonLd(full, library))).toContain(publicEmail.email);
    const people = (JSON.parse(published('trial.json', full, library)) as { people: object[] }).people;
    expect(people.slice(2)).toEqual([
      { name: 'Brackwell, Tam', part: 'recorder' },
      { name: 'Ysolde', part: 'contact', orcid: 'https://orcid.org/0000-0001-5109-3700' },
    ]);
  });
  test('withholds in a frozen trial.yaml what is no longer public', () => {
    const people = [{ name: 'Orla', part: 'grower' as const, ...publicEmail }];
    const raw = `email: ${publicEmail.email} # or o'.r+la_%1@mail.example-host.co, not a @ b or @c`;
    expect(withoutEmails(raw, people)).toBe(`email: ${publicEmail.email} # or withheld, not a @ b or @c`);
    expect(withoutEmails(raw, [])).toBe('email: withheld # or withheld, not a @ b or @c');
  });
});

/** A file's text, and that of all that is packed in it: archives within archives too. */
function textsOf({ name, bytes }: { name: string; bytes: Uint8Array }): (readonly [string, string])[] {
  const own = [name, new TextDecoder('latin1').decode(bytes)] as const;
  if (!/\.(zip|xlsx)$/.test(name)) return [own];
  const inner = Object.entries(unzipSync(bytes));
  return [own, ...inner.flatMap(([path, content]) => textsOf({ name: `${name}/${path}`, bytes: content }))];
}
