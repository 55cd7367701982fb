import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { checkTaken } from '../../src/check/check-taken.ts';
import { outcomeHtml, verdict } from '../../src/components/check/outcome-html.ts';
import { outcomeOf } from '../../src/components/check/outcome-of.ts';
import { siteFindings } from '../../src/compute/site-findings.ts';
import { goodFiles } from '../check/good-folder.ts';

function outcome(changes: Record<string, string> = {}, today = '2026-01-15') {
  const files = Object.entries({ ...Object.fromEntries(goodFiles()), ...changes });
  const taken = new Map(files.map(([path, text]) => [`two-lettuces/${path}`, strToU8(text)]));
  const checked = checkTaken({ files: taken, refused: [] }, today);
  return outcomeOf(checked, siteFindings(checked.trials));
}

const textOf = (html: string) => html.replaceAll(/<[^>]*>/g, ' ').replaceAll(/\s+/g, ' ');
const harvest = goodFiles().get('harvest.csv')!;

describe('what the page of checks shows', () => {
  it('each problem with its severity in words, its place, message, line and what to write', () => {
    const found = outcome({ 'harvest.csv': harvest.replace('118', '11B') });
    const html = outcomeHtml(found, '/data/checks/', 'metric');
    expect(verdict(found)).toBe('To be mended: two-lettuces (1 error, 0 warnings, 0 notes)');
    expect(textOf(html)).toContain(
      'Error line 4, column 8 &quot;11B&quot; is not a number; write digits only, such as 118',
    );
    expect(html).toContain('<code>T1,2,1,<mark>11B</mark>,,</code>');
    expect(html).toContain('<dt>To be written</dt><dd><code>118</code></dd>');
    expect(html).toContain('href="/data/checks/#weight-not-a-number"');
    expect(textOf(html)).not.toContain('published');
  });

  it('what would be published of a good folder: its finding, what it rests on, its queries', () => {
    const found = outcome();
    expect(verdict(found)).toBe('Nothing to mend: two-lettuces');
    const text = textOf(outcomeHtml(found, '/data/checks/', 'metric'));
    expect(text).toContain('What would be published of Two lettuces in two tanks');
    expect(text).toContain('It rests on the fresh weight per plant set of 8 plants');
    expect(text).toContain('7 of 8 set and weighed');
    expect(text).toContain('No open query beside it.');
  });

  it('a warning as an open query of what may all the same be published', () => {
    const found = outcome({ 'harvest.csv': harvest.replace('118', '718') });
    expect(verdict(found)).toMatch(/^Fit to be published: two-lettuces \(0 errors, [12] warnings?, /);
    expect(textOf(outcomeHtml(found, '/data/checks/', 'metric'))).toMatch(
      /(One|2) open quer(y|ies) beside it/,
    );
  });

  it('of a trial that still grows, that it has no dataset', () => {
    const growing = goodFiles()
      .get('trial.yaml')!
      .replace('status: finished', 'status: growing')
      .replace(', cuts: [2025-10-20]', '')
      .replace(/releases:[^]*$/, '');
    const files = { 'trial.yaml': growing, 'harvest.csv': harvest.split('\n')[0]! };
    const found = outcome(files, '2025-10-01');
    expect(found.problems).toEqual([]);
    expect(textOf(outcomeHtml(found, '/data/checks/', 'metric'))).toContain('and no dataset: it is growing.');
  });

  it('no more than 200 problems of a file, and how many more there are', () => {
    // What most rows of a file have in common is told once: half of them lack their container, half come twice.
    const rows = Array.from({ length: 300 }, (_, row) =>
      row % 2 === 0 ? `X${row},1,1,${100 + row},,` : `T1,1,1,${100 + row},,`,
    );
    const found = outcome({ 'harvest.csv': [harvest.trim(), ...rows, ''].join('\n') });
    const html = outcomeHtml(found, '/data/checks/', 'metric');
    const count = found.problems.filter(({ file }) => file === 'harvest.csv').length;
    expect(count).toBeGreaterThanOrEqual(300);
    expect(html).toContain(`And ${count - 200} more in this file`);
    expect(html.match(/<li class="problem/g)).toHaveLength(200);
  });

  it('nothing that a file says as markup', () => {
    const found = outcome({
      'harvest.csv': harvest.replace('118', '<img src=x onerror=alert(1)>'),
      'trial.yaml': goodFiles().get('trial.yaml')!.replace('title: Two', 'title: <b>Two'),
      '<i>.csv': 'x',
    });
    const html = outcomeHtml(found, '/data/checks/', 'metric');
    expect(html).toContain('&lt;img src=x');
    expect(html).not.toMatch(/<img|<b>|<i>/);
  });
});
