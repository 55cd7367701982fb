import { decodeUtf8 } from '../../read/utf8.ts';
import { readYaml } from '../../read/yaml.ts';
import type { Facts } from '../facts.ts';
import { frozenVersions, isVersion } from '../frozen-versions.ts';
import { isMapping } from '../read-metadata.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'frozen-version-misnamed',
  severity: 'warning',
  acceptable: true,
  title: 'Folder of versions/ that is no release',
  meaning:
    'Each folder of versions/ holds one release, under its number: it is published as that version, and compared with the next.',
  example: "versions/1.0.1 is none of this trial's releases (1.0.0, 1.1.0); name the folder by its release",
  check,
};
export default rule;

function check({ files, metadata }: Facts, report: Report): void {
  const { releases = [] } = metadata.draft;
  const known = releases.map(({ version }) => version);
  for (const { version, files: frozen } of frozenVersions(files)) {
    const folder = `versions/${version}`;
    const said = saidVersion(frozen.get('trial.yaml'));
    if (!isVersion(version)) {
      const message = `versions/${showText(version)} is no version: name the folder by its release, such as versions/1.0.0`;
      report(rule, { file: folder, found: version, message });
    } else if (!known.includes(version) && !metadata.lost.has('releases')) {
      const listed = known.length === 0 ? '' : ` (${known.join(', ')})`;
      const message = `${folder} is none of this trial's releases${listed}; name the folder by its release`;
      report(rule, { file: folder, found: version, message });
    } else if (said !== null && said !== version) {
      const message = `${folder}/trial.yaml says that it is version ${showText(said)}; is it in the wrong folder?`;
      report(rule, { file: `${folder}/trial.yaml`, found: said, expected: version, message });
    }
  }
}

function saidVersion(bytes: Uint8Array | undefined): string | null {
  const text = bytes === undefined ? null : decodeUtf8(bytes).text;
  const value = text === null ? null : readYaml(text).value;
  const version = isMapping(value) ? value['version'] : null;
  return typeof version === 'string' ? version : null;
}
