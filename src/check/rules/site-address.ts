import { say } from '../../model/say.ts';
import type { Place } from '../../read/place.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'site-address',
  severity: 'error',
  acceptable: false,
  title: 'Address that is not of a folder',
  meaning:
    'Every link, citation and identifier of the site is made of its address with a page behind it. That works only where the address is that of the folder in which the site will stand.',
  example: '"https://example.org/trials/?a=1" has a ? or # in it; write the address of the folder alone',
};
export default rule;

/** Reports an address of the site to which no page can be added. */
export function reportSiteAddress(report: Report, place: Place, url: string): void {
  const address = showText(url);
  const message = /[?#]/.test(url)
    ? say('{address} has a ? or # in it; write the address of the folder alone', { address })
    : /^https?:\/\/https?:?\//i.test(url)
      ? say('{address} has https:// in it twice; take one away', { address })
      : /\/[^/]+\.html?$/i.test(url)
        ? say('{address} is the address of a page; write that of the folder, without the name of the page', {
            address,
          })
        : null;
  if (message !== null) report(rule, { file: 'site.yaml', place, found: url, message });
}
