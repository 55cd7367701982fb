import { gatheredFiles, type GatheredFile, type GatheredRecord } from '../model/gathered.ts';
import { asObject, asText, asWebAddress, jsonValue } from './json-value.ts';

/** The record beside a gathered trial's files, or null where it is none or not whole. */
export function gatheredRecord(bytes: Uint8Array | undefined): GatheredRecord | null {
  const record = bytes === undefined ? null : asObject(jsonValue(bytes));
  const site = asObject(record?.['site']);
  const files = Array.isArray(record?.['files']) ? record['files'].map(fileOf) : [];
  const parts = {
    title: asText(site?.['title']),
    address: asWebAddress(site?.['address']),
    id: asText(record?.['id']),
    version: asText(record?.['version']),
    page: asWebAddress(record?.['page']),
    data: asWebAddress(record?.['data']),
    identifier: asWebAddress(record?.['identifier']),
    gathered: asText(record?.['gathered']),
  };
  const { title, address, id, version, page, data, identifier, gathered } = parts;
  if (record?.['form'] !== 1 || title === null || address === null || id === null || version === null)
    return null;
  if (page === null || data === null || identifier === null || gathered === null) return null;
  if (!/^\d{4}-\d{2}-\d{2}T[\d:.]+Z$/.test(gathered)) return null;
  const whole = files.filter((file) => file !== null);
  if (files.length !== whole.length || !whole.some(({ name }) => name === 'trial.json')) return null;
  return { form: 1, site: { title, address }, id, version, page, data, identifier, gathered, files: whole };
}

function fileOf(value: unknown): GatheredFile | null {
  const file = asObject(value);
  const name = gatheredFiles.find((each) => each === file?.['name']);
  const address = asWebAddress(file?.['address']);
  const [bytes, sha256] = [file?.['bytes'], asText(file?.['sha256'])];
  if (name === undefined || address === null || typeof bytes !== 'number' || sha256 === null) return null;
  return {
    name,
    address,
    bytes,
    sha256,
    etag: asText(file?.['etag']),
    last_modified: asText(file?.['last_modified']),
  };
}
