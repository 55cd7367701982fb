import { cp, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { runCommand } from '../support/site.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

async function copyOf(folder: string): Promise<string> {
  const copy = join(await temporaryFolder(), 'two-lettuces');
  await cp(folder, copy, { recursive: true });
  return copy;
}

describe('sheet', () => {
  test('writes a first fact sheet that check has nothing to say of, and leaves one that is there', async () => {
    const trial = await copyOf('content/trials/sweet-basil-2025');
    await rm(join(trial, 'factsheet.mdx'), { force: true });
    const first = await runCommand(['sheet', trial]);
    expect(first.code).toBe(0);
    const written = await readFile(join(trial, 'factsheet.mdx'), 'utf8');
    expect(written).toMatch(/^## The bottom line\n\n<Finding \/>\n/);
    const checked = await runCommand(['check', trial]);
    expect(checked.stdout).not.toContain('factsheet.mdx');
    const again = await runCommand(['sheet', trial]);
    expect(again.code).toBe(1);
    expect(again.output).toContain('factsheet.mdx is there already and stays as it is');
    expect(await readFile(join(trial, 'factsheet.mdx'), 'utf8')).toBe(written);
  });

  test('prints it with --print and writes nothing', async () => {
    const { code, stdout } = await runCommand(['sheet', 'test/broken/sheet-no-value', '--print']);
    expect(code).toBe(0);
    expect(stdout).toContain('<Treatments />');
  });

  test('reports the errors of a trial that has some', async () => {
    const { code, output } = await runCommand(['sheet', 'test/broken/zero-without-status']);
    expect(code).toBe(1);
    expect(output).toContain('zero-without-status');
  });
});
