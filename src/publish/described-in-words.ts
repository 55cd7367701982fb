import type { TrialMetadata } from '../model/trial.ts';

const counted = (count: number, thing: string): string =>
  `${String(count)} ${thing}${count === 1 ? '' : 's'}`;

/** Where a trial stood, in words: its site, region and country, no finer than trial.yaml says. */
export function placeInWords(site: TrialMetadata['site']): string {
  return [site.name, site.region, site.country].filter((part) => part !== undefined).join(', ');
}

/** How a trial was laid out, in a sentence. */
export function designInWords(metadata: TrialMetadata): string {
  const { arrangement, allotted, randomised } = metadata.design;
  const lots = randomised ? 'lots drawn' : 'no lots drawn';
  const containers = counted(metadata.containers.length, 'container');
  const words = `${arrangement}, treatments allotted to each ${allotted}, ${lots}, ${containers}`;
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}

/** A description of 50 to 5000 characters: the summary, or question, crop, season, site and design. */
export function describedInWords(metadata: TrialMetadata): string {
  if (metadata.summary !== undefined) return metadata.summary;
  const { crop, season, site } = metadata;
  const species = crop.species === undefined ? '' : ` (${crop.species})`;
  const grown = `A growing trial of ${crop.name}${species} in ${season.name} ${String(season.year)} at ${placeInWords(site)} (${site.setting}).`;
  return `${metadata.question} ${grown} ${designInWords(metadata)}`;
}
