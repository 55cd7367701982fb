import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { checkTaken } from '../../src/check/check-taken.ts';
import { printProblem } from '../../src/check/print-problem.ts';
import { takeIn } from '../../src/read/take-in.ts';
import { goodFiles } from './good-folder.ts';

const today = '2026-01-15';

async function checked(files: Record<string, string | Uint8Array>) {
  const given = Object.entries(files).map(([path, content]) => {
    const bytes = typeof content === 'string' ? strToU8(content) : content;
    return { path, size: bytes.length, arrayBuffer: () => Promise.resolve(bytes.slice().buffer) };
  });
  const result = checkTaken(await takeIn(given), today);
  return { ...result, lines: result.problems.map(printProblem) };
}

const good = Object.fromEntries(goodFiles());
const inFolder = (name: string, files: Record<string, string>) =>
  Object.fromEntries(Object.entries(files).map(([path, text]) => [`${name}/${path}`, text]));
const zipped = (files: Record<string, string>) =>
  zipSync(Object.fromEntries(Object.entries(files).map(([path, text]) => [path, strToU8(text)])));

describe('checking what was given to a page', () => {
  it('finds nothing in a good folder, in a zip of it, or in its loose files', async () => {
    for (const files of [
      inFolder('two-lettuces', good),
      { 'two-lettuces.zip': zipped(good) },
      { 'any.zip': zipped(inFolder('two-lettuces', good)) },
      good,
    ]) {
      const { kind, lines, trials } = await checked(files);
      expect(lines).toEqual([]);
      expect(kind).toBe('trial');
      expect(trials).toHaveLength(1);
    }
    expect((await checked(inFolder('two-lettuces', good))).trials[0]?.id).toBe('two-lettuces');
  });

  it('names files as the command does: from the trial on, or from the content folder on', async () => {
    const bad = { ...good, 'harvest.csv': good['harvest.csv']!.replace('118', '11B') };
    const line =
      'harvest.csv:4:8  error  weight-not-a-number  "11B" is not a number; write digits only, such as 118';
    expect((await checked(inFolder('two-lettuces', bad))).lines).toEqual([line]);
    const two = await checked({
      ...inFolder('a-trial', bad),
      ...inFolder('b-trial', { ...good, 'trial.yaml': '' }),
    });
    expect(two.lines).toEqual([
      `trials/a-trial/${line}`,
      'trials/b-trial/trial.yaml  error  empty-file  the file is empty; save it again',
    ]);
    expect(two.names).toEqual(['a-trial', 'b-trial']);
    expect(two.bytesOf('trials/a-trial/harvest.csv')).toEqual(strToU8(bad['harvest.csv']));
  });

  it('checks a content folder as a whole: site, cultivars, and what shows only across trials', async () => {
    const site = 'title: Trials\nurl: https://example.org/\npublisher: Someone\nlicence: CC0-1.0\n';
    const content = {
      'mine/site.yaml': site.replace('CC0-1.0', 'CC-0'),
      'mine/cultivars.yaml': '- {id: cobalt-wren, name: Cobalt Wren}\n',
      ...inFolder('mine/trials/a-trial', good),
      ...inFolder('mine/trials/b-trial', good),
    };
    const { kind, lines } = await checked(content);
    expect(kind).toBe('content');
    expect(lines.map((line) => line.split('  ').slice(0, 3).join(' '))).toEqual([
      'site.yaml:4:10 error unknown-licence',
      'trials/a-trial/trial.yaml:15:38 error unknown-cultivar',
      'trials/b-trial/trial.yaml:15:38 error unknown-cultivar',
    ]);
  });

  it('reads the fact sheets of a content folder', async () => {
    const { lines, factSheets, bytesOf } = await checked({
      ...inFolder('mine/trials/a-trial', good),
      'mine/fact-sheets/What We Know.mdx': 'Text.\n',
    });
    expect(factSheets).toEqual([]);
    expect(lines.filter((line) => line.startsWith('fact-sheets/What We Know.mdx'))).toHaveLength(1);
    expect(bytesOf('fact-sheets/What We Know.mdx')).toEqual(strToU8('Text.\n'));
  });

  it('says of an archive that is none what to do, and of what in one was not read', async () => {
    const { lines, trials } = await checked({ 'autumn.zip': 'not a zip' });
    expect(lines).toEqual([
      'autumn.zip  error  unread-archive  "autumn.zip" is no zip archive, or is cut off; make it again, or give the folder itself',
    ]);
    expect(trials).toEqual([]);
    const climbing = zipSync({
      'a-trial/trial.yaml': strToU8(good['trial.yaml']!),
      '../../up.csv': strToU8('x'),
    });
    expect((await checked({ 'a.zip': climbing })).lines).toContain(
      '../../up.csv  error  unread-file  "../../up.csv" is outside the archive; make the archive again from the folder itself, with what the computer brings for it',
    );
  });
});
