import fc from 'fast-check';
import { expect, test } from 'vitest';
import { computeFindings } from '../../src/compute/findings.ts';
import type { Status } from '../../src/model/trial.ts';
import { type PlantOfTrial, trialOf } from '../support/trial-of.ts';

const lost: readonly Status[] = ['dead', 'culled', 'not weighed', 'no regrowth', 'not planted'];

/** A small trial of any layout at all: blocks or none, plots or none, one to three plants a pot, plants lost. */
const anyPlants = fc
  .record({
    containers: fc.integer({ min: 1, max: 4 }),
    pots: fc.integer({ min: 1, max: 6 }),
    plants: fc.integer({ min: 1, max: 3 }),
    levels: fc.integer({ min: 1, max: 4 }),
    second: fc.integer({ min: 1, max: 2 }),
    blocks: fc.constantFrom('none', 'containers', 'pairs', 'rows'),
    plots: fc.constantFrom('none', 'each', 'pairs'),
    byContainer: fc.boolean(),
    cuts: fc.integer({ min: 1, max: 2 }),
    step: fc.constantFrom(0, 1, 5, 0.1),
    numbers: fc.array(fc.nat(1000), { minLength: 160, maxLength: 160 }),
  })
  .map((given) => {
    const plants: PlantOfTrial[] = [];
    let at = 0;
    const next = () => given.numbers[at++ % given.numbers.length]!;
    for (let c = 0; c < given.containers; c++) {
      for (let pot = 0; pot < given.pots; pot++) {
        const chosen = given.byContainer ? c : next();
        const treatment: Record<string, string> = { cultivar: `v${chosen % given.levels}` };
        if (given.second > 1) treatment['strength'] = `s${next() % given.second}`;
        for (let plant = 0; plant < given.plants; plant++) {
          for (let cut = 1; cut <= given.cuts; cut++) {
            const draw = next();
            const status = draw % 11 === 0 ? lost[draw % lost.length] : undefined;
            plants.push({
              container: `T${c}`,
              row: pot + 1,
              column: 1,
              ...(given.blocks === 'containers' ? { block: `${c}` } : {}),
              ...(given.blocks === 'pairs' ? { block: `${c >> 1}` } : {}),
              ...(given.blocks === 'rows' ? { block: `${pot % 2}` } : {}),
              ...(given.plots === 'each' ? { plot: `T${c}-${pot}` } : {}),
              ...(given.plots === 'pairs' ? { plot: `T${c}-${pot >> 1}` } : {}),
              treatment,
              cut,
              weight: status === undefined ? 100 + given.step * (draw % 60) : null,
              ...(status === undefined ? {} : { status }),
            });
          }
        }
      }
    }
    return { plants, cuts: given.cuts };
  });

function faults(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (typeof value !== 'object' || value === null) return value === undefined ? [path] : [];
  return Object.entries(value).flatMap(([key, each]) => faults(each, `${path}/${key}`));
}

test('whatever the layout and whatever was lost, findings come without an exception, NaN or p out of range', () => {
  fc.assert(
    fc.property(anyPlants, fc.boolean(), ({ plants, cuts }, square) => {
      const trial = trialOf(plants, {
        cuts: ['2025-09-20', '2025-10-20'].slice(0, cuts),
        design: {
          arrangement: square ? 'latin square' : 'completely randomised',
          allotted: 'position',
          randomised: true,
        },
      });
      const findings = computeFindings(trial);
      expect(faults(findings)).toEqual([]);
      for (const entry of findings.inference) {
        if (entry.verdict === 'not tested') {
          expect(entry).toMatchObject({ anova: [], means: [], differences: [], against_check: [] });
          expect(entry.reason).not.toBe('');
        } else {
          expect(entry.anova.some(({ p }) => p !== null)).toBe(true);
        }
        for (const { p } of entry.anova) if (p !== null) expect(p >= 0 && p <= 1).toBe(true);
        for (const pair of entry.differences) {
          if (pair.p_adjusted !== null) expect(pair.p_adjusted >= 0 && pair.p_adjusted <= 1).toBe(true);
        }
      }
    }),
    { numRuns: 600, seed: 20251125 },
  );
});
