import type { Cultivar, TrialWithFindings } from '../model/library.ts';
import { addressPart } from '../compute/format/address-part.ts';
import { cultivarFactor, cultivarIdentity } from './cultivar-identity.ts';
import { speciesOf } from './season-cells.ts';

/** A cultivar with the trials that grew it. */
export interface TriedCultivar {
  /** As comparisons name it. */
  cultivar: string;
  /** For its page's address. */
  id: string;
  name: string;
  /** The crop's, as speciesOf has it; null for one that no trial grew and the list says no species of. */
  species: string | null;
  synonyms: readonly string[];
  note: string;
  /** In the order given. */
  trials: TrialWithFindings[];
}

/** Every cultivar of the site's list and of its trials, in the order of their names. */
export function triedCultivars(
  trials: readonly TrialWithFindings[],
  known: readonly Cultivar[],
): TriedCultivar[] {
  const identity = cultivarIdentity(trials, known);
  const grown = new Map<string, TrialWithFindings[]>(known.map(({ id }) => [id, []]));
  for (const item of trials) {
    for (const cultivar of cultivarsOf(item, identity.of)) {
      const list = grown.get(cultivar);
      if (list) list.push(item);
      else grown.set(cultivar, [item]);
    }
  }
  const taken = new Set(known.map(({ id }) => id));
  const listed = new Map(known.map((each) => [each.id, each]));
  return [...grown]
    .map(([cultivar, items]): TriedCultivar => {
      const { species, synonyms = [], note = '' } = listed.get(cultivar) ?? {};
      const [first] = items;
      return {
        cultivar,
        id: listed.has(cultivar) ? cultivar : freeAddress(identity.name(cultivar), taken),
        name: identity.name(cultivar),
        species: first ? speciesOf(first.trial) : (species ?? null),
        synonyms,
        note,
        trials: items,
      };
    })
    .sort((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true }) || (a.id < b.id ? -1 : 1));
}

/** The cultivars that a trial grew, each once. */
function cultivarsOf({ trial }: TrialWithFindings, of: ReturnType<typeof cultivarIdentity>['of']): string[] {
  const factor = cultivarFactor(trial);
  const all = factor ? factor.levels.map(({ id }) => of(trial, id)) : [of(trial)];
  return [...new Set(all.filter((cultivar) => cultivar !== null))];
}

function freeAddress(name: string, taken: Set<string>): string {
  const own = addressPart(name) || 'cultivar';
  let address = own;
  for (let count = 2; taken.has(address); count += 1) address = `${own}-${String(count)}`;
  taken.add(address);
  return address;
}
