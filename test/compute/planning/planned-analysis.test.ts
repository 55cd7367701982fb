import { describe, expect, it } from 'vitest';
import { levelNames } from '../../../src/compute/format/level-names.ts';
import { computeFindings } from '../../../src/compute/findings.ts';
import { plannedAnalysis } from '../../../src/compute/planning/planned-analysis.ts';
import { plannedSentences } from '../../../src/compute/planning/planned-sentences.ts';
import type { Trial } from '../../../src/model/trial.ts';
import { numberFromR } from '../../support/r.ts';
import { type PlantOfTrial, trialOf } from '../../support/trial-of.ts';

const planned = (trial: Trial): Trial => ({
  ...trial,
  metadata: { ...trial.metadata, status: 'planned' },
  harvest: [],
});

/** So many positions of each treatment, a container for each block. */
function blocks(count: number, treatments: readonly string[]): PlantOfTrial[] {
  return Array.from({ length: count }, (_, block) =>
    treatments.map((treatment) => ({
      container: `T${block + 1}`,
      block: String(block + 1),
      treatment: { cultivar: treatment },
      weight: null,
    })),
  ).flat();
}

const inBlocks = { arrangement: 'randomised blocks', allotted: 'position', randomised: true } as const;
const assumed = 15;

describe('plannedAnalysis', () => {
  it('reads the units and the error degrees of freedom off the layout: 4 blocks of 3 leave (4 - 1)(3 - 1) = 6', () => {
    const found = plannedAnalysis(planned(trialOf(blocks(4, ['a', 'b', 'c']), { design: inBlocks })), []);
    expect(found?.units).toEqual([
      { factor: 'cultivar', experimental_unit: 'position', replicates: { a: 4, b: 4, c: 4 } },
    ]);
    expect(found?.terms.map(({ errorDf, replicates }) => ({ errorDf, replicates }))).toEqual([
      { errorDf: 6, replicates: 4 },
    ]);
  });

  it("finds the difference that R's power.t.test finds for two treatments at random", async () => {
    const plants = ['a', 'b'].flatMap((treatment) =>
      Array.from({ length: 8 }, (_, index) => ({
        container: 'T1',
        row: index + 1,
        column: treatment === 'a' ? 1 : 2,
        treatment: { cultivar: treatment },
        weight: null,
      })),
    );
    const found = plannedAnalysis(planned(trialOf(plants)), []);
    const expected = await numberFromR(
      `power.t.test(n = 8, sd = ${assumed}, power = 0.8, sig.level = 0.05, strict = TRUE, tol = 1e-12)$delta`,
    );
    expect(found?.terms[0]?.detectablePercent).toBeCloseTo(expected, 6);
  });

  it('promises nothing where each treatment has one container', () => {
    const plants = ['a', 'b', 'c'].flatMap((treatment, index) =>
      Array.from({ length: 4 }, () => ({
        container: `T${index + 1}`,
        treatment: { cultivar: treatment },
        weight: null,
      })),
    );
    const trial = planned(
      trialOf(plants, { design: { arrangement: 'unreplicated', allotted: 'container', randomised: false } }),
    );
    const found = plannedAnalysis(trial, []);
    expect(found?.terms).toMatchObject([{ errorDf: 0, replicates: 1, detectablePercent: null }]);
    expect(plannedSentences(trial, levelNames(trial), found!)).toEqual([
      'Cultivar is allotted to containers, so the replicates will be containers: 1 for each level.',
      'Each cultivar has one container of its own, so cultivar and container will not be told apart: the trial will describe these containers and test nothing.',
    ]);
  });

  it('is null where there is nothing to compare', () => {
    expect(plannedAnalysis(planned(trialOf(blocks(3, ['a']))), [])).toBeNull();
  });

  it("takes the median error of the site's tested trials of the crop, and says so", () => {
    const weighed = trialOf(
      blocks(4, ['a', 'b', 'c']).map((plant, index) => ({
        ...plant,
        weight: 100 + ((index * 37) % 23),
        status: 'weighed' as const,
      })),
      { design: inBlocks },
    );
    const done = { trial: { ...weighed, id: 'done' }, findings: computeFindings(weighed) };
    const trial = planned(trialOf(blocks(4, ['a', 'b', 'c']), { design: inBlocks }));
    const cv = done.findings.inference.find(
      ({ measure, cut }) => measure === 'per_plant_set' && cut === 'all',
    );
    const found = plannedAnalysis(trial, [done]);
    expect(found?.variation).toEqual({
      percent: cv?.cv_percent,
      from: "the median error of the site's 1 tested trial of lettuce",
    });
    expect(plannedAnalysis(trial, [])?.variation).toEqual({
      percent: assumed,
      from: 'an assumption, as this site has no tested trial of the crop',
    });
  });

  it('finds larger differences only, where units are fewer', () => {
    const of = (count: number) =>
      plannedAnalysis(planned(trialOf(blocks(count, ['a', 'b', 'c']), { design: inBlocks })), [])!.terms[0]!
        .detectablePercent!;
    expect(of(3)).toBeGreaterThan(of(4));
    expect(of(4)).toBeGreaterThan(of(8));
  });
});
