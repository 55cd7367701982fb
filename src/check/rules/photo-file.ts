import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { nearest } from '../nearest.ts';
import { imageKind } from '../image-kind.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'photo-file',
  severity: 'error',
  acceptable: false,
  title: 'Photograph that cannot be shown',
  meaning:
    'A photograph lies in the folder of the trial and is a JPEG, PNG or WebP. A path that leads out of the folder could publish what nobody meant to.',
  example: 'photos/day-31.jpg is not in the folder; did you mean "photos/day-30.jpg"?',
  check,
};
export default rule;

function check({ metadata, files }: Facts, report: Report): void {
  for (const [index, { file: path, alt }] of (metadata.draft.photos ?? []).entries()) {
    const fault = faultOf(path, files.get(path), [...files.keys()]);
    if (fault !== null) {
      report(rule, {
        file: 'trial.yaml',
        place: metadata.place(['photos', index, 'file']),
        found: path,
        message: fault,
      });
    }
    if (alt.trim() === '') {
      const message = say('alt is blank; say what the picture shows, for those who do not see it');
      report(rule, {
        file: 'trial.yaml',
        place: metadata.place(['photos', index, 'alt']),
        found: alt,
        message,
      });
    }
  }
}

function faultOf(path: string, bytes: Uint8Array | undefined, paths: readonly string[]): string | null {
  const shown = showText(path);
  if (/^[a-z]+:/i.test(path)) {
    return say('{path} is an address, not a file of the folder; copy the photograph into the folder', {
      path: shown,
    });
  }
  if (path.startsWith('/') || /(^|[/\\])\.\.([/\\]|$)/.test(path)) {
    return say('{path} leads out of the folder; copy the photograph into the folder', { path: shown });
  }
  if (path.includes('\\')) {
    const corrected = showText(path.replaceAll('\\', '/'));
    return say('{path} has backslashes; write {corrected}', { path: shown, corrected });
  }
  if (bytes === undefined) {
    const best = nearest(path, paths);
    return best === null
      ? say('{path} is not in the folder; put it there, or correct the path', { path: shown })
      : say('{path} is not in the folder; did you mean "{near}"?', { path: shown, near: best });
  }
  const kind = imageKind(bytes);
  if (kind === null) {
    return say('{path} is not a JPEG, PNG or WebP picture; save it as one of these', { path: shown });
  }
  const extension = /\.([^.]+)$/.exec(path)?.[1]?.toLowerCase().replace('jpeg', 'jpg') ?? '';
  return extension === kind
    ? null
    : say('{path} is a {kind} picture by its contents; name it so that it ends in .{ending}', {
        path: shown,
        kind: kind.toUpperCase(),
        ending: kind,
      });
}
