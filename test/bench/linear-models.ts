/** The analysis of small block trials against the same in R, and the time that a large trial takes. */
import { performance } from 'node:perf_hooks';
import { letters } from '../../src/statistics/letters.ts';
import {
  analysisOfVarianceWithStrata,
  type StrataDesign,
} from '../../src/statistics/linear-model/analysis-of-variance-with-strata.ts';
import { type MarginalMeans, marginalMeans } from '../../src/statistics/linear-model/marginal-means.ts';
import { restrictedMaximumLikelihood } from '../../src/statistics/linear-model/restricted-maximum-likelihood.ts';
import { termTests } from '../../src/statistics/linear-model/term-tests.ts';
import { seededRandom } from '../../src/statistics/seeded-random.ts';
import { shapiroWilk } from '../../src/statistics/shapiro-wilk.ts';
import { studentizedRangeUpperTail } from '../../src/statistics/studentized-range.ts';
import { openR } from '../support/webr.ts';
import type { Bench, BenchResult } from './bench.ts';

const TIMES_FASTER = 50;
const MOST_SECONDS = 0.5;

export const bench: Bench = {
  name: 'Statistics: trials of 4 treatments in 4 blocks, 6 plants a plot, against R in WebAssembly; 224 plots of 56 cultivars',
  run: async ({ quick }) => {
    const small = await smallTrials(quick ? 100 : 1000);
    const large = [largeTrial('balanced', 1), largeTrial('plants missing', 0.95)];
    return {
      rows: [...small.rows, ...large.flatMap(({ rows }) => rows)],
      misses: [...small.misses, ...large.flatMap(({ misses }) => misses)],
    };
  },
};

type Measured = Required<BenchResult>;

/** Plots, each with its block and treatment, `plants` to a plot. */
function blockTrial(blocks: number, treatments: number, plants: number) {
  const plot = Array.from({ length: blocks * treatments * plants }, (_, i) => Math.floor(i / plants));
  return {
    plot,
    block: plot.map((p) => Math.floor(p / treatments)),
    treatment: plot.map((p) => p % treatments),
  };
}

async function smallTrials(count: number): Promise<Measured> {
  const layout = blockTrial(4, 4, 6);
  const random = seededRandom(1);
  const trials = Array.from({ length: count }, () => {
    const plots = Array.from({ length: 16 }, () => 6 * random.normal());
    return layout.plot.map((p, i) => 100 + 8 * (layout.treatment[i]! % 2) + plots[p]! + 12 * random.normal());
  });
  for (const responses of trials.slice(0, 50)) analyse(responses, layout);
  const start = performance.now();
  const sumOfF = trials.reduce((sum, responses) => sum + analyse(responses, layout).f, 0);
  const ours = (performance.now() - start) / 1000;
  const r = await analysisInR(trials, layout);
  const ratio = r.seconds / ours;
  const misses: string[] = [];
  if (ratio < TIMES_FASTER)
    misses.push(
      `small trials are analysed ${ratio.toFixed(0)} times as fast as in R, under ${TIMES_FASTER}.`,
    );
  if (Math.abs(r.sumOfF / sumOfF - 1) > 1e-9)
    misses.push(`F differs from R's: ${sumOfF} and ${r.sumOfF} together.`);
  return {
    rows: [{ what: `${count} trials`, 'ours s': ours, 'R s': r.seconds, 'times as fast': ratio }],
    misses,
  };
}

function analyse(responses: readonly number[], layout: ReturnType<typeof blockTrial>) {
  const design: StrataDesign = {
    responses,
    factors: [
      { name: 'block', levels: 4, values: layout.block },
      { name: 'treatment', levels: 4, values: layout.treatment },
    ],
    blocks: [['block']],
    treatments: [['treatment']],
    strata: [{ name: 'plot', groups: layout.plot }],
    residual: 'plant',
  };
  const { rows, effects } = analysisOfVarianceWithStrata(design);
  const means = marginalMeans(effects!.fixed, effects!.model, ['treatment']);
  const shown = tukeyLetters(means, 4);
  const plots = Array.from(
    { length: 16 },
    (_, p) => responses.slice(6 * p, 6 * p + 6).reduce((sum, y) => sum + y, 0) / 6,
  );
  const blocks = [0, 1, 2, 3].map((b) => plots.slice(4 * b, 4 * b + 4).reduce((sum, y) => sum + y, 0) / 4);
  const grand = blocks.reduce((sum, y) => sum + y, 0) / 4;
  const residuals = plots.map(
    (y, p) => y - blocks[Math.floor(p / 4)]! - means.means[p % 4]!.estimate! + grand,
  );
  return { f: rows[1]!.f!, letters: shown, normality: shapiroWilk(residuals) };
}

