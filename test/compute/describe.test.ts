import { describe as suite, expect, test } from 'vitest';
import { computeFindings } from '../../src/compute/findings.ts';
import { numbersFromR } from '../support/r.ts';
import { trialOf, type PlantOfTrial } from '../support/trial-of.ts';

const plant = (weight: number | null, more: Partial<PlantOfTrial> = {}): PlantOfTrial => ({
  container: 'T1',
  treatment: { cultivar: 'a' },
  weight,
  ...more,
});

suite('describing a trial', () => {
  test('a dead plant counts as 0 per plant set and per pot, and is left out per plant harvested', () => {
    const findings = computeFindings(trialOf([plant(100), plant(120), plant(null, { status: 'dead' })]));
    const [only] = findings.treatments;
    expect(only!.per_plant_harvested).toMatchObject({ n: 2, mean: 110 });
    expect(only!.per_plant_set).toMatchObject({ n: 3, mean: 220 / 3 });
    expect(only!.per_pot).toMatchObject({ n: 3, mean: 220 / 3 });
    expect(findings.counts).toMatchObject({ set: 3, weighed: 2, dead: 1 });
  });

  test('a plant not weighed makes its pot unknown, never 0, and is counted as missing', () => {
    const pot = { row: 1, column: 1 };
    const findings = computeFindings(
      trialOf([
        plant(100, pot),
        plant(null, pot),
        plant(90, { row: 2, column: 1 }),
        plant(80, { row: 2, column: 1 }),
      ]),
    );
    const [only] = findings.treatments;
    expect(only!.per_pot).toMatchObject({ n: 1, mean: 170, missing: 1 });
    expect(only!.per_container).toMatchObject({ n: 0, mean: null, missing: 1 });
    expect(only!.per_container?.reason).toBeTruthy();
    expect(findings.counts.not_weighed).toBe(1);
  });

  test('culled and never planted plants are left out of both', () => {
    const findings = computeFindings(
      trialOf([plant(100), plant(null, { status: 'culled' }), plant(null, { status: 'not planted' })]),
    );
    const [only] = findings.treatments;
    expect(only!.per_plant_set).toMatchObject({ n: 1, mean: 100, missing: 0 });
    expect(only!.per_pot).toMatchObject({ n: 1, mean: 100, missing: 0 });
    expect(findings.counts).toMatchObject({ set: 2, culled: 1, not_planted: 1 });
  });

  test("each plant's cuts are summed over all cuts, and told apart by cut", () => {
    const at = { row: 1, column: 1 };
    const trial = trialOf(
      [
        plant(80, { ...at, cut: 1 }),
        plant(40, { ...at, cut: 2 }),
        plant(90, { row: 2, column: 1, cut: 1 }),
        plant(null, { row: 2, column: 1, cut: 2, status: 'no regrowth' }),
      ],
      { cuts: ['2025-09-20', '2025-10-20'] },
    );
    const findings = computeFindings(trial);
    expect(findings.treatments[0]!.per_plant_set).toMatchObject({
      n: 2,
      mean: 105,
      minimum: 90,
      maximum: 120,
    });
    expect(findings.treatments_by_cut.map(({ cut }) => cut)).toEqual([1, 2]);
    expect(findings.treatments_by_cut[1]!.treatments[0]!.per_plant_set).toMatchObject({ n: 2, mean: 20 });
    expect(findings.treatments_by_cut[1]!.treatments[0]!.per_plant_harvested).toMatchObject({
      n: 1,
      mean: 40,
    });
    expect(findings.treatments_by_cut[0]!.treatments[0]!.days_from_sowing).toBe(26);
    expect(findings.treatments[0]!.days_from_transplanting).toBe(38);
  });

  test('yield by area is over the part of the cover that the pots had', () => {
    const containers = { rows: 2, columns: 2, cover: { length: 100, width: 50, unit: 'cm' as const } };
    const findings = computeFindings(trialOf([plant(100), plant(140)], { containers }));
    // Two pots of four have half of 0.5 m2.
    expect(findings.treatments[0]!.kg_per_m2).toBeCloseTo(0.24 / 0.25, 12);
    expect(findings.treatments[0]!.g_per_m2_day).toBeCloseTo(960 / 38, 10);
  });

  test('a standard error is given only where the values are the replicates', () => {
    const byContainer = ['A', 'B', 'C', 'D'].flatMap((container, index) =>
      [100, 110, 120].map((weight) =>
        plant(weight + index, { container, treatment: { cultivar: index % 2 === 0 ? 'a' : 'b' } }),
      ),
    );
    const ofContainers = computeFindings(trialOf(byContainer)).treatments[0]!;
    expect(ofContainers.per_pot).toMatchObject({ se: null, ci95: null });
    expect(ofContainers.per_plant_set).toMatchObject({ se: null, ci95: null });
    expect(ofContainers.per_container!.se).toBeCloseTo(3, 12);
    const byPosition = [100, 110, 120, 130].map((weight, index) =>
      plant(weight, { treatment: { cultivar: index % 2 === 0 ? 'a' : 'b' } }),
    );
    expect(computeFindings(trialOf(byPosition)).treatments[0]!.per_pot!.se).toBeCloseTo(10, 12);
  });

  test('a combination of factors of different units has no replicates, and a score no standard error', () => {
    const splitPlot = ['A', 'B', 'C', 'D'].flatMap((container, index) =>
      [100, 110, 120, 130].map((weight, at) =>
        plant(weight, {
          container,
          treatment: { strength: index % 2 === 0 ? '1' : '2', cultivar: at % 2 === 0 ? 'a' : 'b' },
        }),
      ),
    );
    for (const { per_pot, per_plant_set, per_container } of computeFindings(trialOf(splitPlot)).treatments) {
      for (const summary of [per_pot, per_plant_set, per_container]) {
        expect(summary).toMatchObject({ se: null, ci95: null });
      }
    }
    const scores = trialOf([plant(1), plant(2), plant(4, { treatment: { cultivar: 'b' } })], {
      variable: { kind: 'scored', unit: '{score}' },
    });
    expect(computeFindings(scores).treatments[0]!.per_pot).toMatchObject({ se: null, ci95: null });
    expect(computeFindings(scores).treatments[0]!.per_pot!.reason).toContain('marks');
  });

  test('a pot weighed whole says nothing of single plants', () => {
    const whole = trialOf([plant(200, { plant: null }), plant(220, { plant: null })]);
    whole.positions.forEach((position) => (position.plants = 3));
    const [only] = computeFindings(whole).treatments;
    expect(only!.per_plant_harvested).toBeNull();
    expect(only!.per_pot).toMatchObject({ n: 2, mean: 210 });
    expect(only!.reason).toContain('weighed whole');
  });

  test('mean, standard deviation and quartiles are those of R', async () => {
    const weights = [112, 140, 155, 98, 171, 133, 127];
    const [only] = computeFindings(trialOf(weights.map((weight) => plant(weight)))).treatments;
    const expected = await numbersFromR(
      'unname(c(mean(w), sd(w), quantile(w, c(0, .25, .5, .75, 1), type = 7)))',
      {
        w: weights,
      },
    );
    const { mean, sd, minimum, lower_quartile, median, upper_quartile, maximum } = only!.per_pot!;
    [mean, sd, minimum, lower_quartile, median, upper_quartile, maximum].forEach((value, index) =>
      expect(value).toBeCloseTo(expected[index]!, 10),
    );
  });
});
