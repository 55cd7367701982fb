import { expect, test } from 'vitest';
import { checkTrial } from '../../src/check/check-trial.ts';
import { readTrialFolder } from '../../src/read/folder.ts';

const folder = new URL('../../content/trials/four-lettuces-2024', import.meta.url).pathname;

test.each(['checks', 'Autumn Lettuce', 'ab', 'four_lettuces', '../four'])(
  'a folder named %j is no trial id',
  async (id) => {
    const files = await readTrialFolder(folder);
    const { trial, problems } = checkTrial(id, files, { cultivars: null, today: '2026-11-25', prefix: '' });
    expect(trial).toBeNull();
    expect(problems.map(({ rule }) => rule)).toContain('trial-id');
  },
);
