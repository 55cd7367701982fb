import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import type { FolderFiles } from '../../read/folder-files.ts';
import { nearest } from '../nearest.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'not-a-trial',
  severity: 'error',
  acceptable: false,
  title: 'Not a trial',
  meaning: 'Each folder in trials/ is a trial, and a trial has a trial.yaml.',
  example: 'the folder has no trial.yaml; rename "trial.yml" to trial.yaml',
};
export default rule;

export function reportNotATrial(report: Report, files: FolderFiles): void {
  const names = [...files.keys()].filter((path) => !path.includes('/'));
  const nested = [...files.keys()].filter(
    (path) => path.endsWith('/trial.yaml') && !/(^|\/)versions\//.test(path),
  );
  const [inside] = nested;
  const alike = nearest('trial.yaml', names);
  const trials = new Set(nested.map((path) => path.slice(0, path.indexOf('/trial.yaml'))));
  const [first = ''] = trials;
  const message =
    trials.size > 1
      ? say(
          'the folder has no trial.yaml and is no trial, but holds trials; name one of them, such as {path}, or the folder that holds site.yaml',
          { path: showText(first) },
        )
      : inside !== undefined
        ? say('the folder has no trial.yaml; there is one at {path}: move the files up into this folder', {
            path: showText(inside),
          })
        : alike !== null
          ? say('the folder has no trial.yaml; rename {path} to trial.yaml', { path: showText(alike) })
          : say('the folder has no trial.yaml; write one, or move the folder out of trials/');
  report(rule, { file: 'trial.yaml', expected: 'trial.yaml', message });
}
