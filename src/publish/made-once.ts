/**
 * A maker of something from a library that makes it once for each. The command and the pages' bundle each hold
 * a copy of every module, so what was made lies under a registered symbol that both find.
 */
export function madeOnce<K extends object, V>(name: string, make: (from: K) => V): (from: K) => V {
  const key = Symbol.for(`tankside.${name}`);
  const shelf = globalThis as unknown as Record<symbol, WeakMap<K, V> | undefined>;
  const memory = (shelf[key] ??= new WeakMap<K, V>());
  return (from) => {
    const known = memory.get(from);
    if (known !== undefined) return known;
    const made = make(from);
    memory.set(from, made);
    return made;
  };
}
