/** The barley yields of 1931 and 1932 as trials, for tests of comparisons across seasons. */
import { readFileSync } from 'node:fs';
import { computeFindings } from '../../src/compute/findings.ts';
import type { TrialWithFindings } from '../../src/model/library.ts';
import { trialOf } from '../support/trial-of.ts';

export interface BarleyCell {
  variety: string;
  trial: string;
  y: number;
}

const path = new URL('../published/barley/barley.json', import.meta.url);
const { data } = JSON.parse(readFileSync(path, 'utf8')) as { data: Record<string, (string | number)[]> };

/** Ten varieties in twelve trials, bushels an acre (see test/published/barley/SOURCE.md). */
export const barley: readonly BarleyCell[] = data['y']!.map((y, index) => ({
  variety: String(data['variety']![index]),
  trial: String(data['trial']![index]),
  y: Number(y),
}));

/** Each trial of a table as an unreplicated trial folder: one pot a variety. */
export function trialsOf(cells: readonly BarleyCell[], check?: string): TrialWithFindings[] {
  return [...Map.groupBy(cells, ({ trial }) => trial)].map(([name, ofTrial]) => {
    const trial = trialOf(
      ofTrial.map(({ variety, y }) => ({ container: 'B1', treatment: { cultivar: variety }, weight: y })),
      { metadata: { crop: { name: 'Barley', species: 'Hordeum vulgare' } } },
    );
    trial.id = name;
    const [factor] = trial.metadata.factors!;
    factor.kind = 'cultivar';
    if (check !== undefined) factor.check = check;
    return { trial, findings: computeFindings(trial) };
  });
}
