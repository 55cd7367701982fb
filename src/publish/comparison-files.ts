import { packedGroup } from '../compare/packed-group.ts';
import { seasonGroups } from '../compare/season-groups.ts';
import { addressPart } from '../compute/format/address-part.ts';
import type { Comparison } from '../model/generated/comparison.ts';
import type { Library } from '../model/library.ts';
import { type CropComparison, cropsOf, cultivarsOf } from './crop-comparisons.ts';
import { everyTrial } from './every-trial.ts';
import { madeOnce } from './made-once.ts';
import { type PublishedFile, textFile } from './published-file.ts';
import { trialTitles } from './trial-titles.ts';

/** A comparison as the page offers it, with what its file holds. */
export interface OfferedComparison {
  /** As an address has it: "per-plant-set"; with the unit where a crop has a measure in two. */
  measure: string;
  /** From the site's root on. */
  file: string;
  comparison: CropComparison;
  packed: Comparison;
}

/** The crops of the page that compares: those with most trials first, each with what can be compared. */
export const comparedCrops = madeOnce('compared-crops', (library: Library) => {
  const groups = seasonGroups(everyTrial(library), library.cultivars);
  const cultivars = new Map(cultivarsOf(library).map((each) => [each.cultivar, each]));
  const titles = trialTitles(library);
  const names = {
    name: (cultivar: string) => cultivars.get(cultivar)?.name ?? cultivar,
    synonyms: (cultivar: string) => cultivars.get(cultivar)?.synonyms ?? [],
    title: (trial: string) => titles.get(trial) ?? trial,
  };
  return cropsOf(library)
    .map(({ id, name, comparisons }) => ({
      id,
      name,
      comparisons: comparisons.map((comparison): OfferedComparison => {
        const { species, measure, unit } = comparison.entry;
        const group = groups.find(
          (each) => each.species === species && each.measure === measure && each.unit === unit,
        )!;
        const doubled = comparisons.filter(({ entry }) => entry.measure === measure).length > 1;
        const slug = addressPart(doubled ? `${measure} ${unit}` : measure);
        const file = `compare/${id}-${slug}.json`;
        return { measure: slug, file, comparison, packed: packedGroup(group, names) };
      }),
    }))
    .filter(({ comparisons }) => comparisons.length > 0)
    .sort((a, b) => trialsOf(b) - trialsOf(a));
});

function trialsOf({ comparisons }: { comparisons: readonly OfferedComparison[] }): number {
  return comparisons[0]!.packed.trials.length;
}

/** What the page computes from, a file for each crop and measure. */
export function comparisonFiles(library: Library): PublishedFile[] {
  return comparedCrops(library).flatMap(({ name, comparisons }) =>
    comparisons.map(({ file, comparison, packed }) =>
      textFile(
        file,
        'application/json',
        `What the trials bring to the comparison of ${name}, ${comparison.measure}.`,
        `${JSON.stringify(packed)}\n`,
      ),
    ),
  );
}
