/** The studentized range: microseconds a call once warm, against R's ptukey in WebAssembly. */
import { performance } from 'node:perf_hooks';
import { studentizedRangeUpperTail } from '../../src/statistics/studentized-range.ts';
import { openR } from '../support/webr.ts';
import type { Bench } from './bench.ts';

const MOST_MICROSECONDS = 30;

export const bench: Bench = {
  name: 'Studentized range: microseconds a call once warm, against ptukey of R in WebAssembly',
  run: async ({ quick }) => {
    const calls = quick ? 500 : 5000;
    const q = Array.from({ length: calls }, (_, index) => 0.5 + (8 * index) / calls);
    const r = await openR();
    try {
      const rows = [];
      const misses: string[] = [];
      for (const [groups, df] of [
        [4, 12],
        [4, 1],
        [30, 2.5],
        [30, 60],
        [56, 168],
      ] as const) {
        const ours = microsecondsOurs(q, groups, df);
        const code = `suppressWarnings(system.time(for (v in q) ptukey(v, ${groups}, ${df}, lower.tail = FALSE)))[["elapsed"]]`;
        const theirs = (Number(await r.run(code, { q })) * 1e6) / calls;
        rows.push({
          groups,
          df,
          'ours, us': ours.toFixed(1),
          'R, us': theirs.toFixed(1),
          times: (theirs / ours).toFixed(1),
        });
        if (ours > MOST_MICROSECONDS) {
          misses.push(
            `the studentized range of ${groups} groups on ${df} takes ${ours.toFixed(1)} us a call, over ${MOST_MICROSECONDS}.`,
          );
        }
      }
      return { rows, misses };
    } finally {
      r.close();
    }
  },
};

function microsecondsOurs(q: readonly number[], groups: number, df: number): number {
  let total = 0;
  // Warm: the table of these groups filled, the code compiled.
  for (let round = 0; round * q.length < 10_000; round += 1) {
    for (const value of q) total += studentizedRangeUpperTail(value, groups, df);
  }
  const start = performance.now();
  for (const value of q) total += studentizedRangeUpperTail(value, groups, df);
  const spent = performance.now() - start;
  // The total is used, so that the calls cannot be optimised away.
  if (!(total > 0)) throw new Error('the upper tails of the studentized range added to nothing');
  return (spent * 1000) / q.length;
}
