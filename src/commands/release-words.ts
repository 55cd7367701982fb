import type { CellChange } from '../compute/versions/changed-cells.ts';
import type { Level } from '../compute/versions/level-of-change.ts';
import { say } from '../model/say.ts';

/** A version raised by a level. */
export function raised(version: string, level: Level): string {
  const [major = 0, minor = 0, patch = 0] = version.split('.').map(Number);
  if (level === 'major') return `${major + 1}.0.0`;
  return level === 'minor' ? `${major}.${minor + 1}.0` : `${major}.${minor}.${patch + 1}`;
}

/** More changes than this are counted, not listed: the trial's page lists them all. */
const most = 20;

/** What a release did: its version, the cells that it changed, and what is frozen where. */
export function releaseWords(
  id: string,
  release: { version: string; changes: readonly CellChange[] | null; why: string },
  frozen: readonly string[],
): string {
  const { version, changes, why } = release;
  const cells = changes ?? [];
  const lines = cells.slice(0, most).map(({ file, row, column, before, after }) => {
    const cell = [file, row, column].filter((part) => part !== '').join('  ');
    return `  ${cell}  ${shown(before)} -> ${shown(after)}`;
  });
  return [
    say('Released {version} of {id} ({why}).', { version, id, why }),
    ...lines,
    ...(cells.length > most ? [`  ${say('and {count} more', { count: cells.length - most })}`] : []),
    say('Frozen in versions/{version}/: {files}.', { version, files: frozen.join(', ') }),
    '',
  ].join('\n');
}

function shown(value: string | null): string {
  if (value === null) return say('nothing');
  return JSON.stringify(value.length > 60 ? `${value.slice(0, 57)}...` : value);
}
