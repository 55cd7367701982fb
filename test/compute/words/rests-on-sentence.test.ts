import { expect, test } from 'vitest';
import { computeFindings } from '../../../src/compute/findings.ts';
import { restsOnSentence } from '../../../src/compute/words/rests-on-sentence.ts';
import { plainText } from '../../../src/compute/words/words.ts';
import { type PlantOfTrial, trialOf } from '../../support/trial-of.ts';

function told(status: NonNullable<PlantOfTrial['status']>): string {
  const trial = trialOf(
    ['wren', 'plover'].flatMap((cultivar) =>
      [100, 110, 120].map((weight, index): PlantOfTrial => {
        const lost = cultivar === 'wren' && index === 0;
        return {
          container: 'T1',
          treatment: { cultivar },
          weight: lost ? null : weight,
          ...(lost ? { status } : {}),
        };
      }),
    ),
  );
  return plainText(restsOnSentence(trial, computeFindings(trial)));
}

test('what was lost is said, and that the dead count as nothing', () => {
  expect(told('dead')).toMatch(
    /\. Of what was set, 1 died\. What died or did not regrow counts as 0 in it\.$/,
  );
  expect(told('culled')).toMatch(/\. Of what was set, 1 was culled\.$/);
});
