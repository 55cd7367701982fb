import { hash } from 'node:crypto';

/** The SHA-256 of some bytes in hexadecimal. The one place that needs Node: everything else runs in a browser. */
export function sha256(bytes: Uint8Array): string {
  return hash('sha256', bytes, 'hex');
}
