import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { crewFor, crewOf, shareOut } from '../../../src/commands/crew/crew.ts';
import { libraryOf } from '../../../src/commands/library-of.ts';
import { loadContent } from '../../../src/commands/load-content.ts';
import { fileFacts, publishedFiles } from '../../../src/publish/files.ts';
import { demo } from '../../support/site.ts';
import { temporaryFolder } from '../../support/temporary-folder.ts';

const silent = { done: () => undefined, end: () => undefined };

function crew() {
  const hired = crewOf(1);
  onTestFinished(() => hired.dismiss());
  return hired;
}

test('every input is worked on once, and the outputs keep the order of the inputs', async () => {
  const inputs = Array.from({ length: 50 }, (_, index) => index);
  const worked: number[] = [];
  const hand = (wait: number) => async (input: number) => {
    worked.push(input);
    if (input % 7 === wait) await new Promise((resolve) => setTimeout(resolve, wait));
    return input * 2;
  };
  expect(await shareOut(inputs, [hand(1), hand(2), hand(3)], silent)).toEqual(inputs.map((at) => at * 2));
  expect(worked.toSorted((a, b) => a - b)).toEqual(inputs);
});

test('few trials have no crew', () => {
  expect(crewFor(5).hands('examine')).toEqual([]);
});

test('a crew checks and finds what is checked and found without it', async () => {
  const [together, alone] = [await loadContent(demo, silent, crew()), await loadContent(demo, silent)];
  expect(together.computed.size).toBeGreaterThan(0);
  expect(together.problems).toEqual(alone.problems);
  // Bytes come from another thread as plain arrays of bytes.
  expect(structuredClone(libraryOf(together).trials)).toEqual(structuredClone(libraryOf(alone).trials));
});

test('a crew writes the datasets byte for byte as they are made without it', async () => {
  const library = libraryOf(await loadContent(demo, silent));
  const output = await temporaryFolder();
  const [write] = crew().hands('writeDataset');
  const finished = library.trials.filter(({ findings }) => findings !== null);
  expect(finished.length).toBeGreaterThan(2);
  for (const item of finished) {
    const files = publishedFiles(item, library);
    const told = await write!({ item, site: library.site, language: 'en', output });
    expect(told).toEqual(files.map(fileFacts));
    const folder = join(output, 'data', item.trial.id);
    expect((await readdir(folder)).sort()).toEqual(files.map(({ name }) => name).sort());
    for (const { name, bytes } of files)
      expect(Buffer.compare(await readFile(join(folder, name)), bytes), name).toBe(0);
  }
});

test('what goes wrong in another thread goes wrong here', async () => {
  const [examine] = crew().hands('examine');
  const context = { cultivars: [], today: '', prefix: '' };
  const nothing = { folder: null as unknown as string, context, language: 'en', withFindings: true } as const;
  await expect(examine!(nothing)).rejects.toThrow('"path" argument');
});
