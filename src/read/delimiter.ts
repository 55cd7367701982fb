const signs = [',', ';', '\t', '|'] as const;
const linesLooked = 50;

/**
 * What stands between the cells of a table: the sign that the most lines at its beginning hold equally often, so
 * that a title above the headings, or commas in a remark, decide nothing; unless the first line says it (`sep=;`).
 */
export function delimiterIn(text: string): string {
  const said = /^sep=([,;\t|])[\r\n]/i.exec(text);
  if (said !== null) return said[1]!;
  const lines = text
    .replaceAll(/"[^"]*"/g, '')
    .split(/\r\n?|\n/)
    .filter((line) => line.trim() !== '')
    .slice(0, linesLooked);
  const votes = signs.map((sign) => {
    const counts = new Map<number, number>();
    for (const line of lines) {
      const count = line.split(sign).length - 1;
      if (count > 0) counts.set(count, (counts.get(count) ?? 0) + 1);
    }
    return Math.max(0, ...[...counts].map(([count, times]) => times * count));
  });
  return signs[votes.indexOf(Math.max(...votes))] ?? ',';
}
