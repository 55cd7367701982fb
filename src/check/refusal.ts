import type { Finding, Rule } from './rule.ts';
import type { Path, Yaml } from '../read/yaml.ts';
import type { SchemaError, SchemaName } from './validator.ts';

/** One thing that a schema refused, with what is needed to explain it. */
export interface Refusal {
  error: SchemaError;
  schema: SchemaName;
  /** The file as problems name it. */
  file: string;
  /** Path of the value (for a missing or unknown key: of the mapping). */
  path: Path;
  yaml: Pick<Yaml, 'place' | 'keyPlace'>;
}

export interface Explained {
  rule: Rule;
  finding: Finding;
}

/** A path as a grower would say it: `containers[2].rows`, counted from 1. */
export function pathInWords(path: Path): string {
  return path
    .map((step, depth) =>
      /^\d+$/.test(String(step)) ? `[${String(Number(step) + 1)}]` : `${depth > 0 ? '.' : ''}${String(step)}`,
    )
    .join('');
}
