import { say, sayCount } from '../model/say.ts';
import type { TrialMetadata } from '../model/trial.ts';

/** Where a trial stood, in words: its site, region and country, no finer than trial.yaml says. */
export function placeInWords(site: TrialMetadata['site']): string {
  return [site.name, site.region, site.country].filter((part) => part !== undefined).join(', ');
}

/** How a trial was laid out, in a sentence. */
export function designInWords(metadata: TrialMetadata): string {
  const { arrangement, allotted, randomised } = metadata.design;
  const words = say('{arrangement}, treatments allotted to each {unit}, {lots}, {containers}', {
    arrangement: say(arrangement),
    unit: say(allotted),
    lots: randomised ? say('lots drawn') : say('no lots drawn'),
    containers: sayCount(metadata.containers.length, '{count} container', '{count} containers'),
  });
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}

/** A description of 50 to 5000 characters: the summary, or question, crop, season, site and design. */
export function describedInWords(metadata: TrialMetadata): string {
  if (metadata.summary !== undefined) return metadata.summary;
  const { crop, season, site } = metadata;
  const species = crop.species === undefined ? '' : ` (${crop.species})`;
  const grown = say('A growing trial of {crop} in {season} at {place} ({setting}).', {
    crop: crop.name + species,
    season: `${say(season.name)} ${String(season.year)}`,
    place: placeInWords(site),
    setting: say(site.setting),
  });
  return `${metadata.question} ${grown} ${designInWords(metadata)}`;
}
