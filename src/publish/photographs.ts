import sharp from 'sharp';
import type { Trial } from '../model/trial.ts';
import type { PublishedFile } from './published-file.ts';

/** A photograph as a page shows it: the same picture in several widths and two formats. */
export interface Photograph {
  alt: string;
  caption: string | null;
  /** The container or position that it shows; null where it is not said. */
  where: string | null;
  /** ISO 8601. */
  date: string | null;
  /** Of the widest picture, in pixels. */
  width: number;
  height: number;
  /** Paths from the trial's page on, narrowest first. */
  webp: readonly { path: string; width: number }[];
  jpeg: readonly { path: string; width: number }[];
}

/** A trial's photographs, with the files to lie in the folder of the trial's page. */
export interface TrialPhotographs {
  photographs: readonly Photograph[];
  files: readonly PublishedFile[];
  /** Paths of those that cannot be read as a picture. */
  unreadable: readonly string[];
}

/** Widths in pixels that pictures are made in; none is enlarged. */
const widths = [480, 960, 1600];

/**
 * Makes a trial's photographs fit to publish. Only the picture itself is kept: where and when it was taken, and
 * with what, is left behind with the original, which is not published. The settings are fixed, so that the
 * same photograph makes the same bytes.
 */
export async function photographsOf(trial: Trial): Promise<TrialPhotographs> {
  const photographs: Photograph[] = [];
  const files: PublishedFile[] = [];
  const unreadable: string[] = [];
  for (const [index, { file, alt, caption, where, date }] of (trial.metadata.photos ?? []).entries()) {
    const bytes = trial.files.get(file);
    const made = bytes === undefined ? null : await pictures(bytes, `photos/${index + 1}`, alt);
    if (made === null) {
      unreadable.push(file);
      continue;
    }
    files.push(...made.files);
    photographs.push({
      alt,
      caption: caption ?? null,
      where: where ?? null,
      date: date ?? null,
      ...made.shown,
    });
  }
  return { photographs, files, unreadable };
}

type Shown = Pick<Photograph, 'width' | 'height' | 'webp' | 'jpeg'>;

/** The pictures of one photograph; null where it cannot be read. */
async function pictures(
  bytes: Uint8Array,
  path: string,
  description: string,
): Promise<{ shown: Shown; files: PublishedFile[] } | null> {
  try {
    // Turned upright first: how the camera was held is told by the metadata that are left behind.
    const upright = await sharp(bytes)
      .autoOrient()
      .toColourspace('srgb')
      .png()
      .toBuffer({ resolveWithObject: true });
    const { width, height } = upright.info;
    const wanted = [...widths.filter((each) => each < width), Math.min(width, widths.at(-1)!)];
    const files: PublishedFile[] = [];
    const webp: Shown['webp'][number][] = [];
    const jpeg: Shown['jpeg'][number][] = [];
    for (const each of wanted) {
      const resized = sharp(upright.data).resize({ width: each });
      const names = { webp: `${path}-${each}.webp`, jpeg: `${path}-${each}.jpg` };
      const packed = await resized.clone().webp({ quality: 78 }).toBuffer();
      const plain = await resized.flatten({ background: '#ffffff' }).jpeg({ quality: 80 }).toBuffer();
      files.push({ name: names.webp, bytes: packed, mediaType: 'image/webp', description });
      files.push({ name: names.jpeg, bytes: plain, mediaType: 'image/jpeg', description });
      webp.push({ path: names.webp, width: each });
      jpeg.push({ path: names.jpeg, width: each });
    }
    const widest = wanted.at(-1)!;
    return { shown: { width: widest, height: Math.round((height * widest) / width), webp, jpeg }, files };
  } catch {
    return null;
  }
}
