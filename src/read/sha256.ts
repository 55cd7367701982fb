/**
 * The SHA-256 of some bytes in hexadecimal (FIPS 180-4, section 6.2), at once and without Node, so that the check
 * of frozen versions gives the same answer in a browser.
 */
export function sha256(bytes: Uint8Array): string {
  const state = Uint32Array.from(firstState);
  const schedule = new Uint32Array(64);
  const whole = bytes.length - (bytes.length % 64);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = 0; at < whole; at += 64) addBlock(state, schedule, view, at);
  const rest = padded(bytes.subarray(whole), bytes.length);
  for (let at = 0; at < rest.byteLength; at += 64) addBlock(state, schedule, rest, at);
  return [...state].map((word) => word.toString(16).padStart(8, '0')).join('');
}

/** The last bytes, a one bit, zeros, and the whole length in bits: section 5.1.1. */
function padded(rest: Uint8Array, length: number): DataView {
  const bytes = new Uint8Array(rest.length < 56 ? 64 : 128);
  bytes.set(rest);
  bytes[rest.length] = 0x80;
  const view = new DataView(bytes.buffer);
  view.setUint32(bytes.length - 8, Math.floor(length / 0x20000000));
  view.setUint32(bytes.length - 4, (length * 8) % 0x100000000);
  return view;
}

const turned = (word: number, by: number): number => (word >>> by) | (word << (32 - by));

function addBlock(state: Uint32Array, schedule: Uint32Array, view: DataView, at: number): void {
  for (let index = 0; index < 16; index += 1) schedule[index] = view.getUint32(at + 4 * index);
  for (let index = 16; index < 64; index += 1) {
    const before = schedule[index - 15]!;
    const last = schedule[index - 2]!;
    const small = turned(before, 7) ^ turned(before, 18) ^ (before >>> 3);
    const large = turned(last, 17) ^ turned(last, 19) ^ (last >>> 10);
    schedule[index] = schedule[index - 16]! + small + schedule[index - 7]! + large;
  }
  let [a, b, c, d, e, f, g, h] = state as unknown as Eight;
  for (let index = 0; index < 64; index += 1) {
    const chosen = (e & f) ^ (~e & g);
    const first =
      (h + (turned(e, 6) ^ turned(e, 11) ^ turned(e, 25)) + chosen + constants[index]! + schedule[index]!) |
      0;
    const most = (a & b) ^ (a & c) ^ (b & c);
    const second = ((turned(a, 2) ^ turned(a, 13) ^ turned(a, 22)) + most) | 0;
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + first) | 0, c, b, a, (first + second) | 0];
  }
  [a, b, c, d, e, f, g, h].forEach((word, index) => {
    state[index] = state[index]! + word;
  });
}

type Eight = [number, number, number, number, number, number, number, number];

/** The first 64 primes, from whose roots the constants are taken: sections 4.2.2 and 5.3.3. */
const primes = firstPrimes(64);
const fraction = (root: number): number => Math.floor((root - Math.floor(root)) * 0x100000000);
const constants = Uint32Array.from(primes, (prime) => fraction(Math.cbrt(prime)));
const firstState = primes.slice(0, 8).map((prime) => fraction(Math.sqrt(prime)));

function firstPrimes(count: number): number[] {
  const found: number[] = [];
  for (let number = 2; found.length < count; number += 1) {
    if (found.every((prime) => number % prime !== 0)) found.push(number);
  }
  return found;
}
