import { say } from '../../model/say.ts';
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
      const message = say(
        'versions/{found} is no version: name the folder by its release, such as versions/1.0.0',
        { found: showText(version) },
      );
      report(rule, { file: folder, found: version, message });
    } else if (!known.includes(version) && !metadata.lost.has('releases')) {
      const message =
        known.length === 0
          ? say("{folder} is none of this trial's releases; name the folder by its release", { folder })
          : say("{folder} is none of this trial's releases ({releases}); name the folder by its release", {
              folder,
              releases: known.join(', '),
            });
      report(rule, { file: folder, found: version, message });
    } else if (said !== null && said !== version) {
      const message = say('{file} says that it is version {version}; is it in the wrong folder?', {
        file: `${folder}/trial.yaml`,
        version: showText(said),
      });
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
