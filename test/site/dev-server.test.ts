import { spawn } from 'node:child_process';
import { cp, mkdtemp, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const id = 'four-lettuces-2024';
let folder = '';
let said = '';
let end: () => Promise<unknown>;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'tankside-dev-'));
  for (const name of ['site.yaml', 'cultivars.yaml', `trials/${id}`])
    await cp(join(root, 'content', name), join(folder, name), { recursive: true });
  await rm(join(folder, 'trials', id, 'factsheet.mdx'));
  const child = spawn(process.execPath, [join(root, 'src/commands/tankside.ts'), 'dev'], {
    env: {
      ...process.env,
      TANKSIDE_CONTENT: folder,
      ASTRO_TELEMETRY_DISABLED: '1',
      NODE_ENV: '',
      VITEST: '',
    },
  });
  const ended = new Promise((done) => child.once('exit', done));
  end = () => (child.kill('SIGINT'), ended);
  for (const stream of [child.stdout, child.stderr])
    stream.setEncoding('utf8').on('data', (text: string) => (said += text));
  await vi.waitUntil(() => address() !== '', { timeout: 60_000 });
}, 70_000);

afterAll(async () => {
  await end();
  await rm(folder, { recursive: true, force: true });
});

const address = (): string => /http:\/\/localhost:\d+/.exec(said)?.[0] ?? '';
const statusOf = async (path: string): Promise<number> => (await fetch(`${address()}${path}`)).status;
const inTime = { timeout: 20_000, interval: 250 };

it(
  'shows a trial again once its slip is mended, and one under its new name',
  { timeout: 120_000 },
  async () => {
    const page = `/trials/${id}/`;
    const harvest = join(folder, 'trials', id, 'harvest.csv');
    const sound = await readFile(harvest, 'utf8');
    await expect.poll(() => statusOf(page), inTime).toBe(200);
    await writeFile(harvest, sound.replace('145', '14S'));
    await expect.poll(() => statusOf(page), inTime).toBe(404);
    expect(await (await fetch(address())).text()).toContain('weight-not-a-number');
    await writeFile(harvest, sound);
    await expect.poll(() => statusOf(page), inTime).toBe(200);
    expect(await (await fetch(`${address()}/data/${id}/harvest.csv`)).text()).toBe(sound);
    await rename(join(folder, 'trials', id), join(folder, 'trials', 'renamed'));
    await expect.poll(() => statusOf('/trials/renamed/'), inTime).toBe(200);
    expect(await statusOf(page)).toBe(404);
  },
);
