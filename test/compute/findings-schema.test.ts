import { Ajv2020 } from 'ajv/dist/2020.js';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { loadContent } from '../../src/commands/load-content.ts';
import { siteFindings } from '../../src/compute/site-findings.ts';
import { mint, npk, oats, plantGrowth } from './published.ts';

const schema = JSON.parse(
  readFileSync(new URL('../../schemas/findings.schema.json', import.meta.url), 'utf8'),
) as object;
const validate = new Ajv2020({ strict: true, allowUnionTypes: true, allErrors: true }).compile(schema);

/** What JSON cannot hold, or holds as something else: NaN and infinities become null without a reason. */
function unpublishable(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (typeof value !== 'object' || value === null) return value === undefined ? [path] : [];
  return Object.entries(value).flatMap(([key, each]) => unpublishable(each, `${path}/${key}`));
}

const { trials } = await loadContent(new URL('../../content', import.meta.url).pathname);
const all = siteFindings([...trials, plantGrowth(), mint(), npk(), oats('plot'), oats('container')]);

describe('findings', () => {
  test.each(all.map((each, index) => [`${index} ${each.trial.id}`, each.findings] as const))(
    '%s fit their schema, and hold no NaN, infinity or undefined',
    (_, findings) => {
      expect(unpublishable(findings)).toEqual([]);
      validate(findings);
      expect(validate.errors ?? []).toEqual([]);
    },
  );

  test('a null in an inference stands beside a reason', () => {
    for (const { findings } of all) {
      for (const entry of findings?.inference ?? []) {
        for (const line of entry.anova.filter(({ term, f }) => term !== 'residual' && f === null)) {
          expect(line.reason).toBeTruthy();
        }
        for (const mean of entry.means.filter(({ se }) => se === null)) expect(mean.reason).toBeTruthy();
        if (entry.verdict === 'not tested') expect(entry.reason).toBeTruthy();
      }
    }
  });

  test('two computations of the same trial are the same to the last byte', () => {
    const again = siteFindings([...trials, plantGrowth(), mint(), npk(), oats('plot'), oats('container')]);
    expect(JSON.stringify(again.map(({ findings }) => findings))).toBe(
      JSON.stringify(all.map(({ findings }) => findings)),
    );
  });
});
