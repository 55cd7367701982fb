import type { Cultivar, TrialWithFindings } from '../model/library.ts';
import type { Factor, Trial } from '../model/trial.ts';
import { plainSpecies } from './crop-as-here.ts';

/** Which cultivar a trial means, so that the same one is one across trials. */
export interface CultivarIdentity {
  /** The cultivar of a level, or of the whole trial (its crop.cultivar) where no level is given. */
  of: (trial: Trial, level?: string) => string | null;
  /** Its name as a reader sees it. */
  name: (cultivar: string) => string;
}

/** The trial's factor whose levels are cultivars. */
export function cultivarFactor(trial: Trial): Factor | undefined {
  return (trial.metadata.factors ?? []).find(({ kind }) => kind === 'cultivar');
}

/**
 * Tells cultivars apart by their id in the site's list; one that is not in it by its own name, where that
 * is a name or synonym of the list or of another trial, and else by its id, or by its name where two trials
 * use one id for differently named cultivars. The ids of another site mean what its own list says, so that its
 * cultivars are told by their names and synonyms alone. Names are one only within a species.
 */
export function cultivarIdentity(
  trials: readonly Pick<TrialWithFindings, 'trial'>[],
  known: readonly Cultivar[] = [],
): CultivarIdentity {
  const listed = new Map(known.map((cultivar) => [cultivar.id, cultivar]));
  const byName = namesakes();
  for (const { id, name, synonyms = [], species } of known) byName.add([name, ...synonyms], species, id);
  const names = new Map(known.map(({ id, name }) => [id, name]));
  const settled = new Map<string, string>();
  const identityOf = (trial: Trial, id: string, ownName: string | undefined): string => {
    const { species } = trial.metadata.crop;
    if (trial.origin === undefined && listed.has(id)) return id;
    const there = trial.cultivarsThere?.find((cultivar) => cultivar.id === id);
    const own = [there?.name ?? ownName ?? id, ...(there?.synonyms ?? [])];
    const alike = byName.find(own, species);
    if (alike !== undefined) return alike;
    const [name] = own as [string];
    const free = [id, name, `${trial.origin?.folder ?? ''}/${id}`].find((each) => !names.has(each));
    // Without a name of its own or a site of its own, an id that is taken is the same cultivar's.
    const identity =
      trial.origin === undefined ? (ownName !== undefined && names.has(id) ? name : id) : free!;
    names.set(identity, name);
    byName.add(own, species, identity);
    return identity;
  };
  const settle = (trial: Trial, id: string, ownName: string | undefined): string => {
    const key = JSON.stringify([trial.origin?.folder, trial.metadata.crop.species, id, ownName]);
    const before = settled.get(key);
    if (before !== undefined) return before;
    const identity = identityOf(trial, id, ownName);
    settled.set(key, identity);
    return identity;
  };
  const of = (trial: Trial, level?: string): string | null => {
    if (level === undefined) {
      const { cultivar } = trial.metadata.crop;
      return cultivar === undefined ? null : settle(trial, cultivar, undefined);
    }
    return settle(trial, level, cultivarFactor(trial)?.levels.find(({ id }) => id === level)?.name);
  };
  // The site's own first, each in the order of their ids, so that what is settled does not hang on the order given.
  const key = ({ trial }: Pick<TrialWithFindings, 'trial'>) => `${trial.origin ? 1 : 0} ${trial.id}`;
  const inOrder = [...trials].sort((a, b) => (key(a) < key(b) ? -1 : 1));
  for (const own of [true, false]) {
    const ofThese = inOrder.filter(({ trial }) => (trial.origin === undefined) === own);
    for (const { trial } of ofThese) for (const { id } of cultivarFactor(trial)?.levels ?? []) of(trial, id);
    for (const { trial } of ofThese) of(trial);
  }
  return { of, name: (cultivar) => names.get(cultivar) ?? cultivar };
}

/** Cultivars by their names: the first that has a name, where its species is the same or one of the two is not known. */
function namesakes() {
  const all = new Map<string, { species: string | undefined; identity: string }[]>();
  return {
    add(names: readonly string[], species: string | undefined, identity: string): void {
      for (const name of names.map(plain)) all.set(name, [...(all.get(name) ?? []), { species, identity }]);
    },
    find(names: readonly string[], species: string | undefined): string | undefined {
      const isSame = (other: string | undefined) =>
        other === undefined || species === undefined || plainSpecies(other) === plainSpecies(species);
      return names.flatMap((name) => all.get(plain(name)) ?? []).find((each) => isSame(each.species))
        ?.identity;
    },
  };
}

const plain = (name: string): string => name.normalize('NFKC').trim().toLowerCase();
