import { analysisOfVariance } from './analysis-of-variance.ts';
import { brownForsythe, shapiroWilk } from './checks-of-analysis.ts';
import { coefficientOfVariation } from './coefficient-of-variation.ts';
import { conductivity } from './conductivity.ts';
import { counts } from './counts.ts';
import { digitsShown } from './digits-shown.ts';
import { drawingLots, latinSquareLots, seededNumbers } from './drawing-lots.ts';
import { dunnett } from './dunnett.ts';
import { experimentalUnitMethod } from './experimental-unit.ts';
import { fiveNumberSummary } from './five-number-summary.ts';
import { intervalOfMean } from './interval-of-mean.ts';
import { leastSignificantDifference } from './least-significant-difference.ts';
import { linkedSets } from './linked-sets.ts';
import { letters } from './letters.ts';
import { mean } from './mean.ts';
import type { MethodGroup } from './method.ts';
import { mixedModel } from './mixed-model.ts';
import { moransI } from './morans-i.ts';
import { nutrientAmounts } from './nutrient-amounts.ts';
import { otherScale } from './other-scale.ts';
import { plantsPerUnitMethod } from './plants-per-unit.ts';
import { positionEffects } from './position-effects.ts';
import { randomisationTest } from './randomisation-test.ts';
import { rankTests } from './rank-tests.ts';
import { replicatesNeeded } from './replicates-needed.ts';
import { seasonsCompared } from './seasons-compared.ts';
import { steadinessMethod } from './steadiness.ts';
import { standardDeviation } from './standard-deviation.ts';
import { tukeyKramer } from './tukey-kramer.ts';
import { waterUsed } from './water-used.ts';
import { yieldByArea } from './yield-by-area.ts';

/** Every method of the site, in the order in which the page of methods shows them. */
export const methodGroups: readonly MethodGroup[] = [
  {
    id: 'describing',
    name: 'Describing what was weighed',
    methods: [
      counts,
      mean,
      standardDeviation,
      coefficientOfVariation,
      fiveNumberSummary,
      intervalOfMean,
      yieldByArea,
      waterUsed,
      digitsShown,
    ],
  },
  {
    id: 'testing',
    name: 'What the design allows to be said',
    methods: [
      experimentalUnitMethod,
      analysisOfVariance,
      mixedModel,
      dunnett,
      tukeyKramer,
      letters,
      leastSignificantDifference,
    ],
  },
  {
    id: 'checks',
    name: 'Whether the analysis may be relied on',
    methods: [shapiroWilk, brownForsythe, randomisationTest, otherScale, rankTests],
  },
  { id: 'place', name: 'Where it stood', methods: [positionEffects, moransI] },
  { id: 'seasons', name: 'Across seasons', methods: [linkedSets, seasonsCompared, steadinessMethod] },
  {
    id: 'next',
    name: 'The next trial',
    methods: [replicatesNeeded, plantsPerUnitMethod, drawingLots, latinSquareLots, seededNumbers],
  },
  { id: 'solution', name: 'The solution', methods: [nutrientAmounts, conductivity] },
];
