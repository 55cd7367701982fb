import type { TrialMetadata } from './generated/trial.ts';

type Person = TrialMetadata['people'][number];

/** A person's e-mail where they let it be published, else null. */
export function publicEmail({ email, email_public: isPublic }: Person): string | null {
  return isPublic === true && email !== undefined ? email : null;
}

/** What a trial says of itself as it is published: without the e-mail of anyone who did not make it public. */
export function publishedMetadata(metadata: TrialMetadata): TrialMetadata {
  const [first, ...others] = metadata.people;
  return { ...metadata, people: [publishedPerson(first), ...others.map(publishedPerson)] };
}

function publishedPerson(person: Person): Person {
  if (publicEmail(person) !== null) return person;
  const { name, part, orcid } = person;
  return { name, part, ...(orcid === undefined ? {} : { orcid }) };
}
