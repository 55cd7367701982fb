import type { Path } from '../read/yaml.ts';

/** A JSON pointer (RFC 6901) as a path. */
export function pathOf(pointer: string): string[] {
  const steps = pointer.split('/').slice(1);
  return steps.map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));
}

/** The value at a path; undefined where there is none. */
export function valueAt(value: unknown, path: Path): unknown {
  let here = value;
  for (const step of path) {
    if (typeof here !== 'object' || here === null) return undefined;
    here = (here as Record<string, unknown>)[String(step)];
  }
  return here;
}
