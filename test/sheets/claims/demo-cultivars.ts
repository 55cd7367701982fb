import { readFile } from 'node:fs/promises';
import { checkCultivars } from '../../../src/check/check-content.ts';
import type { Cultivar } from '../../../src/model/library.ts';

/** The cultivars of the demo. */
export async function cultivarsOfDemo(): Promise<readonly Cultivar[]> {
  const file = new URL('../../../content/cultivars.yaml', import.meta.url);
  return checkCultivars(await readFile(file)).value ?? [];
}
