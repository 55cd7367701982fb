/** True for factsheet.mdx and what is meant to be the same sheet in another language. */
export function isTrialSheet(path: string): boolean {
  return /^factsheet(\.[^/]*)?\.mdx$/.test(path);
}
