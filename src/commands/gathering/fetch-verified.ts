import type { AnnouncedFile } from '../../check/gathered-index.ts';
import { say } from '../../model/say.ts';
import { sha256 } from '../../publish/sha256.ts';
import { fetchBytes, type Validators } from './fetch-bytes.ts';
import type { Limits } from './limits.ts';

/** What may still be taken from a site in this run. */
export interface Allowance {
  limits: Limits;
  bytes: number;
  /** In milliseconds of performance.now(). */
  until: number;
}

export interface Verified {
  bytes: Uint8Array;
  validators: Validators;
}

/** A file with the size and the checksum that its site publishes for it, or why it is not taken. */
export async function fetchVerified(
  { name, address, bytes: size, sha256: sum }: AnnouncedFile,
  allowance: Allowance,
): Promise<Verified | string> {
  const { limits } = allowance;
  if (size > limits.fileBytes)
    return say('{name} is announced with {bytes} bytes, over {most}', {
      name,
      bytes: size,
      most: limits.fileBytes,
    });
  if (size > allowance.bytes)
    return say('{name} would be more than {most} bytes from one site in one run', {
      name,
      most: limits.siteBytes,
    });
  allowance.bytes -= size;
  const left = Math.ceil(allowance.until - performance.now());
  if (left <= 0)
    return say('the time for one site is over ({seconds} s)', { seconds: limits.siteMilliseconds / 1000 });
  const fetched = await fetchBytes(address, {
    mostBytes: size,
    milliseconds: Math.min(left, limits.milliseconds),
  });
  if (fetched.kind === 'unchanged') return say('{name}: an answer without a body', { name });
  if (fetched.kind !== 'bytes') return `${name}: ${fetched.why}`;
  const { bytes, validators } = fetched;
  if (bytes.length !== size)
    return say('{name} is cut short: {came} of {bytes} bytes came', {
      name,
      came: bytes.length,
      bytes: size,
    });
  if (sha256(bytes) !== sum)
    return say('the SHA-256 of {name} is not the one that its site publishes', { name });
  return { bytes, validators };
}
