import { formatPercent } from '../format/format-percent.ts';
import { say } from '../../model/say.ts';
import type { Summary } from '../../model/findings.ts';
import { formatNumber } from '../format/format-number.ts';

/**
 * The formulas of a summary with its numbers put in. One more decimal is shown inside a formula than in its
 * result, so that a reader who follows it with a pocket calculator arrives at the same last digit.
 */
export function summarySteps(
  { n, mean, sd, cv, se, ci95 }: Summary,
  unit: string,
  digits: number,
): { name: string; formula: string }[] {
  const whole = (value: number) => formatNumber(value, Math.max(0, digits));
  const finer = (value: number) => formatNumber(value, Math.max(0, digits) + 2);
  const steps: { name: string; formula: string }[] = [];
  const add = (name: string, formula: string) => steps.push({ name, formula });
  if (mean !== null)
    add(say('Mean'), `${say('sum ÷ n')} = ${whole(mean * n)} ÷ ${n} = ${whole(mean)} ${unit}`);
  if (mean !== null && sd !== null) {
    const squares = `${finer(sd * sd * (n - 1))} ÷ ${n - 1}`;
    add(
      say('Standard deviation'),
      `${say('√(sum of squared differences from the mean ÷ (n − 1))')} = √(${squares}) = ${whole(sd)} ${unit}`,
    );
    if (cv !== null) {
      add(
        say('CV'),
        `${say('100 × standard deviation ÷ mean')} = 100 × ${finer(sd)} ÷ ${finer(mean)} = ${formatPercent(cv, 1)}`,
      );
    }
  }
  if (se !== null && sd !== null) {
    add(
      say('Standard error'),
      `${say('standard deviation ÷ √n')} = ${finer(sd)} ÷ √${n} = ${whole(se)} ${unit}`,
    );
  }
  const [lower, upper] = (ci95 ?? []) as number[];
  // Values all alike have no spread, and their interval no t.
  if (se !== null && se > 0 && mean !== null && lower !== undefined && upper !== undefined) {
    const t = formatNumber((upper - mean) / se, 4);
    add(
      say('95% interval'),
      `${say('mean ± t × standard error')} = ${finer(mean)} ± ${t} × ${finer(se)} = ${say('{from} to {to}', { from: whole(lower), to: whole(upper) })} ${unit}`,
    );
  }
  return steps;
}
