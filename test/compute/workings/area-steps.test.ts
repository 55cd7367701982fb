import { describe, expect, it } from 'vitest';
import { computeFindings } from '../../../src/compute/findings.ts';
import { areaSteps } from '../../../src/compute/workings/area-steps.ts';
import { trialOf } from '../../support/trial-of.ts';

const cover = { length: 100, width: 50, unit: 'cm' as const };
const plants = (weight: number | null) =>
  [1, 2].map(() => ({
    container: 'T1',
    treatment: { cultivar: 'wren' },
    weight,
    ...(weight === null ? { status: 'dead' as const } : {}),
  }));
const stepsOf = (weight: number | null) =>
  areaSteps(computeFindings(trialOf(plants(weight), { containers: { cover } })).treatments[0]!);

describe('areaSteps', () => {
  it('divides what the pots gave by their part of the cover: 0.25 kg over 0.5 m²', () => {
    expect(stepsOf(125)[0]?.formula).toBe(
      'weight of the pots ÷ their part of the cover = 0.250\u00a0kg ÷ 0.5000\u00a0m² = 0.50\u00a0kg/m²',
    );
  });

  it('divides nothing where all plants died', () => {
    expect(stepsOf(null)[0]?.formula).toBe('weight of the pots ÷ their part of the cover = 0.00\u00a0kg/m²');
  });
});
