import { say } from '../model/say.ts';

/** What a person is shown of a fault that the machine reports by a code: what could not be done, where, and what to do. */
export function inPlainWords(error: Error): string | null {
  if (!('code' in error) || typeof error.code !== 'string') return null;
  if ('syscall' in error && (error.syscall === 'listen' || error.syscall === 'getaddrinfo'))
    return ofServer(error.code);
  return ofPlace(error.code, placeOf(error));
}

/** The folder or file that was written to, or else the one read. */
function placeOf(error: Error): string {
  const { dest, path } = error as { dest?: unknown; path?: unknown };
  const place = [dest, path].find((one) => typeof one === 'string');
  return place === undefined ? say('a file') : `"${place}"`;
}

function ofPlace(code: string, place: string): string | null {
  switch (code) {
    case 'ENOSPC':
      return say('the disk is full: {place} could not be written. Make room, then try again.', { place });
    case 'EDQUOT':
      return say(
        'the disk space allowed is used up: {place} could not be written. Make room, then try again.',
        { place },
      );
    case 'EROFS':
      return say('{place} cannot be written: the disk is read-only. Take another folder.', { place });
    case 'EACCES':
    case 'EPERM':
      return say(
        '{place} cannot be written or read: the permissions do not allow it. Change them, or take another folder.',
        { place },
      );
    case 'ENOTDIR':
    case 'EEXIST':
      return say('{place} cannot be made: a file stands where a folder is needed. Take another folder.', {
        place,
      });
    default:
      return null;
  }
}

function ofServer(code: string): string | null {
  switch (code) {
    case 'EADDRINUSE':
      return say('the port is taken by another program. Name another with --port.');
    case 'EACCES':
      return say('the port is reserved for the system. Name one from 1024 on with --port.');
    case 'EADDRNOTAVAIL':
    case 'ENOTFOUND':
      return say('the name or address given with --host is not one of this machine. Leave --host out.');
    default:
      return null;
  }
}
