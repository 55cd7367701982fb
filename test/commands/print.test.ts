import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { growingId, writeGrowingContent } from '../support/growing-trial.ts';
import { pdfStructure } from '../support/pdf-structure.ts';
import { runCommand } from '../support/site.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

describe('print', () => {
  test('writes the PDF of a fact sheet on the paper that is asked for', async () => {
    const out = join(await temporaryFolder(), 'sheet.pdf');
    const { code, output } = await runCommand([
      'print',
      'four-lettuces-2024',
      '--paper',
      'letter',
      '--out',
      out,
    ]);
    expect(output).toContain(`Printed ${out}`);
    expect(code).toBe(0);
    const pdf = await readFile(out);
    expect(pdf.toString('latin1')).toMatch(/\/MediaBox \[0 0 612 792\]/);
    expect(pdfStructure(pdf).title).toContain('Four lettuces, one tank each');
  }, 120_000);

  test('writes weighing sheets and pot labels, a container to a sheet and the labels on the grid asked for', async () => {
    const folder = await temporaryFolder();
    await writeGrowingContent(folder);
    const pages = async (...args: string[]): Promise<{ count: number; boxes: string[] }> => {
      const out = join(folder, `${args.join('')}.pdf`);
      const { code, output } = await runCommand(['print', growingId, '--out', out, ...args], {
        TANKSIDE_CONTENT: folder,
      });
      expect([code, output]).toEqual([0, expect.stringContaining('Printed')]);
      const text = (await readFile(out)).toString('latin1');
      const boxes = [...text.matchAll(/\/MediaBox \[([^\]]*)\]/g)].map(([, box]) => box!);
      return { count: boxes.length, boxes: [...new Set(boxes)] };
    };
    // 24 plants take two pages on either paper, for each of four tanks.
    expect(await pages('--of', 'weighing-sheets')).toEqual({
      count: 8,
      boxes: [expect.stringMatching(/^0 0 59[45]\S* 84[12]/)],
    });
    expect(await pages('--of', 'weighing-sheets', '--paper', 'letter')).toEqual({
      count: 8,
      boxes: ['0 0 612 792'],
    });
    // 96 labels, 40 to a page and 15 to a page.
    expect((await pages('--of', 'labels', '--grid', '4x10')).count).toBe(3);
    expect((await pages('--of', 'labels', '--grid', '3x5', '--paper', 'letter')).count).toBe(7);
  }, 240_000);

  test('says that a finished trial has nothing left to weigh', async () => {
    const { code, output } = await runCommand(['print', 'four-lettuces-2024', '--of', 'labels']);
    expect(code).toBe(1);
    expect(output).toContain('is finished, so nothing is left to be weighed or labelled');
  });

  test('says in a sentence that there is no browser', async () => {
    const { code, output } = await runCommand(['print', 'four-lettuces-2024'], { CHROME_PATH: '/nowhere' });
    expect(code).toBe(1);
    expect(output).toMatch(/^Printing needs a Chromium, Chrome or Edge, and none was found\./m);
  });

  test.each([
    [['print'], 'One trial is expected'],
    [['print', 'no-such-trial'], 'There is no trial "no-such-trial"'],
    [['print', 'four-lettuces-2024', '--paper', 'a5'], '--paper is letter or a4'],
    [['print', 'four-lettuces-2024', '--of', 'poster'], '--of is fact-sheet, weighing-sheets, labels'],
    [['print', 'four-lettuces-2024', '--of', 'labels', '--grid', '3'], 'such as 3x8; found "3"'],
    [['print', 'four-lettuces-2024', '--grid', '3x8'], '--grid is for --of labels'],
  ])('%j is a wrong use', async (args, words) => {
    const { code, output } = await runCommand(args);
    expect(code).toBe(2);
    expect(output).toContain(words);
  });
});
