/** What growers wrote in a content folder: a page shows it as it is, in whatever language the site is. */
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';

/** The texts of a content folder. */
export interface GivenTexts {
  /** Whether a text is a value of the folder, or a passage of two words or more of it. */
  isGiven: (text: string) => boolean;
  /** Whether a text stands in the folder at all, a single word too. */
  has: (text: string) => boolean;
  /** The text without the values of two words or more that stand in it, such as titles and names. */
  without: (text: string) => string;
}

const even = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** Reads all that a content folder says in YAML, CSV and Markdown. */
export async function givenTexts(folder: string): Promise<GivenTexts> {
  const names = (await readdir(folder, { recursive: true })).filter((name) => /\.(yaml|csv|mdx)$/.test(name));
  const files = await Promise.all(names.sort().map((name) => readFile(join(folder, name), 'utf8')));
  const all = even(files.join('\n').replace(/\n\s*>?\s*/g, ' ')).replaceAll('"', '');
  const values = new Set(files.flatMap(valuesOf));
  const long = [...values]
    .filter((value) => /\p{L}.* .*\p{L}/u.test(value))
    .sort((a, b) => b.length - a.length);
  return {
    isGiven: (text) =>
      values.has(text) || (text.split(' ').length > 1 && all.includes(text.replaceAll('"', ''))),
    has: (text) => all.includes(text.replaceAll('"', '')),
    without: (text) =>
      long.reduce(
        (rest, value) =>
          rest.replaceAll(value, '…').replaceAll(lowerFirst(value), '…').replaceAll(value.toLowerCase(), '…'),
        text,
      ),
  };
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** What stands behind a key or a dash, between commas or quotation marks. */
function valuesOf(text: string): string[] {
  const scalars = [...text.matchAll(/^\s*(?:- )?(?:[\w ]+: )?(.+)$/gm)].map(([, value]) => value!);
  const inner = [...text.matchAll(/\b[a-z_]+: ([^,{}[\]\n]+)/g)].map(([, value]) => value!);
  const cells = text.split(/[,\n]/);
  return [...scalars, ...inner, ...cells].map((value) => even(value.replace(/^\s*['"]|['"]\s*$/g, '')));
}
