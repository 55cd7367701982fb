/** The value of a mapping's own key; undefined for keys that every object inherits, such as `constructor`. */
export function ownValue<Value>(
  mapping: Readonly<Record<string, Value>> | undefined,
  key: string,
): Value | undefined {
  return mapping !== undefined && Object.hasOwn(mapping, key) ? mapping[key] : undefined;
}