function tukeyLetters({ means, differences }: MarginalMeans, groups: number): string[] {
  const order = [...means.keys()].sort((a, b) => means[b]!.estimate! - means[a]!.estimate!);
  const place = order.map((_, mean) => order.indexOf(mean));
  const p = order.map(() => new Array<number>(groups).fill(1));
  for (const { a, b, estimate, se, df } of differences) {
    const tail = studentizedRangeUpperTail((Math.abs(estimate!) / se!) * Math.SQRT2, groups, df!);
    p[place[a]!]![place[b]!] = tail;
    p[place[b]!]![place[a]!] = tail;
  }
  return letters(p, 0.05);
}

/** The same with base R's functions (which have no letters): aov with strata, Tukey on plot means, Shapiro. */
async function analysisInR(trials: readonly number[][], layout: ReturnType<typeof blockTrial>) {
  const r = await openR();
  try {
    const given = { y: trials.flat(), plot: layout.plot, block: layout.block, treatment: layout.treatment };
    await r.run(
      'Y <- matrix(y, length(plot)); d <- data.frame(plot = factor(plot), block = factor(block), treatment = factor(treatment)); 0',
      given,
    );
    const start = performance.now();
    const sumOfF = await r.run(
      `total <- 0
       for (k in seq_len(ncol(Y))) {
         d$y <- Y[, k]
         strata <- summary(aov(y ~ block + treatment + Error(plot), d))
         total <- total + strata[["Error: plot"]][[1]][2, "F value"]
         means <- aggregate(y ~ plot + block + treatment, d, mean)
         fit <- aov(y ~ block + treatment, means)
         TukeyHSD(fit, "treatment")
         shapiro.test(residuals(fit))
       }
       total`,
    );
    return { seconds: (performance.now() - start) / 1000, sumOfF: Number(sumOfF) };
  } finally {
    r.close();
  }
}

/** 56 cultivars in 4 blocks, 6 plants a plot: analysis, adjusted means and Tukey's p of all 1,540 differences. */
function largeTrial(name: string, kept: number): Measured {
  const random = seededRandom(2);
  const whole = blockTrial(4, 56, 6);
  const plots = Array.from({ length: 224 }, () => 6 * random.normal());
  const plants = [...whole.plot.keys()].filter(() => kept === 1 || random.uniform() < kept);
  const pick = (values: readonly number[]) => plants.map((i) => values[i]!);
  const responses = plants.map(
    (i) => 100 + (whole.treatment[i]! % 7) + plots[whole.plot[i]!]! + 12 * random.normal(),
  );
  const factors = [
    { name: 'block', levels: 4, values: pick(whole.block) },
    { name: 'treatment', levels: 56, values: pick(whole.treatment) },
  ];
  const plotTerm = [{ name: 'plot', groups: pick(whole.plot) }];
  const times = [1, 2, 3, 4, 5].map(() => {
    const start = performance.now();
    if (kept === 1) {
      const { effects } = analysisOfVarianceWithStrata({
        responses,
        factors,
        blocks: [['block']],
        treatments: [['treatment']],
        strata: plotTerm,
        residual: 'plant',
      });
      tukeyLetters(marginalMeans(effects!.fixed, effects!.model, ['treatment']), 56);
    } else {
      const fit = restrictedMaximumLikelihood({
        responses,
        factors,
        fixed: [['block'], ['treatment']],
        random: plotTerm,
        residual: 'plant',
      });
      if ('reason' in fit) throw new Error(fit.reason);
      termTests(fit.effects, fit.model);
      tukeyLetters(marginalMeans(fit.effects, fit.model, ['treatment']), 56);
    }
    return (performance.now() - start) / 1000;
  });
  const median = times.sort((a, b) => a - b)[2]!;
  const misses =
    median > MOST_SECONDS ? [`224 plots, ${name}: ${median.toFixed(2)} s, over ${MOST_SECONDS}.`] : [];
  return {
    rows: [{ what: `224 plots of 56 cultivars, ${name}`, 'ours s': median, 'R s': '', 'times as fast': '' }],
    misses,
  };
}
