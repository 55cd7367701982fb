/** Makes the icons that devices ask for as pictures of fixed size out of public/icon.svg: run this file after changing it. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { root } from '../../src/commands/folders.ts';

const folder = join(root, 'public');
const paper = '#fbfaf6';

/** Name, side in px, and the part of it that the drawing takes: what is cut round keeps to the middle (W3C manifest, safe zone). */
export const icons = [
  ['icon-192.png', 192, 0.8],
  ['icon-512.png', 512, 0.8],
  ['icon-round-512.png', 512, 0.56],
] as const;

/** The icon as a PNG. */
export async function iconOf(side: number, part: number): Promise<Buffer> {
  const inner = Math.round(side * part);
  const drawing = await sharp(await readFile(join(folder, 'icon.svg')), { density: 72 * (inner / 32) })
    .resize(inner, inner)
    .png()
    .toBuffer();
  return sharp({ create: { width: side, height: side, channels: 3, background: paper } })
    .composite([{ input: drawing }])
    .png({ palette: true, compressionLevel: 9 })
    .toBuffer();
}

if (process.argv[1] === import.meta.filename)
  for (const [name, side, part] of icons) await sharp(await iconOf(side, part)).toFile(join(folder, name));
