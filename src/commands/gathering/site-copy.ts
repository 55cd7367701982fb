/** What is remembered of another site between two runs: its index, and by what to ask whether that changed. */
import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { asObject, asText, asWebAddress, jsonValue } from '../../check/json-value.ts';
import { sha256 } from '../../publish/sha256.ts';
import { replaceFile } from '../freeze.ts';
import type { Validators } from './fetch-bytes.ts';

export interface SiteCopy {
  index: Uint8Array;
  /** Where the index was found, after any redirect. */
  address: string;
  validators: Validators;
}

/** The index of the last run; null where there is none, it is not as it was, or belongs to another address. */
export async function readSiteCopy(folder: string, asked: string): Promise<SiteCopy | null> {
  const [bytes, index] = await Promise.all(
    ['site.json', 'index.json'].map((name) => readFile(join(folder, name)).catch(() => null)),
  );
  const record = bytes ? asObject(jsonValue(bytes)) : null;
  const address = asWebAddress(record?.['address']);
  if (!index || record?.['asked'] !== asked || address === null || record['sha256'] !== sha256(index))
    return null;
  const validators = { etag: asText(record['etag']), last_modified: asText(record['last_modified']) };
  return { index, address, validators };
}

/** Writes the index, and last the record that says whose it is. */
export async function writeSiteCopy(folder: string, asked: string, copy: SiteCopy): Promise<void> {
  await mkdir(folder, { recursive: true });
  const { index, address, validators } = copy;
  const record = { form: 1, asked, address, sha256: sha256(index), ...validators };
  await replaceFile(join(folder, 'index.json'), index);
  await replaceFile(
    join(folder, 'site.json'),
    new TextEncoder().encode(`${JSON.stringify(record, null, 2)}\n`),
  );
}
