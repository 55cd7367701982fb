import { cp, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { StaticServer } from '../../src/commands/static-server.ts';
import { axeCheck } from '../support/axe.ts';
import { launchBrowser, openPage, serveSite, type View } from '../support/browser.ts';
import { overflow } from '../support/overflow.ts';
import { pageWeight } from '../support/page-weight.ts';
import { builtSite, demo } from '../support/site.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';
import { unlevelInputs } from '../support/unlevel-inputs.ts';

const path = 'solution/';
const trial = 'autumn-lettuce-2025';

describe('the calculator', () => {
  let browser: Browser;
  let server: StaticServer;

  beforeAll(async () => {
    const { dist } = await builtSite();
    browser = await launchBrowser();
    server = await serveSite(dist);
  });
  afterAll(async () => {
    await browser.close();
    await server.close();
  });

  /** Opens the page, does something on it, and finds nothing that went wrong meanwhile. */
  async function on(search: string, work: (page: Page) => Promise<void>, view: View = {}): Promise<void> {
    const { context, page, faults } = await openPage(browser, server, view);
    await page.goto(server.url + path + search);
    await work(page);
    await context.close();
    expect(faults).toEqual([]);
  }

  /** Types over what is in a field, and leaves it. */
  async function type(page: Page, label: string, text: string, salt?: number): Promise<void> {
    const within = salt === undefined ? page : page.getByRole('group', { name: `Salt ${String(salt)}` });
    const field = within.getByLabel(label).and(page.locator('input'));
    await field.fill(text);
    await field.blur();
  }

  /** A number of the answers by its row and its place in it. */
  async function cell(page: Page, row: string, column: number): Promise<string> {
    const cells = page.locator('.answers tr', {
      has: page.getByRole('rowheader', { name: row, exact: true }),
    });
    return (await cells.first().locator('td').nth(column).innerText()).replaceAll('\u00a0', ' ');
  }

  test.each([1280, 900, 700, 390])(
    'sets inputs that stand beside one another level at %i px, however long their labels are',
    async (width) => {
      await on(
        '',
        async (page) => {
          // As in a longer language, or with the reader's own text size.
          await page.getByLabel('Stock: 1 part in').evaluate((input: HTMLInputElement) => {
            input.labels![0]!.textContent = 'Stock solution: 1 part of it in so many';
          });
          await page
            .locator('.salt label')
            .nth(1)
            .evaluate((label) => {
              label.textContent = 'Amount of it that goes in, g/L';
            });
          expect(await unlevelInputs(page)).toEqual([]);
          const tops = await page
            .locator('.calculator :is(input, select):visible')
            .evaluateAll((all) => all.map((each) => each.getBoundingClientRect().top));
          for (const button of ['#add-salt', '.salt .remove']) {
            const { y, height } = (await page.locator(button).first().boundingBox())!;
            const over = tops.filter((top) => Math.abs(top - y) < height);
            expect(over.filter((top) => Math.abs(top - y) > 1)).toEqual([]);
          }
        },
        { width },
      );
    },
  );

  test('cuts no name that it fills in itself, on a wide screen', async () => {
    await on('', async (page) => {
      const cut = await page
        .locator('main input:visible')
        .evaluateAll((all) =>
          all
            .filter((each) => each.scrollWidth > each.clientWidth)
            .map((each) => (each as HTMLInputElement).value),
        );
      expect(await page.inputValue('#title')).toContain('without its trace elements');
      expect(cut).toEqual([]);
    });
  });

  test('starts with a published solution and reckons what is printed for it', async () => {
    await on('', async (page) => {
      // Hoagland and Arnon (1950), No. 1: N 210, P 31, K 235, Ca 200, Mg 49, S 64 mg/L.
      await expect(page.getByRole('status').innerText()).resolves.toMatch(
        /^N 210, P 31, K 235, Ca 200, Mg 49, S 64 mg\/L; EC /,
      );
      expect(await cell(page, 'Calcium nitrate', 0)).toBe('59.05');
    });
  });

  test('reckons anew as it is typed: the worked example of an extension sheet', async () => {
    await on('', async (page) => {
      await page.getByLabel('Start from').selectOption('');
      await type(page, 'Salt', 'Calcium nitrate', 1);
      await type(page, 'Amount', '0.645', 1);
      // Typed and not left: the answer comes by itself.
      await page.getByLabel('Label, %').pressSequentially('15.5-0-0, Ca 19');
      await page.waitForFunction(() =>
        document.querySelector('#told')!.textContent.startsWith('N 100, P 0, K 0, Ca 123,'),
      );
      // N. Mattson (2018): 645 mg/L of it give 100 mg/L N and 122.6 Ca.
      expect(await cell(page, 'Calcium, Ca', 0)).toBe('122.6');
      expect(await cell(page, 'Nitrogen, N, in all', 0)).toBe('100.0');
      expect(await cell(page, 'of it as nitrate', 0)).toBe('unknown');
    });
  });

  test('starts from a trial by its address, and says what to weigh for its container', async () => {
    await on(`?trial=${trial}`, async (page) => {
      expect(await page.getByLabel('Start from').inputValue()).toBe(trial);
      expect(await page.getByLabel('Already in the water').inputValue()).toBe('Ca 20, Mg 6');
      // 50 L of 0.66 g/L; stock A 1 in 100: 66 g, 1 plus 100: 66.66 g to the litre.
      expect(await cell(page, 'Calcium nitrate', 0)).toBe('33.0');
      const stock = page.locator('#answers').getByRole('group', { name: /^Stock A/ });
      expect(await stock.locator('td').allInnerTexts()).toEqual(['66.0', '66.7']);
      // 20 + 0.66 x 190
      expect(await cell(page, 'Calcium, Ca', 0)).toBe('145.4');
    });
  });

  test('another volume, ratio and bottle give other weights; the measured EC stands beside the estimates', async () => {
    await on(`?trial=${trial}`, async (page) => {
      await type(page, 'Solution wanted', '80');
      await type(page, 'Stock: 1 part in', '200');
      await type(page, 'Stock to make', '0.5');
      await type(page, 'Measured EC', '3');
      expect(await cell(page, 'Calcium nitrate', 0)).toBe('52.8');
      const stock = page.locator('#answers').getByRole('group', { name: /^Stock A/ });
      // 0.66 x 200 x 0.5 and 0.66 x 201 x 0.5
      expect(await stock.locator('td').allInnerTexts()).toEqual(['66.0', '66.3']);
      expect(await page.locator('.look-out').innerText()).toContain(
        'The measured EC of 3 mS/cm lies far above',
      );
      expect(await page.getByRole('status').innerText()).toContain('1 thing to look out for');
    });
  });

  test('warns of calcium and sulfate in one stock', async () => {
    await on('', async (page) => {
      await type(page, 'Stock', 'A', 4);
      expect(await page.locator('.look-out').innerText()).toContain(
        'Calcium (Calcium nitrate) and sulfate (Magnesium sulfate) share stock A',
      );
    });
  });

  test('US units: the fields are turned into them, and the weights are in ounces', async () => {
    await on(`?trial=${trial}`, async (page) => {
      await page.getByLabel('Amounts in').selectOption('oz/100gal');
      await page.getByLabel('Volumes in').selectOption('gal');
      const base = page.getByRole('group', { name: 'Salt 1' });
      // 1 g/L: 378.5411784 g or 13.3526 oz in 100 US gallons; 50 L are 13.2086 US gallons.
      expect(await base.getByLabel('Amount, oz/100 gal').inputValue()).toBe('13.3526');
      expect(await page.getByLabel('Solution wanted').inputValue()).toBe('13.2086');
      await page.getByRole('button', { name: 'US', exact: true }).click();
      // 50 g
      expect(await cell(page, 'Base 5-11-26', 0)).toBe('1.76');
      await page.getByLabel('Amounts in').selectOption('g/L');
      expect(await base.getByLabel('Amount, g/L').inputValue()).toBe('1');
    });
  });

  test('a reader who chose US units finds the fields in them', async () => {
    const { context, page } = await openPage(browser, server);
    await page.goto(server.url);
    await page.getByRole('button', { name: 'US', exact: true }).click();
    await page.goto(`${server.url}${path}?trial=${trial}`);
    expect(await page.getByLabel('Volumes in').inputValue()).toBe('gal');
    expect(await page.getByLabel('Solution wanted').inputValue()).toBe('13.2086');
    await context.close();
  });

  test('an address that is passed on opens the same card', async () => {
    let address = '';
    let told = '';
    await on('', async (page) => {
      await type(page, 'Amount', '0.9', 2);
      await type(page, 'Already in the water', 'Ca 31, HCO3 90');
      await type(page, 'Name on the card', 'Tank <b>3</b> & 4');
      address = new URL(page.url()).search;
      told = await page.getByRole('status').innerText();
    });
    await on(address, async (page) => {
      expect(await page.getByRole('status').innerText()).toBe(told);
      expect(await page.getByLabel('Already in the water').inputValue()).toBe('Ca 31, HCO3 90');
      expect(await page.locator('#card').innerText()).toBe('Mixing card: Tank <b>3</b> & 4');
      expect(await page.locator('#answers b').count()).toBe(0);
    });
  });

  test('an address with anything at all in it is shown as text and does nothing', async () => {
    const hostile = '<img src=x onerror=alert(1)>';
    const query = new URLSearchParams([
      ['trial', hostile],
      ['title', hostile],
      ['name', hostile],
      ['amount', '1'],
      ['label', 'K 10'],
      ['stock', hostile],
      ['volume', '10'],
      ['ratio', '100'],
    ]);
    await on(`?${query.toString()}`, async (page) => {
      expect(await page.locator('#answers').innerText()).toContain(hostile);
      expect(await page.locator('#answers img').count()).toBe(0);
      expect(await page.getByLabel('Start from').inputValue()).toBe('');
    });
  });

  test('back and forward go through what was done', async () => {
    await on('', async (page) => {
      const volume = page.getByLabel('Solution wanted');
      await type(page, 'Solution wanted', '60');
      await type(page, 'Solution wanted', '75');
      await page.getByLabel('Start from').selectOption(trial);
      await page.goBack();
      expect(await volume.inputValue()).toBe('75');
      expect(await cell(page, 'Calcium nitrate', 0)).toBe('88.6');
      await page.goBack();
      expect(await volume.inputValue()).toBe('60');
      await page.goBack();
      expect(await volume.inputValue()).toBe('50');
      await page.goForward();
      expect(await volume.inputValue()).toBe('60');
    });
  });

  test('says beside a field what is not understood in it, and reckons nothing meanwhile', async () => {
    await on('', async (page) => {
      const amount = page.getByRole('group', { name: 'Salt 1' }).getByLabel('Amount');
      await type(page, 'Amount', '1,181', 1);
      await type(page, 'Already in the water', 'calcium 20');
      expect(await amount.getAttribute('aria-invalid')).toBe('true');
      const described = (await amount.getAttribute('aria-describedby'))!.split(' ')[0]!;
      expect(await page.locator(`#${described}`).innerText()).toBe(
        '"1,181" has a comma: write 1.181, or 1181 where it parts the thousands',
      );
      expect(await page.locator('#fault-water').innerText()).toBe('"calcium" is not known: did you mean Ca?');
      expect(await page.locator('#answers').isVisible()).toBe(false);
      expect(await page.getByRole('status').innerText()).toContain('2 fields are not understood');
      await type(page, 'Amount', '1.181', 1);
      await type(page, 'Already in the water', 'Ca 20');
      expect(await page.locator('.fault').count()).toBe(0);
      expect(await page.locator('[aria-invalid]').count()).toBe(0);
      expect(await cell(page, 'Calcium, Ca', 0)).toBe('220.4');
    });
  });

  test('salts are added and removed by the keyboard, and the cursor stays among them', async () => {
    await on('', async (page) => {
      await page.getByRole('button', { name: 'Add a salt' }).press('Enter');
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('name-5');
      await page.keyboard.type('Boric acid');
      await page.keyboard.press('Tab');
      await page.keyboard.type('0.003');
      await page.keyboard.press('Enter');
      expect(await cell(page, 'Boric acid', 0)).toBe('0.150');
      await page.getByRole('button', { name: 'Remove salt 1' }).press('Enter');
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('name-1');
      expect(await page.getByRole('group', { name: /^Salt \d+$/ }).count()).toBe(4);
      expect(await cell(page, 'Calcium, Ca', 0)).toBe('0.0');
    });
  });

  test('prints a mixing card: weights, stocks and cautions, no fields and no other recipes', async () => {
    await on(
      `?trial=${trial}`,
      async (page) => {
        await page.emulateMedia({ media: 'print' });
        expect(await page.locator('#calculator').isVisible()).toBe(false);
        expect(await page.locator('.recipes').isVisible()).toBe(false);
        for (const shown of [
          'Weighed straight into the tank',
          'Stock A',
          'Stock B',
          'Mixed by',
          'Take care.',
        ])
          expect(await page.getByText(shown).first().isVisible(), shown).toBe(true);
        expect(await page.getByText('Never pour A into B').isVisible()).toBe(true);
        // The recipe holds no acid.
        expect(await page.getByText('Acids and alkalis burn').isVisible()).toBe(false);
        expect(await overflow(page)).toEqual([]);
      },
      { width: 680 },
    );
  });

  test('without a script the recipes of the trials are there, reckoned, and it is said what is missing', async () => {
    await on(
      '',
      async (page) => {
        expect(await page.getByText('The calculator of this page needs a script').isVisible()).toBe(true);
        expect(await page.locator('#calculator').isVisible()).toBe(false);
        const recipe = page.locator('.recipe', {
          has: page.locator(`a[href$="/trials/${trial}/#how-grown"]`),
        });
        // The trials of this recipe differ in their containers; the first of them has 30 L.
        const row = recipe.getByRole('row', { name: /^Calcium nitrate/ });
        expect(await row.nth(1).locator('td').first().innerText()).toContain('19.8');
        await recipe.getByText('What this recipe amounts to').click();
        expect(await recipe.getByRole('row', { name: /^Calcium, Ca/ }).innerText()).toContain('145.4');
      },
      { javaScript: false },
    );
  });

  test.each(['light', 'dark'] as const)(
    'axe finds nothing in it, %s, with and without faults',
    async (colours) => {
      for (const width of [320, 1280]) {
        await on(
          `?trial=${trial}`,
          async (page) => {
            expect(await axeCheck(page)).toEqual([]);
            await type(page, 'Amount', '1,5', 1);
            await type(page, 'Solution wanted', 'much');
            expect(await page.locator('.fault').count()).toBe(2);
            expect(await axeCheck(page)).toEqual([]);
            expect(await overflow(page)).toEqual([]);
          },
          { width, colours },
        );
      }
    },
  );

  test('its scripts weigh under 25 kB', async () => {
    const { scripts } = await pageWeight(browser, server, path);
    expect(scripts).toBeGreaterThan(1000);
    expect(scripts).toBeLessThan(25_000);
  });

  test('speaks the language of the site', async () => {
    const folder = await temporaryFolder();
    await cp(demo, folder, { recursive: true });
    const file = join(folder, 'site.yaml');
    const settings = await readFile(file, 'utf8');
    await writeFile(file, settings.replace(/^language:.*$/m, 'language: es'));
    const spanish = await serveSite((await builtSite(folder)).dist);
    const { context, page, faults } = await openPage(browser, spanish);
    await page.goto(`${spanish.url}${path}?trial=${trial}`);
    await page.locator('#card', { hasText: 'Ficha de mezcla' }).waitFor();
    expect(await page.getByRole('status').innerText()).toContain('nada a lo que atender');
    expect(await cell(page, 'Calcio, Ca', 0)).toBe('145,4');
    await type(page, 'Solución deseada', '60,5');
    expect(await page.locator('.fault').innerText()).toContain('tiene una coma decimal: escriba 60.5');
    expect(await axeCheck(page)).toEqual([]);
    await context.close();
    await spanish.close();
    expect(faults).toEqual([]);
  });

  test('a trial leads to its recipe here', async () => {
    const { context, page } = await openPage(browser, server);
    await page.goto(`${server.url}trials/${trial}/`);
    await page.getByRole('link', { name: 'Start from this recipe' }).click();
    await page.waitForURL(/solution\/\?trial=/);
    expect(await page.getByLabel('Start from').inputValue()).toBe(trial);
    await context.close();
  });
});
