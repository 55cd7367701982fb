import { citationOf } from './citation-sentence.ts';
import type { CreditedPerson } from './credited-people.ts';
import type { Dataset } from './dataset.ts';
import { yamlText, type YamlValue } from './yaml-text.ts';

function person({ name, orcid, email }: CreditedPerson): YamlValue {
  return {
    'family-names': name.family,
    'given-names': name.given ?? undefined,
    orcid: orcid ?? undefined,
    email: email ?? undefined,
  };
}

/**
 * CITATION.cff, Citation File Format 1.2.0. The format has a list of licences of its own, older than the
 * whole of SPDX's: those whose terms are known here are on it, others are named by their address.
 */
export function citationCff(set: Dataset): string {
  const isListed = set.licence.allows !== null;
  return yamlText({
    'cff-version': '1.2.0',
    type: 'dataset',
    message: `If you use these data, please cite them: ${citationOf(set)}`,
    title: set.title,
    abstract: set.description,
    authors: set.creators.map(person),
    version: set.version,
    'date-released': set.released,
    license: isListed ? set.licence.id : undefined,
    'license-url': isListed ? undefined : set.licence.address,
    doi: set.doi ?? undefined,
    url: set.dataPage,
    keywords: set.keywords,
  });
}
