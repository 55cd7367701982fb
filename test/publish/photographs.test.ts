import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { photographsOf } from '../../src/publish/photographs.ts';
import type { Trial } from '../../src/model/trial.ts';
import { trialOf } from '../support/trial-of.ts';

/** A picture with all that a telephone writes into it, its place and camera among it. */
async function fromTelephone(width: number, height: number, orientation = 1): Promise<Uint8Array> {
  return await sharp({ create: { width, height, channels: 3, background: { r: 40, g: 120, b: 60 } } })
    .withExif({
      IFD0: {
        Make: 'Somebody',
        Model: 'Telephone 7',
        Orientation: String(orientation),
        Software: 'SecretSoft',
      },
      IFD2: { DateTimeOriginal: '2025:10:02 08:15:00' },
      IFD3: {
        GPSLatitudeRef: 'N',
        GPSLatitude: '52/1 54/1 13/1',
        GPSLongitudeRef: 'W',
        GPSLongitude: '9/1 6/1 2/1',
      },
    })
    .withMetadata({ orientation })
    .jpeg()
    .toBuffer();
}

const of = (bytes: Uint8Array | null): Trial => {
  const trial = trialOf([{ container: 'T1', treatment: { cultivar: 'a' }, weight: 100 }], {
    metadata: { photos: [{ file: 'photos/day-30.jpg', alt: 'A tank from above.', date: '2025-10-02' }] },
  });
  return { ...trial, files: new Map(bytes === null ? [] : [['photos/day-30.jpg', bytes]]) };
};

describe('photographs', () => {
  test('come out without place, camera and time, whatever was written into them', async () => {
    const original = await fromTelephone(2000, 1500);
    expect((await sharp(original).metadata()).exif).toBeDefined();
    expect(Buffer.from(original).includes('Telephone 7')).toBe(true);
    const { files } = await photographsOf(of(original));
    expect(files.length).toBeGreaterThan(0);
    for (const { bytes } of files) {
      const { exif, xmp, iptc, icc } = await sharp(bytes).metadata();
      expect([exif, xmp, iptc, icc]).toEqual([undefined, undefined, undefined, undefined]);
      for (const word of ['Telephone 7', 'SecretSoft', '2025:10:02', 'GPS', 'Exif']) {
        expect(Buffer.from(bytes).includes(word), word).toBe(false);
      }
    }
  });

  test('come in several widths and two formats, none enlarged', async () => {
    const { photographs, files } = await photographsOf(of(await fromTelephone(1200, 900)));
    expect(photographs[0]).toMatchObject({
      width: 1200,
      height: 900,
      alt: 'A tank from above.',
      date: '2025-10-02',
    });
    expect(photographs[0]!.webp.map(({ width }) => width)).toEqual([480, 960, 1200]);
    expect(files.map(({ name }) => name)).toContain('photos/1-960.jpg');
    for (const { name, bytes } of files) {
      const { width, format } = await sharp(bytes).metadata();
      expect(name).toBe(`photos/1-${width}.${format === 'jpeg' ? 'jpg' : 'webp'}`);
    }
    const small = await photographsOf(of(await fromTelephone(300, 200)));
    expect(small.photographs[0]!.jpeg).toEqual([{ path: 'photos/1-300.jpg', width: 300 }]);
  });

  test('stand upright, however the camera was held', async () => {
    const { photographs } = await photographsOf(of(await fromTelephone(800, 400, 6)));
    expect(photographs[0]).toMatchObject({ width: 400, height: 800 });
  });

  test('are the same bytes each time', async () => {
    const trial = of(await fromTelephone(700, 500));
    const [one, two] = [await photographsOf(trial), await photographsOf(trial)];
    expect(one.files.map(({ bytes }) => Buffer.from(bytes).toString('base64'))).toEqual(
      two.files.map(({ bytes }) => Buffer.from(bytes).toString('base64')),
    );
  });

  test('that cannot be read are named, and nothing is thrown', async () => {
    const cut = (await fromTelephone(700, 500)).slice(0, 300);
    for (const bytes of [cut, new Uint8Array(), new TextEncoder().encode('not a picture'), null]) {
      const made = await photographsOf(of(bytes));
      expect(made.photographs).toEqual([]);
      expect(made.unreadable).toEqual(['photos/day-30.jpg']);
    }
  });
});
