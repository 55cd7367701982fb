/**
 * A maker whose results are kept for the inputs asked for last, so that what takes long is not made twice.
 *
 * @param most how many results are kept; the one made first goes
 * @param make the same result for inputs that are the same when written as JSON
 */
export function keptLast<Input, Result>(
  most: number,
  make: (input: Input) => Result,
): (input: Input) => Result {
  const kept = new Map<string, Result>();
  return (input) => {
    const key = JSON.stringify(input);
    const known = kept.get(key);
    if (known !== undefined) return known;
    const made = make(input);
    const oldest = kept.keys().next();
    if (kept.size >= most && !oldest.done) kept.delete(oldest.value);
    kept.set(key, made);
    return made;
  };
}
