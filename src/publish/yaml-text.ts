/** What our own YAML is written from. */
export type YamlValue = string | readonly YamlValue[] | { readonly [key: string]: YamlValue | undefined };

const controls = /[\u007f-\u009f\u2028\u2029\ufeff]/g;

/** A double-quoted YAML string: every JSON string is one, once what YAML calls unprintable is escaped. */
function quoted(text: string): string {
  return JSON.stringify(text).replace(
    controls,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}

const indented = (lines: readonly string[], first: string): string[] =>
  lines.map((line, index) => (index === 0 ? first : '  ') + line);

function lines(value: YamlValue): string[] {
  if (typeof value === 'string') return [quoted(value)];
  if (Array.isArray(value)) return value.flatMap((item: YamlValue) => indented(lines(item), '- '));
  return Object.entries(value).flatMap(([key, item]: [string, YamlValue | undefined]) => {
    if (item === undefined) return [];
    if (typeof item === 'string') return [`${key}: ${quoted(item)}`];
    return [`${key}:`, ...lines(item).map((line) => `  ${line}`)];
  });
}

/** YAML 1.2 in which every value is a quoted string, so that no reader makes a date or number of one. */
export const yamlText = (value: YamlValue): string => `${lines(value).join('\n')}\n`;
