import { join } from 'node:path';
import { expect, test, vi } from 'vitest';
import { ensureBrowser, findBrowser } from '../../src/commands/browser.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

test('takes the browser that CHROME_PATH names', async () => {
  const path = join(await temporaryFolder({ browser: '' }), 'browser');
  vi.stubEnv('CHROME_PATH', path);
  expect(ensureBrowser()).toEqual({ path });
});

test('says so where CHROME_PATH names nothing, rather than take another', () => {
  vi.stubEnv('CHROME_PATH', '/no/such/browser');
  expect(findBrowser()).toBeUndefined();
  expect(ensureBrowser()).toEqual({
    instruction: 'CHROME_PATH names /no/such/browser, where there is no file.',
  });
});

test.skipIf(process.platform === 'win32')('finds a browser in the PATH', async () => {
  const folder = await temporaryFolder({ chromium: '' });
  vi.stubEnv('CHROME_PATH', '');
  vi.stubEnv('PATH', folder);
  expect(findBrowser()).toBe(join(folder, 'chromium'));
});
