import { expect, test } from 'vitest';
import { basePath } from '../../src/commands/base-path.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const cases = [
  { html: '<link rel="canonical" href="https://example.org/garden/">', base: '/garden/' },
  { html: '<link href="https://example.org/" rel="canonical">', base: '/' },
  { html: '<link rel="stylesheet" href="/garden/a.css">', base: '/' },
  { html: '<link rel="canonical" href="not an address">', base: '/' },
];

test.each(cases)('reads $base off $html', async ({ html, base }) => {
  expect(await basePath(await temporaryFolder({ 'index.html': html }))).toBe(base);
});
