import type { Trial } from '../model/trial.ts';
import type { Place } from '../read/place.ts';
import { decodeUtf8 } from '../read/utf8.ts';
import { readYaml, type Path, type Yaml } from '../read/yaml.ts';

/** A checked trial with the means to say where in its trial.yaml something stands. */
export interface TrialText {
  trial: Trial;
  /** Its trial.yaml, from the content folder on. */
  file: string;
  place(path: Path): Place;
}

/** The text of a trial; trial.yaml is read again only when a place is asked for. */
export function trialText(trial: Trial, prefix: string): TrialText {
  let yaml: Yaml | null = null;
  return {
    trial,
    file: `${prefix}${trial.id}/trial.yaml`,
    place: (path) => {
      yaml ??= readYaml(decodeUtf8(trial.files.get('trial.yaml') ?? new Uint8Array()).text ?? '');
      return yaml.place(path);
    },
  };
}
