/** Whether the files of datasets are left out of a build: for the bench that measures what they add to it, and nothing else. */
export function pagesOnly(): boolean {
  return process.env['TANKSIDE_PAGES_ONLY'] === '1';
}
