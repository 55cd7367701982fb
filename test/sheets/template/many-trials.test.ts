import { describe, expect, it } from 'vitest';
import { unnamed } from '../../../src/commands/library-of.ts';
import { siteFindings } from '../../../src/compute/site-findings.ts';
import type { Library } from '../../../src/model/library.ts';
import type { Trial } from '../../../src/model/trial.ts';
import { readFactSheet } from '../../../src/read/read-fact-sheet.ts';
import { checkSheets } from '../../../src/sheets/check-sheets.ts';
import { sheetTemplate } from '../../../src/sheets/template/sheet-template.ts';
import { mint, npk, oats, plantGrowth } from '../../compute/published.ts';
import { bare, full } from '../../publish/example.ts';
import {
  hostile,
  latinSquare,
  lostPlants,
  scores,
  twoCuts,
  unbalancedFactorial,
  unbalancedSplitPlot,
} from '../../publish/script-trials.ts';

const trials: readonly (readonly [string, Trial])[] = [
  ['mint (Steel and Torrie 1980)', mint()],
  ['npk (Venables and Ripley 2002)', npk()],
  ['oats (Yates 1935), main plots in benches', oats('plot')],
  ['oats (Yates 1935), main plots that are containers', oats('container')],
  ['plantGrowth (Dobson 1983)', plantGrowth()],
  ['a trial whose words are hostile', hostile()],
  ['a Latin square', latinSquare()],
  ['plants within pots, some lost', lostPlants()],
  ['scores', scores()],
  ['two cuts', twoCuts()],
  ['a factorial of unequal numbers', unbalancedFactorial()],
  ['a split plot with plots lost', unbalancedSplitPlot()],
  ['a trial that uses every optional field', full.trial],
  ['a trial without factors', bare.trial],
];

describe('The first sheet of published trials and of every design', () => {
  it.each(trials)('passes the check for %s', (_name, trial) => {
    const [item] = siteFindings([trial]);
    const library: Library = { site: unnamed, cultivars: [], trials: [item!], problems: [] };
    const text = sheetTemplate({ trial, findings: item!.findings! }, library);
    const { sheet, faults } = readFactSheet(text, 'factsheet.mdx');
    expect(faults).toEqual([]);
    const own = { ...item!, trial: { ...trial, factSheets: [sheet!] } };
    const problems = checkSheets({ ...library, trials: [own] }, { alone: true });
    expect(problems.map(({ rule, message }) => `${rule} ${message}`)).toEqual([]);
  });
});
