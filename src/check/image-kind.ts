const starts = (bytes: Uint8Array, offset: number, wanted: readonly number[]): boolean =>
  wanted.every((byte, index) => bytes[offset + index] === byte);

const ascii = (text: string): number[] => [...text].map((letter) => letter.charCodeAt(0));

/** The kind of picture that bytes begin like (ISO/IEC 10918, PNG and WebP signatures); null for anything else. */
export function imageKind(bytes: Uint8Array): 'jpg' | 'png' | 'webp' | null {
  if (starts(bytes, 0, [0xff, 0xd8, 0xff])) return 'jpg';
  if (starts(bytes, 0, [0x89, ...ascii('PNG'), 0x0d, 0x0a, 0x1a, 0x0a])) return 'png';
  if (starts(bytes, 0, ascii('RIFF')) && starts(bytes, 8, ascii('WEBP'))) return 'webp';
  return null;
}
