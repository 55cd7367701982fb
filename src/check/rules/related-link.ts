import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { hasOrcidCheckDigit } from '../orcid.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'related-link',
  severity: 'error',
  acceptable: false,
  title: 'Link in another form',
  meaning: 'A link leads to a DOI, an ORCID or a page by http or https, and to nothing else.',
  example: '"doi:10.5555/1234" is no DOI; write 10.5555/1234',
  check,
};
export default rule;

function check({ metadata }: Facts, report: Report): void {
  for (const [index, { kind, value }] of (metadata.draft.related ?? []).entries()) {
    const fault = kind === 'doi' ? doiFault(value) : kind === 'orcid' ? orcidFault(value) : urlFault(value);
    if (fault === null) continue;
    const place = metadata.place(['related', index, 'value']);
    report(rule, { file: 'trial.yaml', place, found: value, message: fault });
  }
  for (const [index, { orcid }] of (metadata.draft.people ?? []).entries()) {
    const fault = orcid === undefined ? null : orcidFault(orcid);
    if (orcid === undefined || fault === null) continue;
    const place = metadata.place(['people', index, 'orcid']);
    report(rule, { file: 'trial.yaml', place, found: orcid, message: fault });
  }
}

function doiFault(value: string): string | null {
  if (/^(https:\/\/doi\.org\/)?10\.\d{4,9}\/\S+$/.test(value)) return null;
  const inner = /10\.\d{4,9}\/\S+/.exec(value)?.[0];
  return inner === undefined
    ? say('{value} is no DOI; a DOI looks like 10.5555/12345678', { value: showText(value) })
    : say('{value} is no DOI; write {doi}', { value: showText(value), doi: inner });
}

function orcidFault(value: string): string | null {
  const digits = /^(?:https:\/\/orcid\.org\/)?(\d{4}-\d{4}-\d{4}-\d{3}[\dX])$/.exec(value)?.[1];
  const shown = { value: showText(value) };
  if (digits === undefined) return say('{value} is no ORCID; an ORCID looks like 0000-0002-1825-0097', shown);
  return hasOrcidCheckDigit(digits)
    ? null
    : say('{value} is no ORCID: its last digit does not fit the others; copy it again', shown);
}

function urlFault(value: string): string | null {
  const address = URL.parse(value);
  if (/^https?:\/\//i.test(value) && !/\s/.test(value) && address !== null) {
    const isPlain = address.username === '' && address.password === '';
    return isPlain ? null : say('{value} holds a user name; leave it out', { value: showText(value) });
  }
  return say('{value} is no address of a page; write one that begins with https:// or http://', {
    value: showText(value),
  });
}
