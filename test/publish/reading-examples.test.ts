import { createServer } from 'node:http';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readingExamples } from '../../src/publish/files.ts';
import { runPython } from '../support/python.ts';
import { openR, type R } from '../support/webr.ts';
import { full, library } from './example.ts';
import { published } from './published.ts';

const weighed = full.trial.harvest.flatMap((record) => record.values['fresh_weight'] ?? []);
const mean = weighed.reduce((sum, value) => sum + value, 0) / weighed.length;
const weights = published('weights.csv', full, library);
const run = promisify(execFile);

const code = (where: string, language: string): string =>
  readingExamples(where, 'fresh_weight').find((example) => example.language === language)!.code;

describe('readingExamples', () => {
  test('are three lines each', () => {
    for (const example of readingExamples('weights.csv', 'fresh_weight')) {
      expect(example.code.split('\n'), example.language).toHaveLength(3);
    }
  });

  describe('in R', () => {
    let r: R;
    beforeAll(async () => (r = await openR()));
    afterAll(() => {
      r.close();
    });
    test('read the file as pasted', async () => {
      await r.writeFile('/home/web_user/weights.csv', weights);
      const result = await r.run(code('/home/web_user/weights.csv', 'R'));
      expect(result).toBeCloseTo(mean, 10);
    });
  });

  test('in Python read the file as pasted, and the address', async () => {
    const bytes = new TextEncoder().encode(weights);
    expect(Number(await runPython(code('weights.csv', 'Python'), { 'weights.csv': bytes }))).toBeCloseTo(
      mean,
      10,
    );
    const address = 'https://example.org/data/every-field-2025/weights.csv';
    expect(Number(await runPython(code(address, 'Python'), {}, { address, bytes }))).toBeCloseTo(mean, 10);
  });

  test('in JavaScript read the address as pasted, in Node', async () => {
    const server = createServer((_request, response) => response.end(weights));
    await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
    const folder = mkdtempSync(join(tmpdir(), 'reading-'));
    try {
      const { port } = server.address() as AddressInfo;
      const script = join(folder, 'read.mjs');
      writeFileSync(script, code(`http://127.0.0.1:${String(port)}/weights.csv`, 'JavaScript'));
      const { stdout } = await run(process.execPath, [script]);
      expect(Number(stdout)).toBeCloseTo(mean, 10);
    } finally {
      rmSync(folder, { recursive: true });
      await new Promise((closed) => server.close(closed));
    }
  });
});
