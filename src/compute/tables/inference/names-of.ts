import { say } from '../../../model/say.ts';
import type { Findings, Inference } from '../../../model/findings.ts';
import type { Trial } from '../../../model/trial.ts';
import { measureName } from '../measures.ts';

/** What an analysis is about: "Fresh weight per pot, all cuts". */
export function analysisName(findings: Findings, { measure, cut }: Inference): string {
  const name = `${findings.variable.name} ${measureName(measure)}`;
  if (findings.treatments_by_cut.length < 2) return name;
  return cut === 'all'
    ? say('{variable}, all cuts', { variable: name })
    : say('{measure}, cut {cut}', { measure: name, cut });
}

/** A term's ids with the factors' names for them: "cultivar:strength" becomes "Cultivar × Solution strength". */
export function termName(trial: Trial, term: string): string {
  return term
    .split(':')
    .map((part) => trial.metadata.factors?.find(({ id }) => id === part)?.name ?? say(part))
    .join(' × ')
    .replace(/^\p{Ll}/u, (letter) => letter.toUpperCase());
}

/** Groups what belongs to one family: the treatments that name the same factors. */
export function families<Row>(
  rows: readonly Row[],
  treatment: (row: Row) => Readonly<Record<string, string>>,
): { term: string; rows: Row[] }[] {
  const groups = Map.groupBy(rows, (row) => Object.keys(treatment(row)).join(':'));
  return [...groups].map(([term, ofTerm]) => ({ term, rows: ofTerm }));
}
