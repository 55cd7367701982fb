import { describe, expect, test } from 'vitest';
import { loadContent } from '../../src/commands/load-content.ts';
import { libraryOf } from '../../src/commands/library-of.ts';
import {
  adjustedMeansTable,
  cellsTable,
  differencesTable,
  steadinessTable,
  trialsTable,
} from '../../src/compare/season-tables.ts';
import { seasonSentence } from '../../src/compare/words/season-sentence.ts';
import { plainText } from '../../src/compute/words/words.ts';
import { noNumber } from '../../src/compute/tables/page-table.ts';
import { cropComparisons } from '../../src/publish/crop-comparisons.ts';

const library = libraryOf(await loadContent(new URL('../../content', import.meta.url).pathname));
const comparisons = cropComparisons(library);
const lettuce = comparisons.find(({ crop }) => crop === 'Lettuce')!;
const basil = comparisons.find(({ crop }) => crop === 'Sweet basil')!;

describe("the demo's lettuces across seasons", () => {
  const { entry, name } = lettuce;

  test('show holes as holes, and mark trials without an error of their own', () => {
    const table = cellsTable(entry, name);
    const holes = entry.trials.length * entry.adjusted_means.length - entry.cells.length;
    expect(holes).toBeGreaterThan(0);
    expect(table.rows.flatMap(({ cells }) => cells).filter((cell) => cell === noNumber)).toHaveLength(holes);
    expect(table.columns.filter(({ heading }) => heading.endsWith('*'))).toHaveLength(
      entry.trials.filter(({ replicated }) => !replicated).length,
    );
  });

  test('stand best first within each linked set, with the set said', () => {
    const table = adjustedMeansTable(entry, name);
    expect(table.columns.at(-1)!.heading).toBe('Linked set');
    expect(table.rows.at(-1)!.heading).toBe('Pewter Godwit');
    const first = entry.adjusted_means.filter(({ cultivar }) => entry.linked_sets[0]!.includes(cultivar));
    const best = [...first].sort((a, b) => b.mean - a.mean)[0]!;
    expect(table.rows[0]!.heading).toBe(name(best.cultivar));
  });

  test('have a pair of every two that are linked, and every trial beside its particulars', () => {
    expect(differencesTable(entry, name)!.rows).toHaveLength(entry.differences.length);
    expect(trialsTable(entry, (id) => id).rows).toHaveLength(entry.trials.length);
  });
});

describe('a crop of one trial', () => {
  test('is not compared, with the reason, and without letters or pairs', () => {
    const { entry, name } = basil;
    expect(plainText(seasonSentence(entry, name))).toContain('There is one trial only');
    expect(differencesTable(entry, name)).toBeNull();
    expect(steadinessTable(entry, name)).toBeNull();
  });
});
