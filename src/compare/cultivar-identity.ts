import type { Cultivar, TrialWithFindings } from '../model/library.ts';
import type { Factor, Trial } from '../model/trial.ts';

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
 * use one id for differently named cultivars.
 */
export function cultivarIdentity(
  trials: readonly Pick<TrialWithFindings, 'trial'>[],
  known: readonly Cultivar[] = [],
): CultivarIdentity {
  const listed = new Map(known.map((cultivar) => [cultivar.id, cultivar]));
  const byName = new Map<string, string>();
  for (const { id, name, synonyms = [] } of known) {
    for (const each of [name, ...synonyms]) if (!byName.has(plain(each))) byName.set(plain(each), id);
  }
  const names = new Map(known.map(({ id, name }) => [id, name]));
  const identities = new Map<string, string>();
  const settle = (id: string, ownName: string | undefined): string => {
    const key = JSON.stringify([id, ownName]);
    const settled = identities.get(key);
    if (settled !== undefined) return settled;
    const identity = newIdentity(id, ownName);
    identities.set(key, identity);
    return identity;
  };
  const newIdentity = (id: string, ownName: string | undefined): string => {
    if (listed.has(id)) return id;
    const alike = byName.get(plain(ownName ?? id));
    if (alike !== undefined) return alike;
    const identity = ownName !== undefined && names.has(id) ? ownName : id;
    names.set(identity, ownName ?? id);
    byName.set(plain(ownName ?? id), identity);
    return identity;
  };
  const of = (trial: Trial, level?: string): string | null => {
    if (level === undefined) {
      const { cultivar } = trial.metadata.crop;
      return cultivar === undefined ? null : settle(cultivar, undefined);
    }
    return settle(level, cultivarFactor(trial)?.levels.find(({ id }) => id === level)?.name);
  };
  // In the order of their ids, so that what is settled first does not hang on the order of the trials.
  const inOrder = [...trials].sort((a, b) => (a.trial.id < b.trial.id ? -1 : 1));
  for (const { trial } of inOrder) for (const { id } of cultivarFactor(trial)?.levels ?? []) of(trial, id);
  for (const { trial } of inOrder) of(trial);
  return { of, name: (cultivar) => names.get(cultivar) ?? cultivar };
}

const plain = (name: string): string => name.normalize('NFKC').trim().toLowerCase();
