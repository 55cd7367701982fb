import type { TrialMetadata } from '../model/trial.ts';

type Related = NonNullable<TrialMetadata['related']>[number];

/** A work that belongs to a dataset. */
export interface RelatedWork {
  kind: 'doi' | 'url';
  /** A bare DOI, or an http(s) address. */
  value: string;
  address: string;
  note: string | null;
}

const bareDoi = (value: string): string =>
  value.trim().replace(/^(?:https?:\/\/(?:dx\.)?doi\.org\/|doi:\s*)/i, '');

/** The dataset's own DOI, bare; null where trial.yaml has none. It is never invented. */
export function ownDoi(related: readonly Related[]): string | null {
  const own = related.find((work) => work.kind === 'doi' && work.of === 'this');
  return own === undefined ? null : bareDoi(own.value);
}

/** The other works: DOIs and web addresses. */
export function relatedWorks(related: readonly Related[]): RelatedWork[] {
  return related.flatMap((work): RelatedWork[] => {
    const note = work.note ?? null;
    if (work.kind === 'url' && /^https?:\/\//i.test(work.value)) {
      return [{ kind: 'url', value: work.value, address: work.value, note }];
    }
    if (work.kind !== 'doi' || work.of === 'this') return [];
    const value = bareDoi(work.value);
    return [{ kind: 'doi', value, address: `https://doi.org/${value}`, note }];
  });
}
