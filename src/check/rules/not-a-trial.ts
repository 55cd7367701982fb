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
  const inside = [...files.keys()].find(
    (path) => path.endsWith('/trial.yaml') && !path.startsWith('versions/'),
  );
  const alike = nearest('trial.yaml', names);
  const message =
    inside !== undefined
      ? say('the folder has no trial.yaml; there is one at {path}: move the files up into this folder', {
          path: showText(inside),
        })
      : alike !== null
        ? say('the folder has no trial.yaml; rename {path} to trial.yaml', { path: showText(alike) })
        : say('the folder has no trial.yaml; write one, or move the folder out of trials/');
  report(rule, { file: 'trial.yaml', expected: 'trial.yaml', message });
}
