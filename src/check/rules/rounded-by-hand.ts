import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { gramsIn } from '../../model/units.ts';
import { unitInFile } from '../harvest-columns.ts';
import { weighingsOf } from '../weighings.ts';

const rule: Rule = {
  rule: 'rounded-by-hand',
  severity: 'warning',
  acceptable: true,
  title: 'More final 0s and 5s than chance',
  meaning:
    'A scale shows each final digit about as often as the others. Many 0s and 5s mean that weights were rounded by hand, so that the resolution is coarser than declared.',
  example: '31 of 48 weights end in 0 or 5, where a scale with steps of 1 g gives about 10',
  check,
};
export default rule;

const fewest = 20;
const unlikely = 0.01;
/** Of ten final digits, two. */
const share = 0.2;

function check(facts: Facts, report: Report): void {
  const weighings = weighingsOf(facts);
  if (weighings === null) return;
  const { variable, all } = weighings;
  const { resolution, unit = 'g' } = variable;
  // Only where the scale shows every digit do 0 and 5 have their share of the final ones.
  if (resolution === undefined || unitInFile(facts.metadata, variable) !== unit || !isPowerOfTen(resolution))
    return;
  const step = resolution * (gramsIn[unit] ?? 1);
  const ending = all.filter(({ weight }) => Math.round(weight / step) % 5 === 0).length;
  if (all.length < fewest || upperTail(ending, all.length) >= unlikely) return;
  const message = say(
    '{count} of {all} weights end in 0 or 5, where a scale with steps of {step} {unit} gives about {expected}; is the resolution {coarser} {unit}?',
    {
      count: ending,
      all: all.length,
      step: resolution,
      unit,
      expected: Math.round(all.length * share),
      coarser: Number((resolution * 5).toPrecision(12)),
    },
  );
  const place = facts.metadata.place(['variables', 0, 'resolution']);
  report(rule, { file: 'trial.yaml', place, found: String(ending), message });
}

function isPowerOfTen(value: number): boolean {
  const exponent = Math.log10(value);
  return Math.abs(exponent - Math.round(exponent)) < 1e-9;
}

/** The binomial chance of at least so many of n, each with the share of 0s and 5s. */
function upperTail(count: number, n: number): number {
  if (count === 0) return 1;
  let logTerm = n * Math.log(1 - share);
  let below = 0;
  for (let k = 0; k < count; k += 1) {
    below += Math.exp(logTerm);
    logTerm += Math.log(((n - k) / (k + 1)) * (share / (1 - share)));
  }
  if (count < n * share) return 1 - below;
  let tail = 0;
  for (let k = count; k <= n; k += 1) {
    tail += Math.exp(logTerm);
    logTerm += Math.log(((n - k) / (k + 1)) * (share / (1 - share)));
  }
  return tail;
}
