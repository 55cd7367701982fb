import { gatheredFiles } from '../model/gathered.ts';
import { say } from '../model/say.ts';
import { showText, showValue } from './show-value.ts';
import { asObject, asText, asWebAddress, jsonValue } from './json-value.ts';

/** A file that another site's index announces. */
export interface AnnouncedFile {
  name: string;
  address: string;
  bytes: number;
  sha256: string;
}

/** A dataset that another site's index announces, of its files those that a check needs. */
export interface Announced {
  id: string;
  version: string;
  page: string;
  data: string;
  identifier: string;
  files: readonly AnnouncedFile[];
}

export interface AnnouncedSite {
  datasets: readonly Announced[];
  /** The ids of all that it lists, taken or not. */
  listed: readonly string[];
  /** The list that says what the ids of its cultivars mean; null where it publishes none. */
  cultivars: AnnouncedFile | null;
  /** What it announces that cannot be taken, and why, a sentence each. */
  faults: readonly string[];
}

/** So many datasets of a site are looked at. */
const mostDatasets = 5000;

/**
 * What another site's /data/index.json announces. Keys that a later version added are passed over; whatever
 * would lead out of that site, or out of a folder of ours, is a fault.
 *
 * @param address where the index was found
 * @returns a sentence where it is no index at all
 */
export function gatheredIndex(bytes: Uint8Array, address: string): AnnouncedSite | string {
  const index = asObject(jsonValue(bytes));
  if (index === null) {
    const start = new TextDecoder().decode(bytes.subarray(0, 300)).trim();
    return say('is no JSON but begins with {start}', { start: showText(start) });
  }
  const { form, datasets } = index;
  if (form !== 1) return say('is of the form {form}; this program reads form 1', { form: showValue(form) });
  if (!Array.isArray(datasets)) return say('has no list of datasets');
  if (datasets.length > mostDatasets)
    return say('announces {count} datasets, over {most}', { count: datasets.length, most: mostDatasets });
  const read = datasets.map((value, at) => announced(value, address) ?? faultOf(value, at));
  const sound = read.filter((each) => typeof each !== 'string');
  const once = sound.filter(({ id }, at) => sound.findIndex((each) => each.id === id) === at);
  const cultivars = asObject(index['cultivars']);
  return {
    datasets: once,
    listed: datasets.flatMap((value) => asText(asObject(value)?.['id']) ?? []),
    cultivars: cultivars && fileOf({ ...cultivars, name: 'cultivars.json' }, address),
    faults: [
      ...read.filter((each) => typeof each === 'string'),
      ...sound
        .filter((each) => !once.includes(each))
        .map(({ id }) => say('it announces {id} twice', { id: showText(id) })),
    ],
  };
}

function faultOf(value: unknown, at: number): string {
  const id = asText(asObject(value)?.['id']);
  return id === null
    ? say(
        'its dataset number {number} is not as an index describes one, or leads out of its site or folder',
        {
          number: at + 1,
        },
      )
    : say('its dataset {id} is not as an index describes one, or leads out of its site or folder', {
        id: showText(id),
      });
}

function announced(value: unknown, address: string): Announced | null {
  const dataset = asObject(value);
  const id = asText(dataset?.['id']);
  const version = asText(dataset?.['version']);
  const page = ofSite(dataset?.['page'], address);
  const data = ofSite(dataset?.['data'], address);
  const identifier = asWebAddress(dataset?.['identifier']);
  if (id === null || !/^[a-z0-9-]{3,64}$/.test(id) || version === null || !isVersion(version)) return null;
  if (page === null || data === null || identifier === null) return null;
  const given = Array.isArray(dataset?.['files']) ? dataset['files'] : [];
  const wanted = given.filter((file) => gatheredFiles.some((name) => name === asObject(file)?.['name']));
  const files = wanted.map((file) => fileOf(asObject(file) ?? {}, address));
  const whole = files.filter((file) => file !== null);
  const names = new Set(whole.map(({ name }) => name));
  if (whole.length !== files.length || names.size !== whole.length) return null;
  if (!names.has('trial.json') || !names.has('harvest.csv')) return null;
  return { id, version, page, data, identifier, files: whole };
}

const isVersion = (text: string): boolean => /^(0|[1-9]\d{0,8})(\.(0|[1-9]\d{0,8})){2}$/.test(text);

function fileOf(file: Readonly<Record<string, unknown>>, index: string): AnnouncedFile | null {
  const name = asText(file['name']);
  const address = ofSite(file['address'], index);
  const { bytes, sha256 } = file;
  if (name === null || address === null) return null;
  if (typeof bytes !== 'number' || !Number.isSafeInteger(bytes) || bytes < 0) return null;
  if (typeof sha256 !== 'string' || !/^[0-9a-f]{64}$/.test(sha256)) return null;
  return { name, address, bytes, sha256 };
}

/** An address below the site whose index names it; null where it leads elsewhere. */
function ofSite(value: unknown, index: string): string | null {
  const address = asWebAddress(value, index);
  return address?.startsWith(siteOf(index)) === true ? address : null;
}

/** The address of the site that an index belongs to. */
export function siteOf(index: string): string {
  return new URL('..', index).href;
}
