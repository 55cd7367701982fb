/** Finds the Chromium that the browser tests drive, and installs one where that can be done unasked. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge'];

const macPlaces = ['Chromium', 'Google Chrome', 'Microsoft Edge'].map(
  (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
);

const windowsPlaces = ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((variable) => {
  const folder = process.env[variable];
  if (folder === undefined) return [];
  return [
    join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
    join(folder, 'Chromium', 'Application', 'chrome.exe'),
    join(folder, 'Microsoft', 'Edge', 'Application', 'msedge.exe'),
  ];
});

/** The path of a Chromium, Chrome or Edge on this machine: CHROME_PATH, then the well-known places. */
export function findBrowser(): string | undefined {
  const named = process.env['CHROME_PATH'];
  if (named) return existsSync(named) ? named : undefined;
  if (process.platform === 'win32') return windowsPlaces.find((place) => existsSync(place));
  const inPath = (process.env['PATH'] ?? '').split(delimiter).flatMap((folder) => {
    return names.map((name) => join(folder, name));
  });
  const usual = names.map((name) => join('/usr/bin', name));
  return [...inPath, ...usual, ...macPlaces].find((place) => existsSync(place));
}

/**
 * The browser's path; on Debian and its like, as root, it is installed where missing.
 * @returns the path, or what the person has to do
 */
export function ensureBrowser(): { path: string } | { instruction: string } {
  const found = findBrowser();
  if (found !== undefined) return { path: found };
  const named = process.env['CHROME_PATH'];
  if (named) return { instruction: `CHROME_PATH names ${named}, where there is no file.` };
  if (mayInstall()) {
    process.stderr.write('Installing Chromium by apt-get (once; a minute or two) ...\n');
    const failed = installChromium();
    const installed = findBrowser();
    if (installed !== undefined) return { path: installed };
    if (failed !== undefined) return { instruction: `${failed}\n${INSTRUCTION}` };
  }
  return { instruction: INSTRUCTION };
}

const INSTRUCTION =
  'The tests need a Chromium, Chrome or Edge. Install one by your system’s package manager ' +
  '(Debian and its like: apt-get install chromium), or set CHROME_PATH to where one is, and try again.';

function mayInstall(): boolean {
  return process.getuid?.() === 0 && existsSync('/etc/debian_version') && existsSync('/usr/bin/apt-get');
}

function installChromium(): string | undefined {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const args of [['update'], ['install', '-y', '--no-install-recommends', 'chromium']]) {
    const { status, stderr } = spawnSync('apt-get', ['-q', ...args], {
      env,
      encoding: 'utf8',
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    if (status !== 0) return `apt-get ${args[0]} failed: ${stderr.trim().split('\n').at(-1) ?? ''}`;
  }
  return undefined;
}
