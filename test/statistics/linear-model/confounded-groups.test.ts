import { expect, test } from 'vitest';
import { withConfoundedGroups } from '../../../src/statistics/linear-model/confounded-groups.ts';
import { leastSquares } from '../../../src/statistics/linear-model/least-squares.ts';
import { marginalMeans } from '../../../src/statistics/linear-model/marginal-means.ts';
import { modelTerms } from '../../../src/statistics/linear-model/model-terms.ts';
import { termTests } from '../../../src/statistics/linear-model/term-tests.ts';

// Two strengths, a tank each; three cultivars in each tank, five or six pots, one pot missing.
const tank = [0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1];
const cultivar = [0, 1, 2, 0, 1, 2, 0, 1, 2, 0, 1];
const y = [118, 131, 109, 121, 133, 114, 140, 149, 128, 137, 151];
const model = modelTerms(
  11,
  [
    { name: 'strength', levels: 2, values: tank },
    { name: 'cultivar', levels: 3, values: cultivar },
  ],
  [['strength'], ['cultivar'], ['strength', 'cultivar']],
);
const plain = leastSquares(model.matrix, y);
const reason = 'no degrees of freedom are left for error';

test('one tank for each strength: what tells tanks apart has no error, what lies within tanks keeps its own', () => {
  const marked = withConfoundedGroups(plain, model.matrix, tank);
  const [strength, cultivars, both] = termTests(marked, model);
  expect(strength).toMatchObject({ f: null, p: null, reason });
  expect(cultivars).toEqual(termTests(plain, model)[1]);
  expect(both).toEqual(termTests(plain, model)[2]);
  expect(marginalMeans(marked, model, ['strength']).differences[0]).toMatchObject({ se: null, reason });
  const ofCultivars = marginalMeans(marked, model, ['cultivar']);
  expect(ofCultivars.differences).toEqual(marginalMeans(plain, model, ['cultivar']).differences);
  expect(ofCultivars.means[0]).toMatchObject({ se: null, reason });
  const cells = marginalMeans(marked, model, ['strength', 'cultivar']);
  const pair = (a: number, b: number) => cells.differences.find((one) => one.a === a && one.b === b)!;
  expect(pair(0, 1).se).toBeGreaterThan(0);
  expect(pair(0, 3).se).toBeNull();
});

test('groups that are not taken up by the fixed terms are refused', () => {
  expect(() => withConfoundedGroups(plain, model.matrix, [0, 0, 0, 1, 1, 1, 2, 2, 2, 3, 3])).toThrow(
    'take up',
  );
});
