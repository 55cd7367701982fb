import { describe, expect, it } from 'vitest';
import { editRelease } from '../../src/read/edit-release.ts';
import { readYaml } from '../../src/read/yaml.ts';

const release = { version: '1.2.0', date: '2026-01-15', note: 'T3 2 2: "170", typed as 107 # swapped' };
const line = '{version: 1.2.0, date: 2026-01-15, note: "T3 2 2: \\"170\\", typed as 107 # swapped"}';

describe('editRelease', () => {
  it('adds a line after the last release and leaves every other character as it was', () => {
    const before = [
      '# the autumn trial',
      "version: '1.1.0'   # raise by release",
      'title:   Two   lettuces',
      'releases:',
      '  # oldest first',
      '  - {version: 1.0.0, date: 2025-11-02}',
      '  - version: 1.1.0',
      '    date: 2025-11-20',
      '    note: >-',
      '      One weight,',
      '      corrected.',
      '# the end',
      'licence: CC0-1.0   # free',
      '',
    ];
    const after = [...before];
    after[1] = "version: '1.2.0'   # raise by release";
    after.splice(11, 0, `  - ${line}`);
    expect(editRelease(before.join('\n'), release)).toBe(after.join('\n'));
    expect(editRelease(before.join('\r\n'), release)).toBe(after.join('\r\n'));
  });

  it.each([
    [
      'a comment behind the last release',
      'version: 1.0.0\nreleases:\n- {version: 1.0.0} # first\nlicence: x\n',
      `version: 1.2.0\nreleases:\n- {version: 1.0.0} # first\n- ${line}\nlicence: x\n`,
    ],
    [
      'no last line break',
      'version: 1.0.0\nreleases:\n  - version: 1.0.0',
      `version: 1.2.0\nreleases:\n  - version: 1.0.0\n  - ${line}\n`,
    ],
    [
      'releases in brackets',
      'version: 1.0.0\nreleases: [{version: 1.0.0}]\n',
      `version: 1.2.0\nreleases: [{version: 1.0.0}, ${line}]\n`,
    ],
    ['no releases', 'version: 1.0.0 # x', `version: 1.2.0 # x\nreleases:\n  - ${line}\n`],
    [
      'releases first',
      'releases:\n  - {version: 1.0.0}\nversion: "1.0.0"\n',
      `releases:\n  - {version: 1.0.0}\n  - ${line}\nversion: "1.2.0"\n`,
    ],
  ])('heeds %s', (_, before, after) => {
    expect(editRelease(before, release)).toBe(after);
  });

  it('keeps JSON JSON', () => {
    for (const releases of [[], [{ version: '1.0.0', date: '2025-11-02' }], undefined]) {
      const before = { version: '1.0.0', title: 'Two lettuces', releases };
      const after = JSON.parse(editRelease(JSON.stringify(before, null, 2), release)) as typeof before;
      expect(after).toEqual({ ...before, version: '1.2.0', releases: [...(releases ?? []), release] });
    }
  });

  it('keeps the comments of forms that it does not know', () => {
    const text = editRelease('version: &v 1.0.0 # here\nreleases: # none yet\n', release);
    expect(text).toContain('# here');
    expect(readYaml(text).value).toEqual({ version: '1.2.0', releases: [release] });
  });
});
