/** Runs a trial's analysis.R in R and holds what it found against the findings. */
import { expect } from 'vitest';
import { computeFindings } from '../../src/compute/findings.ts';
import { dateOfCut } from '../../src/compute/cuts.ts';
import type { Findings, Inference } from '../../src/model/findings.ts';
import type { Treatment, Trial } from '../../src/model/trial.ts';
import { analysisScript } from '../../src/publish/analysis-script.ts';
import { csvText } from '../../src/publish/csv.ts';
import { summaryTable } from '../../src/publish/summary-table.ts';
import { weightsTable } from '../../src/publish/weights-table.ts';
import { sharedR } from '../support/r.ts';
import type { FromR } from '../support/webr.ts';

type Named = Record<string, FromR>;

/** What the script left in `results`, and what it was made from. */
export interface ScriptRun {
  trial: Trial;
  findings: Findings;
  script: string;
  results: Named;
  printed: string[];
}

/** Runs the script of a trial in an R of its own folder. */
export async function runScript(trial: Trial): Promise<ScriptRun> {
  const findings = computeFindings(trial);
  const script = analysisScript({ trial, findings });
  const r = await sharedR();
  await r.writeFile('/home/web_user/weights.csv', csvText(weightsTable(trial)));
  await r.writeFile('/home/web_user/analysis.R', script);
  await r.run('rm(list = ls()); setwd("/home/web_user")');
  const printed = await r.printed('source("analysis.R")');
  return { trial, findings, script, results: named(await r.run('results')), printed };
}

export function named(value: FromR | undefined): Named {
  if (value === null || value === undefined || typeof value !== 'object' || Array.isArray(value)) {
    throw new Error(`R gave ${JSON.stringify(value)}, not a list`);
  }
  return value;
}

/** The rows of a data frame: R's columns of one row come back as scalars. */
export function rowsOf(value: FromR | undefined): Named[] {
  if (value === null || value === undefined) return [];
  const columns = Object.entries(named(value)).map(([name, column]): [string, FromR[]] => [
    name,
    Array.isArray(column) ? column : [column],
  ]);
  const count = columns[0]?.[1].length ?? 0;
  return Array.from({ length: count }, (_, row) =>
    Object.fromEntries(columns.map(([name, column]) => [name, column[row] ?? null])),
  );
}

/** "factor=level", several joined by a comma: how the script names a treatment. */
export function label(trial: Trial, treatment: Treatment): string {
  const factors = (trial.metadata.factors ?? []).map(({ id }) => id).filter((id) => id in treatment);
  return factors.map((id) => `${id}=${treatment[id]!}`).join(', ');
}

/** What differs, gathered so that one failure names every number that is wrong. */
export class Differences {
  readonly found: string[] = [];
  compared = 0;

  /** Numbers equal within a relative tolerance, or within `absolute` of each other; null only beside null. */
  number(
    what: string,
    script: FromR | undefined,
    finding: number | null | undefined,
    relative: number,
    absolute = 0,
  ) {
    this.compared += 1;
    const [mine, theirs] = [script ?? null, finding ?? null];
    if (mine === theirs) return;
    const error = typeof mine === 'number' && theirs !== null ? Math.abs(mine - theirs) : Infinity;
    if (error <= Math.max(relative * Math.abs(theirs ?? 0), absolute)) return;
    this.found.push(
      `${what}: the script ${JSON.stringify(mine)}, findings ${theirs}, allowed ${relative} or ${absolute}`,
    );
  }

  /** As `number`, where findings that say null with a reason leave the script free. */
  known(
    what: string,
    script: FromR | undefined,
    finding: number | null | undefined,
    relative: number,
    absolute = 0,
  ) {
    if (finding !== null && finding !== undefined) this.number(what, script, finding, relative, absolute);
  }

  expectNone() {
    expect(this.compared).toBeGreaterThan(0);
    expect(this.found).toEqual([]);
  }
}

export const entryName = (entry: Inference) => `${entry.measure}, ${entry.cut}`;

/** The script's numbers of one entry. */
export function entryOf({ results }: ScriptRun, entry: Inference): Named {
  return named(named(results['inference'])[entryName(entry)]);
}

export function rowOf(rows: readonly Named[], what: string, found: (row: Named) => boolean): Named {
  const row = rows.find(found);
  if (!row) throw new Error(`the script has no row for ${what}`);
  return row;
}

/** The description: every number of summary.csv, within 1e-12 (quartiles and counts alike). */
export function compareDescription({ trial, findings, results }: ScriptRun): void {
  const differences = new Differences();
  const { columns, rows } = summaryTable(trial, findings);
  const factors = (trial.metadata.factors ?? []).map(({ id }) => id);
  for (const row of rows) {
    const cell = (name: string) => row[columns.indexOf(name)] ?? null;
    const treatment = Object.fromEntries(factors.map((id) => [id, String(cell(id))]));
    const cut = String(cell('cut'));
    const what = `${label(trial, treatment)}, cut ${cut}`;
    const mine = rowOf(
      rowsOf(named(results['treatments'])[cut]),
      what,
      (each) => each['treatment'] === label(trial, treatment),
    );
    for (const column of columns) {
      if ([...factors, 'cut', 'reason', 'days_from_sowing', 'days_from_transplanting'].includes(column))
        continue;
      const key = column.replace(/^(per_(?:plant_harvested|plant_set|pot|container))_/, '$1.');
      const value = cell(column);
      if (!(key in mine)) throw new Error(`the script does not describe ${key}`);
      // A standard deviation about a mean of nearly its own size loses no digits: 1e-12 holds throughout.
      differences.number(
        `${what}: ${column}`,
        mine[key],
        typeof value === 'number' ? value : null,
        1e-12,
        1e-13,
      );
    }
  }
  const counts = named(results['counts']);
  for (const [name, count] of Object.entries(findings.counts)) {
    differences.number(name, counts[name], count, 0);
  }
  expect(dateOfCut(trial, 'all')).not.toBeNull();
  differences.expectNone();
}
