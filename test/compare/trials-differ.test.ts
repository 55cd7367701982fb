import { describe, expect, test } from 'vitest';
import { seasons } from '../../src/compare/seasons.ts';
import { trialsDiffer } from '../../src/compare/trials-differ.ts';
import { trialsTable } from '../../src/compare/season-tables.ts';
import { leftOut } from '../../src/compare/words/left-out.ts';
import { computeFindings } from '../../src/compute/findings.ts';
import { barley, trialsOf } from './barley-trials.ts';

const trials = trialsOf(barley.filter(({ trial }) => /^(Waseca|Duluth)/.test(trial)));
const entry = seasons(trials).find(({ measure }) => measure === 'per_pot')!;
const [first] = entry.trials;

describe('trials that are not alike', () => {
  test('are silent where they are', () => {
    expect(entry.trials_differ).toEqual([]);
  });

  test.each([
    [{ plants_per_pot: '3' }, 'Plants in a pot were not the same in all trials (1; 3)'],
    [{ cuts: 2 }, 'Some trials were cut more often than others (1, 2 cuts).'],
    [{ variable: 'Marketable weight' }, 'Not all trials weighed the same: fresh weight; marketable weight.'],
    [{ setting: 'greenhouse' as const }, 'The trials stood in different places: rain shelter, greenhouse.'],
    [
      {
        origin: {
          title: 'Otterbrook',
          address: 'https://otterbrook.example.org/',
          page: 'https://otterbrook.example.org/trials/a/',
          identifier: 'https://otterbrook.example.org/data/a/',
          gathered: '2026-11-25',
        },
      },
      '1 of the trials was gathered from another site, Otterbrook: other hands, scales and water.',
    ],
    [{ averaged_over: 'strength' }, 'The means of autumn 2025 are averaged over strength.'],
  ])('are told of: %o', (change, sentence) => {
    const said = trialsDiffer([first!, { ...first!, ...change }], 'per_pot');
    expect(said.join(' ')).toContain(sentence);
  });

  test('have a column for what was weighed only where that differs', () => {
    const headings = (of: typeof entry) => trialsTable(of, (id) => id).columns.map(({ heading }) => heading);
    expect(headings(entry)).not.toContain('Weighed');
    const mixed = { ...entry, trials: [first!, { ...first!, variable: 'Marketable weight' }] };
    expect(headings(mixed)).toContain('Weighed');
  });
});

describe('a trial that takes no part', () => {
  const [one] = trialsOf(barley.filter(({ trial }) => trial === 'Morris 1931'));
  const { trial } = one!;

  test('is named with the reason', () => {
    const growing = {
      trial: { ...trial, metadata: { ...trial.metadata, status: 'growing' as const } },
      findings: null,
    };
    expect(leftOut([growing], entry)).toEqual(['“A trial for the tests” takes no part: it is growing.']);
    const nameless = { ...trial, metadata: { ...trial.metadata } };
    nameless.metadata.factors = [{ ...trial.metadata.factors![0] }];
    delete nameless.metadata.factors[0].kind;
    expect(leftOut([{ trial: nameless, findings: computeFindings(nameless) }], entry)[0]).toContain(
      'it names no cultivar.',
    );
    expect(leftOut(trials, entry)).toEqual([]);
  });

  test('whose scores are ranks brings no mean', () => {
    const [variable] = trial.metadata.variables;
    const scored = {
      ...trial,
      metadata: {
        ...trial.metadata,
        variables: [{ ...variable, kind: 'scored' as const, unit: '{score}' }] as [typeof variable],
      },
    };
    const item = { trial: scored, findings: computeFindings(scored) };
    expect(seasons([item])).toEqual([]);
    expect(leftOut([item], entry)[0]).toContain('its scores are ranks, which have no mean.');
  });
});
