import { say } from '../../model/say.ts';
import type { HarvestRecord } from '../../model/trial.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { positionInWords, whereOf } from '../grid.ts';
import { recordPlace } from '../places.ts';
import { recordsByPosition } from '../records-by-position.ts';
import { plantsLacking } from './missing-row.ts';

const rule: Rule = {
  rule: 'plant-twice',
  severity: 'error',
  acceptable: false,
  title: 'The same plant twice',
  meaning:
    'A plant has one row at each cut. Twice means that one of the rows belongs to another plant, or was copied.',
  example: 'T1 row 2 column 3 has a row at cut 1 already, in line 7',
  check,
};
export default rule;

function check({ harvest, layout, metadata }: Facts, report: Report): void {
  if (harvest === null || layout === null) return;
  let hint: string | null = null;
  for (const [positionIndex, indexes] of recordsByPosition(harvest).several) {
    if (areApart(indexes, harvest.records)) continue;
    const plants = layout.positions[positionIndex]?.plants ?? 1;
    const lines = new Map<string, number>();
    const wholePot = new Map<number, number>();
    const single = new Map<number, number>();
    for (const index of indexes) {
      const record = harvest.records[index]!;
      const { plant, cut, line } = record;
      const key = `${String(cut)} ${String(plant)}`;
      const before = lines.get(key);
      const other = plant === null ? single.get(cut) : wholePot.get(cut);
      const fault =
        before !== undefined
          ? twice(record, plants, before)
          : other !== undefined
            ? say(
                '{place} has rows both for single plants and for the whole pot at cut {cut} (line {line}); write one or the other',
                { place: positionInWords(record), cut, line: other },
              )
            : null;
      if (before === undefined) lines.set(key, line);
      (plant === null ? wholePot : single).set(cut, line);
      if (fault === null) continue;
      report(rule, {
        file: 'harvest.csv',
        place: recordPlace(harvest, index),
        found: positionInWords(record),
        message: fault + (hint ??= isWithout({ harvest, layout, metadata })),
        where: whereOf(record),
      });
    }
  }
}

/** Up to so many plants without a row are named beside one that has two. */
const mostNamed = 3;

/** What is said of plants that have no row, one of which the row probably means. */
function isWithout({ harvest, layout, metadata }: Pick<Facts, 'harvest' | 'layout' | 'metadata'>): string {
  const { status, dates } = metadata.draft;
  if (harvest === null || layout === null || status !== 'finished' || !harvest.complete) return '';
  const lacking = plantsLacking(harvest, layout.positions, dates?.cuts?.length ?? 1, mostNamed);
  if (lacking.length === 0 || lacking.length > mostNamed) return '';
  return say('; does one of the two belong to a plant without a row: {plants}?', {
    plants: lacking.join(', '),
  });
}

function twice(record: HarvestRecord, plants: number, line: number): string {
  const { plant, cut } = record;
  const position = positionInWords(record);
  const place =
    plants > 1 && plant !== null ? say('{place} plant {plant}', { place: position, plant }) : position;
  return say(
    plants > 1 && plant === null
      ? '{place} has a row at cut {cut} already, in line {line}; number the plants in the column plant'
      : '{place} has a row at cut {cut} already, in line {line}',
    { place, cut, line },
  );
}

/** True where few rows are of as many different cuts: the common case, told without building maps. */
function areApart(indexes: readonly number[], records: readonly { cut: number }[]): boolean {
  if (indexes.length > 4) return false;
  return indexes.every((index, at) => {
    for (let before = 0; before < at; before += 1) {
      if (records[indexes[before]!]!.cut === records[index]!.cut) return false;
    }
    return true;
  });
}
