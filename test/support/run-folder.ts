/** Vitest's global set-up: one temporary folder for a whole run, where built sites are kept and shared. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  export interface ProvidedContext {
    runFolder: string;
  }
}

export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const folder = await mkdtemp(join(tmpdir(), 'tankside-run-'));
  project.provide('runFolder', folder);
  return () => rm(folder, { recursive: true, force: true });
}
