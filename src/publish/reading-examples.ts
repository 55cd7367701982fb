/** How a file is read in a language, in lines that work as pasted. */
export interface ReadingExample {
  language: 'R' | 'Python' | 'JavaScript';
  /** Three lines. */
  code: string;
}

/**
 * Three lines each that read weights.csv and print the mean of the primary variable. None needs anything
 * installed but the language.
 *
 * @param where - the address of weights.csv, or its path.
 * @param variable - the id of the primary variable, the name of its column.
 */
export function readingExamples(where: string, variable: string): ReadingExample[] {
  const address = JSON.stringify(where);
  const isAddress = /^https?:/.test(where);
  return [
    {
      language: 'R',
      code: [
        `weights <- read.csv(${address}, colClasses = c(plot = "character", block = "character"))`,
        `head(weights)`,
        `mean(weights$${variable}, na.rm = TRUE)`,
      ].join('\n'),
    },
    {
      language: 'Python',
      code: [
        isAddress ? 'import csv, io, statistics, urllib.request' : 'import csv, statistics',
        `weights = list(csv.DictReader(${isAddress ? `io.TextIOWrapper(urllib.request.urlopen(${address}), encoding="utf-8", newline="")` : `open(${address}, encoding="utf-8", newline="")`}))`,
        `print(statistics.fmean(float(row["${variable}"]) for row in weights if row["${variable}"]))`,
      ].join('\n'),
    },
    {
      language: 'JavaScript',
      code: [
        `const text = await (await fetch(${address})).text();`,
        'const [header, ...rows] = text.match(/(?:[^"\\n]|"[^"]*")+/g).map((line) => `${line},`.match(/(?:[^",]|"[^"]*")*,/g).map((cell) => cell.slice(0, -1)));',
        `console.log(rows.map((row) => row[header.indexOf("${variable}")]).filter(Boolean).map(Number).reduce((mean, value, index) => mean + (value - mean) / (index + 1), 0));`,
      ].join('\n'),
    },
  ];
}
