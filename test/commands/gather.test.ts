import { createHash } from 'node:crypto';
import { cp, mkdir, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { describe, expect, onTestFinished, test } from 'vitest';
import { gather } from '../../src/commands/gather.ts';
import { usualLimits, type Limits } from '../../src/commands/gathering/limits.ts';
import { loadContent } from '../../src/commands/load-content.ts';
import { fileHashes, runCommand } from '../support/site.ts';
import {
  type Misbehaviour,
  type OtherSite,
  otherSite,
  trialFiles,
  writeContent,
} from '../support/other-site.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

/** On this site the ids are others than at home, and one of them means another cultivar there. */
const cultivarsThere = `- {id: cobalt-wren, name: Russet Plover, species: Lactuca sativa}
- {id: slate-egret, name: Slate Egret, species: Lactuca sativa}
`;
const cultivarsHere = `- {id: cobalt-wren, name: Cobalt Wren, species: Lactuca sativa}
- {id: slate-egret, name: Slate Egret, species: Lactuca sativa}
`;
const silent = { done: () => undefined, end: () => undefined };
const id = 'two-lettuces';
const first = trialFiles(
  ['Two lettuces in two tanks', 'Lettuces at Otterbrook'],
  ['T1,1,1,131', 'T1,1,1,133'],
);
const second = trialFiles(
  ['Two lettuces in two tanks', 'Lettuces at Otterbrook'],
  ['T1,1,1,131', 'T1,1,1,134'],
  ['version: 1.0.0\nstatus', 'version: 1.1.0\nstatus'],
  [
    'note: First release.}',
    'note: First release.}\n  - {version: 1.1.0, date: 2025-12-01, note: One weight.}',
  ],
);
const limits: Limits = { ...usualLimits, milliseconds: 4000 };

interface Both {
  there: OtherSite;
  /** The content folder that gathers. */
  here: string;
  /** The folder of the site's copies. */
  folder: string;
  run: (changed?: Partial<Limits>) => Promise<string[]>;
}

/** Two sites, of which one gathers from the other and has a trial of the same id. */
async function both(trials: Record<string, ReadonlyMap<string, string>> = { [id]: first }): Promise<Both> {
  const there = await otherSite(cultivarsThere, trials);
  const here = await temporaryFolder();
  const site = `title: Fernhollow\nurl: https://fernhollow.example.org/\npublisher: Fernhollow\nlicence: CC0-1.0\ngather:\n  - {title: Otterbrook, address: '${there.address}'}\n`;
  await writeContent(here, { site, cultivars: cultivarsHere }, { [id]: trialFiles() });
  const { port } = new URL(there.address);
  const run = async (changed: Partial<Limits> = {}): Promise<string[]> => {
    const { problems } = await gather(here, { ...limits, ...changed });
    for (const { severity } of problems) expect(severity).toBe('warning');
    return problems.map(({ rule, message }) => `${rule}: ${message}`);
  };
  return { there, here, folder: join(here, 'gathered', `127-0-0-1-${port}-garden`), run };
}

const record = async ({ folder }: Both) =>
  JSON.parse(await readFile(join(folder, id, 'gathered.json'), 'utf8')) as {
    version: string;
    gathered: string;
    files: { name: string; sha256: string }[];
  };

const isPath =
  (end: string, answer: Misbehaviour): Misbehaviour =>
  (request, response) =>
    request.url?.endsWith(end) === true && answer(request, response);

describe('gather', () => {
  test('keeps each file of a trial byte for byte with where and when it came from', async () => {
    const sites = await both();
    expect(await sites.run()).toEqual([]);
    expect(await readdir(join(sites.folder, id))).toEqual([
      'gathered.json',
      'harvest.csv',
      'layout.csv',
      'trial.json',
    ]);
    for (const name of ['harvest.csv', 'layout.csv', 'trial.json']) {
      const kept = await readFile(join(sites.folder, id, name));
      expect(kept).toEqual(await readFile(join(sites.there.folder, 'data', id, name)));
    }
    const { files, ...rest } = await record(sites);
    const { address } = sites.there;
    expect(rest).toMatchObject({
      form: 1,
      site: { title: 'Otterbrook', address },
      id,
      version: '1.0.0',
      page: `${address}trials/${id}/`,
      data: `${address}data/${id}/`,
      gathered: expect.stringMatching(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$/) as string,
    });
    for (const { name, sha256 } of files) {
      const bytes = await readFile(join(sites.folder, id, name));
      expect(createHash('sha256').update(bytes).digest('hex')).toBe(sha256);
    }
  });

  test('asks only whether the index changed where nothing did, and writes nothing anew', async () => {
    const sites = await both();
    await sites.run();
    const before = await fileHashes(sites.folder);
    sites.there.requests.length = 0;
    expect(await sites.run()).toEqual([]);
    expect(sites.there.requests).toEqual([{ path: '/garden/data/index.json', status: 304 }]);
    expect(await fileHashes(sites.folder)).toEqual(before);
  });

  test('fetches of a newer version only what changed', async () => {
    const sites = await both();
    await sites.run();
    await sites.there.publish({ [id]: second });
    sites.there.requests.length = 0;
    expect(await sites.run()).toEqual([]);
    expect((await record(sites)).version).toBe('1.1.0');
    expect(sites.there.requests.map(({ path }) => path.replace('/garden/data/', '')).sort()).toEqual([
      'index.json',
      `${id}/harvest.csv`,
      `${id}/trial.json`,
    ]);
  });

  test('follows a redirect within the host', async () => {
    const sites = await both();
    const file = join(sites.here, 'site.yaml');
    await writeFile(file, (await readFile(file, 'utf8')).replace('/garden/', '/before/it/moved'));
    sites.there.misbehave((request, response) => {
      if (!request.url!.startsWith('/before/it/moved/')) return false;
      response.writeHead(301, { location: request.url!.replace('/before/it/moved/', '/garden/') }).end();
      return true;
    });
    expect(await sites.run()).toEqual([]);
    const { gathered } = await loadContent(sites.here, silent);
    expect(gathered.map(({ origin }) => origin?.page)).toEqual([`${sites.there.address}trials/${id}/`]);
  });

  test('passes over keys that a later version of the index added', async () => {
    const sites = await both();
    await changeIndex(sites.there, (text) =>
      text
        .replace('"form": 1,', '"form": 1, "newer": {"keys": [1]},')
        .replace('"id": "', '"newer": 1, "id": "'),
    );
    expect(await sites.run()).toEqual([]);
    expect((await loadContent(sites.here, silent)).gathered).toHaveLength(1);
  });

  test('is a command with the usual exit codes', async () => {
    const sites = await both();
    const { code, stdout, stderr } = await runCommand(['gather', sites.here]);
    expect([code, stdout]).toEqual([0, '0 errors, 0 warnings, 0 notes\n']);
    expect(stderr).toContain('Otterbrook: 1 trials taken, 0 as they were');
    await sites.there.close();
    const unreachable = await runCommand(['gather', sites.here]);
    expect(unreachable.code).toBe(0);
    expect(unreachable.stdout).toMatch(
      /^site\.yaml:6:34 {2}warning {2}gather-unreachable {2}http.*nothing answers there; what was gathered from it before stays\n0 errors, 1 warning, 0 notes\n$/,
    );
    await writeFile(join(sites.here, 'site.yaml'), 'title: Fernhollow\n');
    expect((await runCommand(['gather', sites.here])).code).toBe(1);
    expect((await runCommand(['gather', join(sites.here, 'nothing')])).code).toBe(2);
  });
});

describe('what was gathered', () => {
  test('takes part beside a trial of the same id, its cultivars told by name', async () => {
    const sites = await both();
    await sites.run();
    const content = await loadContent(sites.here, silent);
    expect(content.problems).toEqual([]);
    const [trial] = content.gathered;
    expect(trial?.id).toMatch(/^127-0-0-1-\d+-garden\/two-lettuces$/);
    expect(trial?.origin).toMatchObject({ title: 'Otterbrook', id });
    const { stdout } = await runCommand(['seasons', sites.here]);
    const entries = JSON.parse(stdout) as {
      measure: string;
      cells: { cultivar: string; trial: string }[];
      trials: { id: string; origin?: { title: string } }[];
    }[];
    const entry = entries.find(({ measure }) => measure === 'per_pot')!;
    expect(entry.trials.map(({ origin }) => origin?.title)).toEqual(['Otterbrook', undefined]);
    const cultivarsOf = (of: string) =>
      entry.cells.filter(({ trial: each }) => each === of).map(({ cultivar }) => cultivar);
    expect(cultivarsOf(id)).toEqual(['cobalt-wren', 'slate-egret']);
    // What they call cobalt-wren is Russet Plover, which this site does not know.
    expect(cultivarsOf(trial!.id)).toEqual(['Russet Plover', 'slate-egret']);
  });

  test('counts once where the site publishes a copy of a trial of one’s own', async () => {
    const sites = await both({ [id]: trialFiles(), 'other-lettuces': first });
    await sites.run();
    const { gathered, problems } = await loadContent(sites.here, silent);
    expect(gathered.map(({ origin }) => origin?.id)).toEqual(['other-lettuces']);
    expect(problems.map(({ rule }) => rule)).toEqual(['gathered-twice']);
  });

  test('is left out where a file was altered here, and mended by gathering again', async () => {
    const sites = await both();
    await sites.run();
    await writeFile(join(sites.folder, id, 'harvest.csv'), 'container,row,column,fresh_weight\n');
    const altered = await loadContent(sites.here, silent);
    expect(altered.gathered).toEqual([]);
    expect(altered.problems.map(({ rule, severity }) => [rule, severity])).toEqual([
      ['gathered-altered', 'warning'],
    ]);
    expect(await sites.run()).toEqual([]);
    expect((await loadContent(sites.here, silent)).gathered).toHaveLength(1);
  });
});

async function changeIndex({ folder }: OtherSite, change: (text: string) => string): Promise<void> {
  const path = join(folder, 'data', 'index.json');
  const text = await readFile(path, 'utf8');
  const changed = change(text);
  expect(changed).not.toBe(text);
  await writeFile(path, changed);
}

describe('a site that misbehaves leaves the last good copy:', () => {
  interface Fault {
    how?: Misbehaviour;
    limits?: Partial<Limits>;
    /** What the site publishes next, its newer version where absent. */
    next?: Record<string, ReadonlyMap<string, string>>;
    /** Changes its index. */
    index?: (text: string) => string;
  }

  /** Gathers a good version, lets the site go wrong while it has a newer one, and answers with what is said. */
  async function after({ how, limits: changed = {}, next, index }: Fault): Promise<string[]> {
    const sites = await both();
    expect(await sites.run()).toEqual([]);
    const before = await fileHashes(join(sites.folder, id));
    await sites.there.publish(next ?? { [id]: second });
    if (index) await changeIndex(sites.there, index);
    sites.there.misbehave(how ?? null);
    const said = await sites.run(changed);
    expect(await fileHashes(join(sites.folder, id))).toEqual(before);
    expect((await readdir(sites.folder)).filter((name) => name.startsWith('.'))).toEqual([]);
    expect((await readdir(sites.here)).sort()).toEqual(['cultivars.yaml', 'gathered', 'site.yaml', 'trials']);
    const { gathered } = await loadContent(sites.here, silent);
    expect(gathered.map(({ metadata }) => metadata.version)).toEqual(['1.0.0']);
    // And nothing stands in the way once the site is well again.
    sites.there.misbehave(null);
    await sites.there.publish({ [id]: second });
    expect(await sites.run()).toEqual([]);
    expect((await record(sites)).version).toBe('1.1.0');
    return said;
  }

  const answer = (status: number, headers: Record<string, string | number>, body = ''): Misbehaviour => {
    return (_request, response) => {
      response.writeHead(status, headers).end(body);
      return true;
    };
  };
  const stream =
    (headers: Record<string, string | number>, every: number, piece: string): Misbehaviour =>
    (_request, response) => {
      response.writeHead(200, headers);
      const timer = setInterval(() => response.write(piece), every);
      response.on('close', () => clearInterval(timer));
      return true;
    };

  test('a body that is cut short', async () => {
    const cut: Misbehaviour = (_request, response) => {
      response.writeHead(200, { 'content-length': 120 });
      response.write('container,row');
      setTimeout(() => response.destroy(), 20);
      return true;
    };
    expect(await after({ how: isPath('harvest.csv', cut) })).toEqual([
      expect.stringMatching(/^gather-refused: harvest\.csv: the answer ended before its end; the last good/),
    ]);
  });

  test('a body that is shorter than announced, its end regular', async () => {
    expect(await after({ how: isPath('harvest.csv', answer(200, {}, 'container,row\n')) })).toEqual([
      expect.stringMatching(/^gather-refused: harvest\.csv is cut short: 14 of \d+ bytes came/),
    ]);
  });

  test('another sum than is published', async () => {
    const wrong: Misbehaviour = (_request, response) => {
      const text = second.get('harvest.csv')!.replace('134', '135');
      response.writeHead(200).end(text);
      return true;
    };
    expect(await after({ how: isPath('harvest.csv', wrong) })).toEqual([
      expect.stringMatching(/^gather-refused: the SHA-256 of harvest\.csv is not the one that its site/),
    ]);
  });

  test('10 GB announced, in a header', async () => {
    const held: Misbehaviour = (_request, response) => {
      response.writeHead(200, { 'content-length': 10_000_000_000 });
      return response.write('{') || true;
    };
    expect(await after({ how: isPath('index.json', held) })).toEqual([
      expect.stringMatching(/^gather-refused: http.*index\.json: it is larger than 50000000 bytes; what was/),
    ]);
  });

  test('10 GB announced, in the index', async () => {
    const index = (text: string) => text.replace(/"bytes": \d+/g, '"bytes": 10000000000');
    const said = await after({ index });
    expect(said.at(-1)).toMatch(/announced with 10000000000 bytes, over 20000000; the last good copy stays$/);
  });

  test('a body without end', async () => {
    const endless = stream({}, 1, 'x'.repeat(100_000));
    const said = await after({ how: isPath('index.json', endless), limits: { indexBytes: 1_000_000 } });
    expect(said).toEqual([expect.stringMatching(/it is larger than 1000000 bytes/)]);
  });

  test('a body that drips longer than the time allows', async () => {
    const drip = stream({ 'content-length': 1000 }, 50, 'x');
    const started = performance.now();
    const said = await after({ how: isPath('index.json', drip), limits: { milliseconds: 400 } });
    expect(said).toEqual([expect.stringMatching(/^gather-unreachable: .*it took longer than 0\.4 s/)]);
    expect(performance.now() - started).toBeLessThan(8000);
  });

  test('an answer that never begins', async () => {
    const silence: Misbehaviour = () => true;
    expect(await after({ how: isPath('index.json', silence), limits: { milliseconds: 300 } })).toEqual([
      expect.stringMatching(/^gather-unreachable: .*it took longer than 0\.3 s/),
    ]);
  });

  test('a small body that unpacks to a large one', async () => {
    const packed = gzipSync(Buffer.alloc(30_000_000, 32));
    const bomb: Misbehaviour = (_request, response) => {
      response.writeHead(200, { 'content-encoding': 'gzip', 'content-length': packed.length }).end(packed);
      return true;
    };
    expect(packed.length).toBeLessThan(100_000);
    const said = await after({ how: isPath('index.json', bomb), limits: { indexBytes: 1_000_000 } });
    expect(said).toEqual([expect.stringMatching(/it is larger than 1000000 bytes/)]);
  });

  test('a redirect to another host', async () => {
    const asked: string[] = [];
    const elsewhere = createServer((request, response) => {
      asked.push(request.url ?? '');
      response.end('{}');
    });
    await new Promise<void>((ready) => elsewhere.listen(0, '127.0.0.1', ready));
    onTestFinished(() => new Promise<void>((done) => void elsewhere.close(() => done())));
    const to = `http://127.0.0.1:${(elsewhere.address() as AddressInfo).port}/garden/data/index.json`;
    expect(await after({ how: isPath('index.json', answer(302, { location: to })) })).toEqual([
      expect.stringMatching(/^gather-refused: .*it leads to another host: 127\.0\.0\.1:\d+;/),
    ]);
    expect(asked).toEqual([]);
  });

  test('a redirect in a circle', async () => {
    const circle = answer(301, { location: '/garden/data/index.json' });
    expect(await after({ how: isPath('index.json', circle) })).toEqual([
      expect.stringMatching(/^gather-refused: .*it leads on more than 5 times/),
    ]);
  });

  test('HTML instead of JSON', async () => {
    const page = answer(200, { 'content-type': 'application/json' }, '<!doctype html><title>Parked</title>');
    expect(await after({ how: isPath('index.json', page) })).toEqual([
      expect.stringMatching(/is no JSON but begins with "<!doctype html><title>Parked<\/title>"; what was/),
    ]);
  });

  test('an index of a form that this program does not know', async () => {
    expect(await after({ index: (text) => text.replace('"form": 1', '"form": 2') })).toEqual([
      expect.stringMatching(/is of the form 2; this program reads form 1; what was gathered/),
    ]);
  });

  test('brackets without end', async () => {
    expect(await after({ how: isPath('index.json', answer(200, {}, '['.repeat(900_000))) })).toEqual([
      expect.stringMatching(/^gather-refused: .*is no JSON but begins with "\[\[/),
    ]);
  });

  test('an answer of 404 or 503', async () => {
    expect(await after({ how: answer(404, {}, 'gone') })).toEqual([
      expect.stringMatching(/^gather-refused: .*404/),
    ]);
    expect(await after({ how: answer(503, {}, 'busy') })).toEqual([
      expect.stringMatching(/^gather-unreachable: .*503/),
    ]);
  });

  test('data changed under the same version', async () => {
    const changed = trialFiles(
      ['Two lettuces in two tanks', 'Lettuces at Otterbrook'],
      ['T1,1,1,131', 'T1,1,1,139'],
    );
    expect(await after({ next: { [id]: changed } })).toEqual([
      'gather-changed: its site changed the data under the same version, 1.0.0; the last good copy stays',
    ]);
  });

  test('a version that went back', async () => {
    const older = trialFiles(['1.0.0', '0.9.0'], ['T1,1,1,131', 'T1,1,1,139']);
    expect(await after({ next: { [id]: older } })).toEqual([
      'gather-changed: its site went back from version 1.0.0 to 0.9.0; the last good copy stays',
    ]);
  });

  test('a dataset that is listed no longer', async () => {
    expect(await after({ next: {} })).toEqual([
      'gather-withdrawn: its site lists it no longer; the last good copy stays until you delete it',
    ]);
  });

  test('a trial that fails the check here', async () => {
    const faulty = second.get('harvest.csv')!.replace('T1,1,1,134', 'T1,1,1,13O');
    const sum = createHash('sha256').update(faulty).digest('hex');
    const said = await after({
      how: isPath('harvest.csv', answer(200, {}, faulty)),
      index: (text) =>
        text.replace(
          /("name": "harvest\.csv",[^}]*"bytes": )\d+(,\s*"sha256": ")[0-9a-f]{64}/,
          `$1${faulty.length}$2${sum}`,
        ),
    });
    expect(said).toEqual([
      expect.stringMatching(
        /^gathered-fails-check: the trial has 1 error by the check of this site and is left out, the first: harvest\.csv:2: "13O"/,
      ),
    ]);
  });

  test.each([
    ['an id that leaves the folder', '"id": "two-lettuces"', '"id": "../../../two-lettuces"'],
    ['an id with a slash', '"id": "two-lettuces"', '"id": "a/b"'],
    ['an id of dots', '"id": "two-lettuces"', '"id": "..."'],
    ['an absolute id', '"id": "two-lettuces"', '"id": "/etc/passwd"'],
    ['an id with a backslash', '"id": "two-lettuces"', '"id": "a\\\\b"'],
    ['an id with a null byte', '"id": "two-lettuces"', '"id": "two\\u0000lettuces"'],
    [
      'an address that leaves the site',
      '"address": "two-lettuces/harvest.csv"',
      '"address": "../../other/h.csv"',
    ],
    [
      'an encoded address that leaves the site',
      '"address": "two-lettuces/harvest.csv"',
      '"address": "%2e%2e/%2e%2e/h.csv"',
    ],
    [
      'an address on another host',
      '"address": "two-lettuces/harvest.csv"',
      '"address": "//other.example.org/h.csv"',
    ],
    ['a file of this machine', '"address": "two-lettuces/harvest.csv"', '"address": "file:///etc/passwd"'],
    ['a page that is a script', '"page": "../trials/two-lettuces/"', '"page": "javascript:alert(1)"'],
    ['a sum that is none', /"sha256": "[0-9a-f]{64}"/g, '"sha256": "none"'],
    ['a version that is none', '"version": "1.1.0"', '"version": "../1.1.0"'],
  ])('%s', async (_name, from, to) => {
    const said = await after({ index: (text) => text.replaceAll(from, to) });
    expect(said.join('\n')).toMatch(
      /^gather-refused: its dataset .* is not as an index describes one, or leads out of its site or folder; it is left out$/m,
    );
  });
});

test('a file name that leaves the folder is never asked for, nor written', async () => {
  const sites = await both();
  await changeIndex(sites.there, (text) =>
    text.replaceAll('"name": "summary.csv"', '"name": "../../../../summary.csv"'),
  );
  expect(await sites.run()).toEqual([]);
  expect([...(await fileHashes(sites.here)).keys()].filter((path) => path.includes('summary'))).toEqual([]);
  expect(sites.there.requests.filter(({ path }) => path.includes('summary'))).toEqual([]);
});

describe('a run that was broken off', () => {
  test('leaves the copy that was being replaced', async () => {
    const sites = await both();
    await sites.run();
    const before = await fileHashes(join(sites.folder, id));
    // As it lies after the old copy was moved aside and before the new one took its place.
    await cp(join(sites.folder, id), join(sites.folder, `.last-${id}`), { recursive: true });
    await mkdir(join(sites.folder, `.next-${id}`));
    await rm(join(sites.folder, id), { recursive: true });
    expect(await sites.run()).toEqual([]);
    expect(await fileHashes(join(sites.folder, id))).toEqual(before);
    expect((await readdir(sites.folder)).filter((name) => name.startsWith('.'))).toEqual([]);
  });
});
