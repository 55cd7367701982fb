import { say } from '../../model/say.ts';
import type { Path, Yaml } from '../../read/yaml.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';
import { siteFolder } from '../site-folder.ts';

const rule: Rule = {
  rule: 'gather-address',
  severity: 'error',
  acceptable: false,
  title: 'Site to gather from that is named twice, or is this one',
  meaning:
    'Trials gathered twice would count twice where cultivars are compared, and so would a site’s own trials gathered from itself.',
  example: '"https://example.org/trials" is the address of this site itself; take it out of gather',
};
export default rule;

/** Reports addresses under `gather` that are this site's own, stand there twice, or are of no home page. */
export function reportGatherAddresses(
  site: { url?: unknown; gather?: unknown },
  yaml: Pick<Yaml, 'place'>,
  report: Report,
): void {
  const own = folderOf(site.url);
  const first = new Map<string, string>();
  for (const [index, entry] of (Array.isArray(site.gather) ? site.gather : []).entries()) {
    const address = (entry as { address?: unknown } | null)?.address;
    const folder = folderOf(address);
    if (typeof address !== 'string' || folder === null) continue;
    const before = first.get(folder);
    const path: Path = ['gather', index, 'address'];
    const message = faultOf(address, folder === own, before);
    if (message !== null)
      report(rule, { file: 'site.yaml', place: yaml.place(path), found: address, message });
    first.set(folder, address);
  }
}

function faultOf(given: string, isOwn: boolean, before: string | undefined): string | null {
  const address = showText(given);
  if (/[?#]/.test(given))
    return say('{address} has a ? or # in it; write the address of the site’s home page', { address });
  if (isOwn) return say('{address} is the address of this site itself; take it out of gather', { address });
  if (before === undefined) return null;
  return say('{address} is kept in the same folder as {before} above; is it the same site? Take one out', {
    address,
    before: showText(before),
  });
}

function folderOf(address: unknown): string | null {
  return typeof address === 'string' && URL.canParse(address) ? siteFolder(address) : null;
}
