import { isOfCrop, ownTrialCells } from '../../compare/own-trial-cells.ts';
import type { TrialWithFindings } from '../../model/library.ts';
import { say } from '../../model/say.ts';
import type { ComparisonData } from './comparison-data.ts';
import type { OwnTrialOutcome, OwnTrialTaker } from './own-trial.ts';
import type { PageCrop } from './page-crops.ts';

/**
 * Takes trials of the reader's own into the comparisons of their crop, measure by measure.
 *
 * @param turnTo shows a comparison that has changed
 */
export function ownTrialsOf(
  crops: readonly PageCrop[],
  data: ComparisonData,
  turnTo: (crop: string, measure: string) => Promise<void>,
): OwnTrialTaker {
  /** Where each own trial stands. */
  const standing = new Map<string, readonly { crop: string; measure: string }[]>();

  async function add(own: TrialWithFindings): Promise<OwnTrialOutcome> {
    const { id, metadata } = own.trial;
    takeAway(id);
    const title = `“${metadata.title}”`;
    if (own.findings === null) {
      return {
        takesPart: false,
        sentence: say('{title} is not finished, so there is nothing to compare yet.', { title }),
      };
    }
    const crop = crops.find((each) => isOfCrop(own.trial, each));
    if (!crop) {
      const known = crops.map(({ name }) => name.toLowerCase()).join(', ');
      return {
        takesPart: false,
        sentence: say('{title} is of {crop}, which no trial here grew. The crops here: {known}.', {
          title,
          crop: metadata.crop.name,
          known,
        }),
      };
    }
    const places: { crop: string; measure: string }[] = [];
    for (const { measure } of crop.measures) {
      const { group, known } = await data.load(crop.id, measure);
      const cells = ownTrialCells(own, group, known);
      if (cells === null) continue;
      data.setOwn(crop.id, measure, id, { ...cells, title: metadata.title });
      places.push({ crop: crop.id, measure });
    }
    const [first] = places;
    if (!first) {
      return {
        takesPart: false,
        sentence: say(
          '{title} names no cultivars, or was weighed in another unit, so it cannot be set beside the others.',
          { title },
        ),
      };
    }
    standing.set(id, places);
    await turnTo(first.crop, first.measure);
    const sentence = say('{title} stands among the trials now, marked as your own trial, not published.', {
      title,
    });
    return { takesPart: true, sentence };
  }

  function takeAway(id: string): readonly { crop: string; measure: string }[] {
    const places = standing.get(id) ?? [];
    for (const { crop, measure } of places) data.setOwn(crop, measure, id, null);
    standing.delete(id);
    return places;
  }

  return {
    add,
    remove: (id) => {
      const [first] = takeAway(id);
      if (first) void turnTo(first.crop, first.measure);
    },
  };
}
