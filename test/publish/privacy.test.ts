import { describe, expect, test } from 'vitest';
import { datasetJsonLd, publishedFiles } from '../../src/publish/files.ts';
import { bare, full, library, text } from './example.ts';
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
});
