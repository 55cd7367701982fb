import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser } from './browser.ts';
import { faintTexts } from './page-contrast.ts';

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launchBrowser();
  page = await browser.newPage();
});
afterAll(() => browser.close());

test('Finds the text that is too faint for the ground it stands on, and no other', async () => {
  await page.setContent(`<body style="background:#fff;color:#000">
    <p>dark enough</p>
    <p style="color:#777">grey on white</p>
    <div style="background:#000"><button style="background:none;color:#666">grey on black</button></div>
    <p hidden style="color:#eee">not shown</p>`);
  expect(await faintTexts(page, 7)).toEqual([
    '“grey on white” has 4.48 (#777777 on #ffffff)',
    '“grey on black” has 3.66 (#666666 on #000000)',
  ]);
  expect(await faintTexts(page, 3)).toEqual([]);
});

test('Does not call a page without a text, or one whose colours let others through, sound', async () => {
  await page.setContent('<body></body>');
  await expect(faintTexts(page, 7)).rejects.toThrow('no text');
  await page.setContent('<p style="color:rgb(0 0 0 / 50%)">half</p>');
  await expect(faintTexts(page, 7)).rejects.toThrow('not plain');
});
