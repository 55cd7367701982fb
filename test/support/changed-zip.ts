/** What an archive's directory may be made to say of its first file. */
interface Changes {
  flags?: number;
  method?: number;
  /** Bytes unpacked. */
  size?: number;
  /** Where its own header begins. */
  at?: number;
}

/** An archive whose directory says something else of its first file than is true. */
export function changedZip(bytes: Uint8Array, { flags, method, size, at }: Changes): Uint8Array {
  const changed = bytes.slice();
  const view = new DataView(changed.buffer);
  const entry = view.getUint32(changed.length - 22 + 16, true);
  if (flags !== undefined) view.setUint16(entry + 8, flags, true);
  if (method !== undefined) view.setUint16(entry + 10, method, true);
  if (size !== undefined) view.setUint32(entry + 24, size, true);
  if (at !== undefined) view.setUint32(entry + 42, at, true);
  return changed;
}
