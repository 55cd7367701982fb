/** What the tests hold against the standards: every dataset, read back as a reader finds it. */
import { fileURLToPath } from 'node:url';
import { computeFindings } from '../../src/compute/findings.ts';
import { libraryOf } from '../../src/commands/library-of.ts';
import { loadContent } from '../../src/commands/load-content.ts';
import type { Library, TrialWithFindings } from '../../src/model/library.ts';
import { publishedFiles, siteFiles } from '../../src/publish/files.ts';
import { mint, npk, oats } from '../compute/published.ts';
import { bare, bareLibrary, full, library, scored, text } from './example.ts';

/** The demo, as the commands read it. */
export const demo: Library = libraryOf(
  await loadContent(fileURLToPath(new URL('../../content', import.meta.url))),
);

export const datasets: readonly (readonly [string, TrialWithFindings, Library])[] = [
  ['a trial that uses every optional field', full, library],
  ['a trial that uses none', bare, bareLibrary],
  ['a trial of one cultivar with every kind of score', scored, bareLibrary],
  ...demo.trials
    .filter((item) => item.findings !== null)
    .map((item) => [`the demo's ${item.trial.id}`, item, demo] as const),
  ...Object.entries({ mint: mint(), npk: npk(), oats: oats('container') }).map(
    ([name, trial]) =>
      [`the published ${name}`, { trial, findings: computeFindings(trial) }, bareLibrary] as const,
  ),
];

/** A published file of a trial as text; throws where there is none. */
export function published(name: string, item: TrialWithFindings, of: Library): string {
  const file = publishedFiles(item, of).find((each) => each.name === name);
  if (file === undefined) throw new Error(`${name} is not published`);
  return text(file);
}

export function publishedJson(name: string, item: TrialWithFindings, of: Library): unknown {
  return JSON.parse(published(name, item, of));
}

/** A file across trials as text; throws where there is none. */
export function acrossTrials(name: string, of: Library): string {
  const file = siteFiles(of).find((each) => each.name === name);
  if (file === undefined) throw new Error(`${name} is not published`);
  return text(file);
}
