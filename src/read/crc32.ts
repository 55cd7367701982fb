/** The remainders of each byte, by the reversed polynomial of ISO 3309. */
const remainders = Uint32Array.from({ length: 256 }, (_, byte) => {
  let remainder = byte;
  for (let bit = 0; bit < 8; bit += 1) {
    remainder = remainder & 1 ? (remainder >>> 1) ^ 0xedb88320 : remainder >>> 1;
  }
  return remainder;
});

/** The CRC-32 of some bytes (ISO 3309), by which a zip archive tells whether a file came through whole. */
export function crc32(bytes: Uint8Array): number {
  let remainder = 0xffffffff;
  for (const byte of bytes) remainder = (remainder >>> 8) ^ remainders[(remainder ^ byte) & 0xff]!;
  return (remainder ^ 0xffffffff) >>> 0;
}
