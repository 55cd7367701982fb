/** Text on one line: line breaks, tabs and runs of blanks become one blank. */
export const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();
