/** `gather`: fetches the trials of the other sites that site.yaml lists under `gather`, to compare with one's own. */
import { join } from 'node:path';
import { checkSite } from '../check/check-content.ts';
import { compareProblems } from '../check/print-problem.ts';
import { escapeUnseen } from '../check/show-value.ts';
import { siteFolder } from '../check/site-folder.ts';
import { siteLanguage } from '../check/site-language.ts';
import { writeIn } from '../model/language.ts';
import { hasError, type Problem } from '../model/problem.ts';
import { say } from '../model/say.ts';
import { readContentFiles } from '../read/folder.ts';
import type { Place } from '../read/place.ts';
import { decodeUtf8 } from '../read/utf8.ts';
import { readYaml } from '../read/yaml.ts';
import { report } from './check.ts';
import { folderArgument } from './folder-argument.ts';
import { contentFolder } from './folders.ts';
import { gatherSite, type SiteOutcome } from './gathering/gather-site.ts';
import { type Limits, usualLimits } from './gathering/limits.ts';
import { today } from './load-content.ts';
import { withLock } from './lock.mjs';
import { progressOf } from './progress.ts';

export async function run(args: string[]): Promise<number> {
  const content = folderArgument(args, contentFolder());
  const { problems, outcomes } = await gather(content);
  process.stdout.write(report(problems));
  for (const { title, taken, asTheyWere } of outcomes) {
    const counts = { title, taken, same: asTheyWere };
    process.stderr.write(`${say('{title}: {taken} trials taken, {same} as they were', counts)}\n`);
  }
  if (outcomes.length === 0 && !hasError(problems))
    process.stderr.write(`${say('site.yaml lists no sites under gather.')}\n`);
  return hasError(problems) ? 1 : 0;
}

/** What came of a run. Faults of other sites are warnings: the last good copies stay, and the site can be built. */
export interface Gathered {
  problems: Problem[];
  outcomes: (SiteOutcome & { title: string })[];
}

/** Gathers from every site that a content folder lists, one after another. */
export async function gather(
  content: string,
  limits: Limits = usualLimits,
  now: () => Date = () => new Date(),
): Promise<Gathered> {
  const { site: bytes } = await readContentFiles(content);
  writeIn(siteLanguage(bytes));
  const { value: site, problems } = checkSite(bytes);
  const sites = site?.gather ?? [];
  const outcomes: Gathered['outcomes'] = [];
  if (sites.length === 0) return { problems, outcomes };
  const yaml = readYaml(decodeUtf8(bytes!).text!);
  const gathered = join(content, 'gathered');
  const waits = () =>
    process.stderr.write(`${say('Another run gathers into this folder; waiting for it.')}\n`);
  await withLock(join(gathered, '.lock'), waits, async () => {
    for (const [index, entry] of sites.entries()) {
      const place = yaml.place(['gather', index, 'address']);
      const outcome = await gatherSite(entry, {
        gathered,
        today: today(),
        now,
        limits,
        progress: progressOf(() => say('Gathering from {title}', { title: escapeUnseen(entry.title) })),
        warn: (rule, id, message) => problems.push(warning(rule, entry.address, id, place, message)),
      });
      outcomes.push({ title: entry.title, ...outcome });
    }
  });
  problems.sort(compareProblems);
  return { problems, outcomes };
}

function warning(rule: string, address: string, id: string | null, at: Place, message: string): Problem {
  return {
    rule,
    severity: 'warning',
    file: id === null ? 'site.yaml' : `gathered/${siteFolder(address)}/${id}`,
    line: id === null ? at.line : null,
    column: id === null ? at.column : null,
    found: null,
    expected: null,
    message,
    hint: null,
    where: null,
  };
}
