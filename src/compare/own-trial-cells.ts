import { say } from '../model/say.ts';
import type { Cultivar, TrialWithFindings } from '../model/library.ts';
import type { Trial } from '../model/trial.ts';
import { plainSpecies } from './crop-as-here.ts';
import { cultivarFactor, cultivarIdentity } from './cultivar-identity.ts';
import { cellsOfTrial, speciesOf, type TrialCells } from './season-cells.ts';
import type { SeasonGroup } from './season-groups.ts';

/** Stands wherever a reader's own trial does. */
export const ownTrialWords = (): string => say('your own trial, not published');

/** The id of a reader's own trial among published ones, one of which may have the same. */
export const ownTrialId = (id: string): string => `own/${id}`;

/** Whether a trial is of a crop: of its species however that is written, or of its name where it gives none. */
export function isOfCrop(trial: Trial, crop: { species: string; name: string }): boolean {
  const plain = plainSpecies(speciesOf(trial));
  return plain === plainSpecies(crop.species) || plain === plainSpecies(crop.name);
}

/**
 * What a reader's own trial brings to a comparison of published ones, marked as its own; null where it has no
 * mean in that measure and unit. Its cultivars are those of the site that have the same name or synonym, or the
 * same id where the trial gives no name.
 *
 * @param known the cultivars of the comparison
 * @returns the trial's part, and the names of its cultivars by what they are called in it
 */
export function ownTrialCells(
  { trial, findings }: TrialWithFindings,
  group: Pick<SeasonGroup, 'measure' | 'unit'>,
  known: readonly Cultivar[],
): { part: TrialCells; names: ReadonlyMap<string, string> } | null {
  if (findings === null) return null;
  if (group.measure !== 'kg_per_m2' && findings.variable.unit !== group.unit) return null;
  const guest = asGuest(trial, known);
  const identity = cultivarIdentity([{ trial: guest }], known);
  const cells = cellsOfTrial({ trial: guest, findings }, group.measure, identity);
  if (cells === null) return null;
  const conditions = { ...cells.trial, season: `${cells.trial.season}, ${ownTrialWords()}` };
  // It was dressed as a guest for its names alone.
  delete conditions.origin;
  const part = { ...cells, trial: conditions };
  return { part, names: new Map(part.cells.map(({ cultivar }) => [cultivar, identity.name(cultivar)])) };
}

const noOrigin = { folder: 'own', title: '', address: '', page: '', data: '', identifier: '', gathered: '' };

/** As a trial of another site, so that names decide which cultivar is meant: an id may mean another one here. */
function asGuest(trial: Trial, known: readonly Cultivar[]): Trial {
  const { cultivarsThere = [] } = trial;
  const named = new Set([
    ...cultivarsThere.map(({ id }) => id),
    ...(cultivarFactor(trial)?.levels ?? []).flatMap(({ id, name }) => (name === undefined ? [] : [id])),
  ]);
  return {
    ...trial,
    id: ownTrialId(trial.id),
    origin: { ...noOrigin, id: trial.id },
    cultivarsThere: [...cultivarsThere, ...known.filter(({ id }) => !named.has(id))],
  };
}
