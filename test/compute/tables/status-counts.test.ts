import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { loadTrial } from '../../../src/commands/load-content.ts';
import { countsOf } from '../../../src/compute/counts.ts';
import { statusCountsTable } from '../../../src/compute/tables/status-counts.ts';

const tableOf = async (id: string) => {
  const folder = fileURLToPath(new URL(`../../../content/trials/${id}`, import.meta.url));
  const { trial } = await loadTrial(folder);
  if (trial === null) throw new Error(`${id} does not pass the check`);
  return statusCountsTable(trial, countsOf(trial));
};

test('pots weighed whole are counted under the heading of pots', async () => {
  const { caption, columns } = await tableOf('plants-per-pot-2024');
  expect(columns[1]?.heading).toBe('Pots');
  expect(caption).toBe(
    'What became of the pots, each weighed whole and counted once by the worst of its cuts',
  );
});

test('plants weighed singly are counted under the heading of plants', async () => {
  const { caption, columns } = await tableOf('autumn-lettuce-2025');
  expect(columns[1]?.heading).toBe('Plants');
  expect(caption).toBe('What became of the plants, each counted once by the worst of its cuts');
});
