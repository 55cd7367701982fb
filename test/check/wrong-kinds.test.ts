import { describe, expect, it } from 'vitest';
import { parse, stringify } from 'yaml';
import { checkCultivars, checkSite } from '../../src/check/check-content.ts';
import { checkTrial } from '../../src/check/check-trial.ts';
import { asBytes, cultivars, goodFiles } from './good-folder.ts';

const context = { cultivars, today: '2026-01-15', prefix: '' };

type Path = (string | number)[];

function paths(value: unknown, path: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, inner]) => paths(inner, [...path, key]))];
}

function replaced(value: unknown, path: Path, by: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return by;
  const copy = structuredClone(value) as Record<string, unknown>;
  copy[String(key)] = replaced(copy[String(key)], rest, by);
  return copy;
}

const wrong: unknown[] = [null, [], {}, [null], { a: null }, '', 'x', 0, -1, 1.5, true, [[]], '2025-02-30'];
const good: unknown = parse(goodFiles().get('trial.yaml') ?? '');

describe('a value of the wrong kind anywhere in trial.yaml', () => {
  it.each(paths(good).map((path) => [path.join('.') || 'the whole', path] as const))(
    '%s is reported, never thrown',
    (_, path) => {
      for (const by of wrong) {
        const files = goodFiles().set('trial.yaml', stringify(replaced(good, path, by)));
        const { trial, problems } = checkTrial('two-lettuces', asBytes(files), context);
        expect(trial === null).toBe(problems.some(({ severity }) => severity === 'error'));
        if (by === null) expect(trial).toBeNull();
      }
    },
  );
});

describe('site.yaml and cultivars.yaml of wrong kinds', () => {
  const site = {
    title: 'Trials',
    url: 'https://example.org/',
    publisher: 'Fernhollow garden',
    licence: 'CC0-1.0',
  };
  const bytes = (value: unknown): Uint8Array => new TextEncoder().encode(stringify(value));

  it('are reported, never thrown', () => {
    expect(checkSite(bytes(site)).problems).toEqual([]);
    expect(checkSite(null).problems.map(({ rule }) => rule)).toEqual(['missing-file']);
    expect(checkCultivars(null)).toEqual({ value: [], problems: [] });
    for (const path of paths(site)) {
      const checked = checkSite(bytes(replaced(site, path, [null])));
      expect(checked.value).toBeNull();
      expect(checked.problems.length).toBeGreaterThan(0);
    }
    for (const value of [
      null,
      {},
      'x',
      [null],
      [[]],
      [{}],
      [{ id: 1 }],
      [
        { id: 'ab', name: 'A' },
        { id: 'ab', name: 'B' },
      ],
    ]) {
      expect(checkCultivars(bytes(value)).problems.length).toBeGreaterThan(0);
    }
  });
});
