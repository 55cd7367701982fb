import { publicEmail } from '../model/published-metadata.ts';
import type { TrialMetadata } from '../model/trial.ts';
import { personName, type PersonName } from './person-name.ts';

type Person = TrialMetadata['people'][number];

/** A person once, with every part that they had. */
export interface CreditedPerson {
  name: PersonName;
  parts: readonly Person['part'][];
  /** The ORCID as an address, null where none is given. */
  orcid: string | null;
  /** Null where none is given, or it is not public. */
  email: string | null;
}

const orcidAddress = (orcid: string): string => `https://orcid.org/${orcid.slice(-19)}`;

function once(people: readonly Person[]): CreditedPerson[] {
  const found = new Map<string, CreditedPerson & { parts: Person['part'][] }>();
  for (const person of people) {
    const name = personName(person.name);
    const known = found.get(name.full) ?? { name, parts: [], orcid: null, email: null };
    if (!known.parts.includes(person.part)) known.parts.push(person.part);
    if (person.orcid !== undefined) known.orcid = orcidAddress(person.orcid);
    known.email = publicEmail(person) ?? known.email;
    found.set(name.full, known);
  }
  return [...found.values()];
}

/**
 * Who a dataset is cited by: those who grew or wrote, in trial.yaml's order, or everybody where nobody did.
 * The others contributed.
 */
export function creditedPeople(people: readonly Person[]): {
  creators: CreditedPerson[];
  contributors: CreditedPerson[];
} {
  const all = once(people);
  const created = (person: CreditedPerson): boolean =>
    person.parts.includes('author') || person.parts.includes('grower');
  if (!all.some(created)) return { creators: all, contributors: [] };
  return { creators: all.filter(created), contributors: all.filter((person) => !created(person)) };
}
