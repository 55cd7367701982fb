import type { AnnouncedFile } from '../../check/gathered-index.ts';
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
    return `${name} is announced with ${String(size)} bytes, over ${String(limits.fileBytes)}`;
  if (size > allowance.bytes)
    return `${name} would be more than ${String(limits.siteBytes)} bytes from one site in one run`;
  allowance.bytes -= size;
  const left = Math.ceil(allowance.until - performance.now());
  if (left <= 0) return `the time for one site is over (${String(limits.siteMilliseconds / 1000)} s)`;
  const fetched = await fetchBytes(address, {
    mostBytes: size,
    milliseconds: Math.min(left, limits.milliseconds),
  });
  if (fetched.kind === 'unchanged') return `${name}: an answer without a body`;
  if (fetched.kind !== 'bytes') return `${name}: ${fetched.why}`;
  const { bytes, validators } = fetched;
  if (bytes.length !== size)
    return `${name} is cut short: ${String(bytes.length)} of ${String(size)} bytes came`;
  if (sha256(bytes) !== sum) return `the SHA-256 of ${name} is not the one that its site publishes`;
  return { bytes, validators };
}
