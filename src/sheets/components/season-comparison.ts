import { showText } from '../../check/show-value.ts';
import { adjustedMeansTable } from '../../compare/season-tables.ts';
import { restsOnTrials } from '../../compare/words/rests-on-trials.ts';
import { seasonSentence } from '../../compare/words/season-sentence.ts';
import { drawCultivarMeans } from '../../draw/cultivar-means.ts';
import { say } from '../../model/say.ts';
import { type Crop, cropsOf } from '../../publish/crop-comparisons.ts';
import type { Asked, SheetComponent } from '../component.ts';
import type { Piece } from '../piece.ts';
import { refuseMissing, refuseName, refuseNoValue } from '../refuse.ts';

const measures = ['per_plant_set', 'per_pot', 'kg_per_m2'];

export const seasonComparison: SheetComponent = {
  name: 'SeasonComparison',
  stands: 'on its own',
  holds: 'nothing',
  meaning:
    'The cultivars of a crop compared over all the trials of this site: the answer, the figure, and the table of adjusted means.',
  attributes: [
    {
      name: 'crop',
      meaning:
        'The crop, by the name that its page has in its address. Left out where the trials of the sheet are all of one crop.',
    },
    { name: 'measure', choices: measures, meaning: 'What is compared; left out for what most trials give.' },
    {
      name: 'show',
      choices: ['answer', 'figure', 'table'],
      meaning: 'One of the three by itself; all of them where it is left out.',
    },
  ],
  example: () => '<SeasonComparison show="answer" />',
  resolve(asked) {
    // One folder by itself cannot tell what the other seasons gave.
    if (asked.alone) return null;
    const crop = askedCrop(asked);
    if (crop === null) return null;
    const wanted = asked.attribute('measure');
    const found = crop.comparisons.find(({ entry }) => wanted === null || entry.measure === wanted);
    if (found === undefined)
      return refuseNoValue(
        asked,
        wanted === null ? 'crop' : 'measure',
        say('no trial of this crop gives cultivars to compare by it'),
      );
    const { entry, name } = found;
    const id = `seasons-${crop.id}-${entry.measure.replaceAll('_', '-')}`;
    const rests = restsOnTrials(entry, name).map((sentence) => [sentence]);
    const pieces: Readonly<Record<string, Piece>> = {
      answer: { kind: 'sentences', sentences: [seasonSentence(entry, name), ...rests], finding: true },
      figure: { kind: 'figures', figures: [drawCultivarMeans(entry, name, { id })] },
      table: { kind: 'tables', tables: [adjustedMeansTable(entry, name)], page: `crops/${crop.id}/` },
    };
    const only = pieces[asked.attribute('show') ?? ''];
    return only === undefined ? Object.values(pieces) : [only];
  },
};

function askedCrop(asked: Asked): Crop | null {
  const crops = cropsOf(asked.library);
  const given = asked.attribute('crop');
  if (given !== null) {
    const crop = crops.find(({ id }) => id === given);
    return (
      crop ??
      refuseName(
        asked,
        'crop',
        say('there is no crop {name}', { name: showText(given) }),
        given,
        crops.map(({ id }) => id),
      )
    );
  }
  const spoken = crops.filter(({ trials }) => trials.some(({ trial }) => asked.trials.includes(trial.id)));
  if (spoken.length === 1) return spoken[0]!;
  // Trials that are not there are reported at the top of the sheet.
  if (spoken.length === 0) return null;
  const known = spoken.map(({ id }) => id).join(', ');
  const values = { component: 'SeasonComparison', attribute: 'crop', choices: known };
  return refuseMissing(
    asked,
    'crop',
    say('{component} needs the attribute {attribute}, one of {choices}', values),
  );
}
