/** What a person is shown of a fault that the machine reports by a code: what could not be done, where, and what to do. */
export function inPlainWords(error: Error): string | null {
  if (!('code' in error) || typeof error.code !== 'string') return null;
  if ('syscall' in error && (error.syscall === 'listen' || error.syscall === 'getaddrinfo'))
    return ofServer[error.code] ?? null;
  const say = sentences[error.code];
  return say === undefined ? null : say(placeOf(error));
}

/** The folder or file that was written to, or else the one read. */
function placeOf(error: Error): string {
  const { dest, path } = error as { dest?: unknown; path?: unknown };
  const place = [dest, path].find((one) => typeof one === 'string');
  return place === undefined ? 'a file' : `"${place}"`;
}

const noLeave = (place: string): string =>
  `${place} cannot be written or read: the permissions do not allow it. Change them, or take another folder.`;
const noFolder = (place: string): string =>
  `${place} cannot be made: a file stands where a folder is needed. Take another folder.`;

const sentences: Readonly<Record<string, (place: string) => string>> = {
  ENOSPC: (place) => `the disk is full: ${place} could not be written. Make room, then try again.`,
  EDQUOT: (place) =>
    `the disk space allowed is used up: ${place} could not be written. Make room, then try again.`,
  EROFS: (place) => `${place} cannot be written: the disk is read-only. Take another folder.`,
  EACCES: noLeave,
  EPERM: noLeave,
  ENOTDIR: noFolder,
  EEXIST: noFolder,
};

const noHost = 'the name or address given with --host is not one of this machine. Leave --host out.';

const ofServer: Readonly<Record<string, string>> = {
  EADDRINUSE: 'the port is taken by another program. Name another with --port.',
  EACCES: 'the port is reserved for the system. Name one from 1024 on with --port.',
  EADDRNOTAVAIL: noHost,
  ENOTFOUND: noHost,
};
