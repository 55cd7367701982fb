/** Plain scalars that need no quotes; others are written as JSON, which is YAML too. */
const plain = /^[\p{L}][\p{L}\p{N} ./%()?'+-]*$/u;
const otherwise = /^(true|false|null|yes|no|on|off|~)$/i;

/** A value as one line of YAML in flow style, for the examples in messages. */
export function flowYaml(value: unknown): string {
  if (typeof value === 'string') {
    const date = /^\d{4}-\d{2}-\d{2}$/.test(value) || /^\d+\.\d+\.\d+$/.test(value);
    return date || (plain.test(value) && !otherwise.test(value) && value.trim() === value)
      ? value
      : JSON.stringify(value);
  }
  if (Array.isArray(value)) return `[${value.map(flowYaml).join(', ')}]`;
  if (typeof value === 'object' && value !== null) {
    const pairs = Object.entries(value).map(([key, inner]) => `${key}: ${flowYaml(inner)}`);
    return `{${pairs.join(', ')}}`;
  }
  return String(value);
}
