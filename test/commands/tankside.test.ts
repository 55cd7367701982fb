import { join } from 'node:path';
import { expect, test } from 'vitest';
import { usage } from '../../src/commands/usage.ts';
import { demo, runCommand } from '../support/site.ts';

const wrong = [
  { args: [], says: 'A verb is missing.' },
  { args: ['nonsense'], says: 'There is no verb "nonsense".' },
  { args: ['constructor'], says: 'There is no verb "constructor".' },
  { args: ['serve', '--nonsense'], says: "Unknown option '--nonsense'" },
  { args: ['check', '--jsno'], says: "Unknown option '--jsno'\n\n" },
  { args: ['serve', 'folder'], says: "Unexpected argument 'folder'" },
  { args: ['serve', '--port', '99999'], says: '--port is a number from 0 to 65535; found "99999".' },
  { args: ['bench', 'no-such-bench'], says: 'No bench has a name with "no-such-bench" in it.' },
];

test.each(wrong)('answers "$args" with the usage on standard error and 2', async ({ args, says }) => {
  const { code, stdout, stderr } = await runCommand(args);
  expect(stderr).toContain(says);
  expect(stderr).toContain(usage);
  expect(stdout).toBe('');
  expect(code).toBe(2);
});

test.each([['help'], ['--help'], ['serve --help']])('prints the usage when asked: %s', async (line) => {
  const { code, stdout, stderr } = await runCommand(line.split(' '));
  expect(stdout).toBe(usage);
  expect(stderr).toBe('');
  expect(code).toBe(0);
});

test('says in one sentence that there is nothing to serve', async () => {
  const { code, stderr } = await runCommand(['serve'], { TANKSIDE_OUT: '/no/such/folder' });
  expect(stderr).toBe('There is no built site yet. Build it with `npm run build`, or use `npm start`.\n');
  expect(code).toBe(1);
});

const notContent = [
  {
    folder: '/no/such/folder',
    says: 'TANKSIDE_CONTENT names "/no/such/folder", and there is no such folder.',
  },
  { folder: join(demo, 'site.yaml'), says: 'which is a file; a folder is expected.' },
  {
    folder: join(demo, 'trials', 'four-lettuces-2024'),
    says: 'which is one trial; name the folder that holds',
  },
];

test.each(notContent)('says what is wrong with the content folder $folder', async ({ folder, says }) => {
  for (const verb of ['build', 'dev']) {
    const { code, stderr } = await runCommand([verb], { TANKSIDE_CONTENT: folder, TANKSIDE_OUT: '/no/such' });
    expect(stderr).toContain(says);
    expect(code).toBe(2);
  }
});
