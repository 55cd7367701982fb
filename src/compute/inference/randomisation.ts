import { formatNumber } from '../format/format-number.ts';
import { listed } from '../words/words.ts';
import { say } from '../../model/say.ts';
import type { Inference } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { latinSquareRandomisationTest } from '../../statistics/randomisation/latin-square-randomisation-test.ts';
import {
  DRAWS,
  type RandomisationResult,
  randomisationTest,
} from '../../statistics/randomisation/randomisation-test.ts';
import { type SeededRandom, seededRandom } from '../../statistics/seeded-random.ts';
import type { AnalysisDesign } from './analysis-design.ts';
import { groupIndexes } from './grouping.ts';
import type { UnitMeans } from './unit-means.ts';

type RandomisationTest = NonNullable<Inference['randomisation_test']>;

/** The seed of the draws where arrangements are too many to count; published with the result. */
export const randomisationSeed = 1935;

/**
 * The randomisation test of the finest stratum's treatments, under the design's own restrictions: treatments
 * change places between units of one block (one coarser unit in a split plot, rows and columns together in
 * a Latin square). Null where lots were not drawn, since there is then nothing to draw again.
 *
 * Reference: R. A. Fisher (1935), The Design of Experiments, chapter III.
 */
export function randomisationTestOf(
  trial: Trial,
  design: AnalysisDesign,
  units: UnitMeans,
  alpha: number,
): RandomisationTest | null {
  if (!trial.metadata.design.randomised) return null;
  const square =
    design.blocks.some(([name]) => name === 'row') && design.blocks.some(([name]) => name === 'column');
  const random = seededRandom(randomisationSeed);
  const result = square ? ofSquare(design, units, random) : ofBlocks(design, units, random);
  const statistic = statisticInWords(design);
  if ('reason' in result) {
    return {
      statistic,
      p: null,
      arrangements: 0,
      exact: false,
      seed: null,
      reason: `${say(result.reason)}.`,
    };
  }
  return {
    statistic,
    p: result.p,
    arrangements: result.exact ? result.arrangements : DRAWS,
    exact: result.exact,
    seed: result.exact ? null : randomisationSeed,
    ...(result.exact ? { least_p: result.leastP, ...fewArrangements(result.leastP, alpha) } : {}),
  };
}

/** From here up the least p that a design's arrangements allow is said beside p. */
const worthSaying = 0.01;

/** Few arrangements keep p from being small however far apart treatments are: F beside it has no such bound. */
function fewArrangements(least: number, alpha: number): Pick<RandomisationTest, 'note'> {
  if (least < worthSaying) return {};
  const values = { p: formatNumber(least, 3), alpha: formatNumber(alpha, 2) };
  return {
    note:
      least < alpha
        ? say(
            'The lots of this design could fall in so few ways that the p of the randomisation test cannot be less than {p}, however far apart the treatments are.',
            values,
          )
        : say(
            'The lots of this design could fall in so few ways that the p of the randomisation test cannot be less than {p}, however far apart the treatments are: at the {alpha} level this test cannot show a difference.',
            values,
          ),
  };
}

/** Factors of the finest units that vary within what restricts the lots. */
function finestFactors(design: AnalysisDesign): string[] {
  return design.terms
    .filter(({ factors, unit }) => factors.length === 1 && unit === design.finest)
    .map(({ name }) => name);
}

function statisticInWords(design: AnalysisDesign): string {
  return say('sum of squares of {factors} after blocks, between means of {units}', {
    factors: listed(finestFactors(design)),
    units: say(`${design.finest}s`),
  });
}

/** What restricts the lots of a unit: its block, and the levels of what was allotted to coarser units. */
function ofBlocks(design: AnalysisDesign, { units }: UnitMeans, random: SeededRandom): RandomisationResult {
  const finest = finestFactors(design);
  const treatments = groupIndexes(units.map(({ levels }) => JSON.stringify(finest.map((id) => levels[id]))));
  const coarse = finest.length < design.terms.filter(({ factors }) => factors.length === 1).length;
  const blocks = groupIndexes(units.map(({ block, coarser }) => `${block ?? ''}|${coarse ? coarser : ''}`));
  return randomisationTest(
    units.map((unit, index) => ({
      total: unit.total,
      count: unit.weights,
      block: blocks[index]!,
      treatment: treatments[index]!,
    })),
    random,
  );
}

function ofSquare(design: AnalysisDesign, { units }: UnitMeans, random: SeededRandom): RandomisationResult {
  const treatments = groupIndexes(units.map(({ treatment }) => treatment));
  const ofBlock = (name: string) => design.factors.find((factor) => factor.name === name)!.values;
  const [rows, columns] = [ofBlock('row'), ofBlock('column')];
  return latinSquareRandomisationTest(
    units.map((unit, index) => ({
      total: unit.total,
      count: unit.weights,
      row: rows[unit.first]!,
      column: columns[unit.first]!,
      treatment: treatments[index]!,
    })),
    random,
  );
}
