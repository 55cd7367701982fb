import type { Library, TrialWithFindings } from '../model/library.ts';
import { type FileFacts, fileFacts } from './file-facts.ts';
import { publishedFiles } from './trial-files.ts';

type Memory = WeakMap<TrialWithFindings, readonly FileFacts[]>;
/** Shared by the command and the pages' bundle, which each hold their own copy of this module. */
const key = Symbol.for('tankside.dataset-facts');
const shelf = globalThis as unknown as Record<symbol, Memory | undefined>;
const told = (shelf[key] ??= new WeakMap());

/** Tells what the files of a trial's dataset are, where another thread has made and written them. */
export function provideDatasetFacts(item: TrialWithFindings, facts: readonly FileFacts[]): void {
  told.set(item, facts);
}

/** Whether the files of a trial's dataset are written already. */
export const isWritten = (item: TrialWithFindings): boolean => told.has(item);

/** Size and checksum of each file of a trial's dataset, for `/data/<id>/`; none where it is not finished. */
export function datasetFacts(item: TrialWithFindings, library: Library): readonly FileFacts[] {
  return told.get(item) ?? publishedFiles(item, library).map(fileFacts);
}
