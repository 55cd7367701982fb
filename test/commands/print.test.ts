import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
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

  test('says in a sentence that there is no browser', async () => {
    const { code, output } = await runCommand(['print', 'four-lettuces-2024'], { CHROME_PATH: '/nowhere' });
    expect(code).toBe(1);
    expect(output).toMatch(/^Printing needs a Chromium, Chrome or Edge, and none was found\./m);
  });

  test.each([
    [['print'], 'One trial is expected'],
    [['print', 'no-such-trial'], 'There is no trial "no-such-trial"'],
    [['print', 'four-lettuces-2024', '--paper', 'a5'], '--paper is letter or a4'],
  ])('%j is a wrong use', async (args, words) => {
    const { code, output } = await runCommand(args);
    expect(code).toBe(2);
    expect(output).toContain(words);
  });
});
