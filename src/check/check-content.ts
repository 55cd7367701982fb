import type { Cultivar, SiteSettings } from '../model/library.ts';
import { hasError, type Problem } from '../model/problem.ts';
import { say } from '../model/say.ts';
import { collector } from './collect.ts';
import { explainRefusals } from './explain-refusals.ts';
import { compareProblems } from './print-problem.ts';
import { isMapping } from './read-metadata.ts';
import type { Report } from './rule.ts';
import { reportBlankTexts } from './rules/blank-text.ts';
import { reportCultivarsAlike } from './rules/cultivar-alike.ts';
import { reportDuplicateId } from './rules/duplicate-id.ts';
import { reportGatherAddresses } from './rules/gather-address.ts';
import { reportMissingFile } from './rules/missing-file.ts';
import { reportNotAMapping } from './rules/not-a-mapping.ts';
import { reportSiteAddress } from './rules/site-address.ts';
import { reportUnknownLicence } from './rules/unknown-licence.ts';
import { yamlOf } from './yaml-file.ts';

/** A checked file: its value, null where any error stands or the file is absent. */
export interface Checked<Value> {
  value: Value | null;
  problems: Problem[];
}

function finish<Value>(value: unknown, problems: Problem[]): Checked<Value> {
  problems.sort(compareProblems);
  return { value: hasError(problems) ? null : (value as Value), problems };
}

/** Checks site.yaml; null bytes mean that there is none, which is an error. */
export function checkSite(bytes: Uint8Array | null): Checked<SiteSettings> {
  const { report, problems } = collector('');
  return finish(bytes === null ? noSite(report) : siteOf(bytes, report), problems);
}

function noSite(report: Report): null {
  reportMissingFile(
    report,
    'site.yaml',
    say('the content folder needs one: title, url, publisher and licence of the site'),
  );
  return null;
}

function siteOf(bytes: Uint8Array, report: Report): unknown {
  const file = 'site.yaml';
  const yaml = yamlOf(file, bytes, report);
  if (yaml === null) return null;
  if (!isMapping(yaml.value)) {
    const wanted = say('keys and values, such as title: Trials at Fernhollow');
    reportNotAMapping(report, file, yaml.value, wanted);
    return null;
  }
  explainRefusals('site', yaml.value, file, yaml, report);
  reportGatherAddresses(yaml.value, yaml, report);
  const url = yaml.value['url'];
  if (typeof url === 'string') reportSiteAddress(report, yaml.place(['url']), url);
  const licence = yaml.value['licence'];
  if (typeof licence === 'string') reportUnknownLicence(report, file, yaml.place(['licence']), licence);
  return yaml.value;
}

/** Checks cultivars.yaml; null bytes mean that there is none, which is an empty list. */
export function checkCultivars(bytes: Uint8Array | null): Checked<readonly Cultivar[]> {
  const { report, problems } = collector('');
  return finish(bytes === null ? [] : cultivarsOf(bytes, report), problems);
}

function cultivarsOf(bytes: Uint8Array, report: Report): unknown {
  const file = 'cultivars.yaml';
  const yaml = yamlOf(file, bytes, report);
  if (yaml === null) return null;
  const { value } = yaml;
  if (!Array.isArray(value)) {
    const wanted = say('a list, such as - {id: slate-egret, name: Slate Egret}');
    reportNotAMapping(report, file, value, wanted);
    return null;
  }
  explainRefusals('cultivars', value, file, yaml, report);
  reportBlankTexts(report, file, value, yaml.place);
  const seen = new Set<string>();
  for (const [index, item] of value.entries()) {
    const id: unknown = isMapping(item) ? item['id'] : undefined;
    if (typeof id !== 'string') continue;
    if (seen.has(id)) reportDuplicateId(report, file, yaml.place([index, 'id']), 'cultivar', id);
    seen.add(id);
  }
  reportCultivarsAlike(value, yaml, report);
  return value;
}
