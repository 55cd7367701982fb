import { tellingOf } from '../../compute/words/telling.ts';
import type { Findings } from '../../model/findings.ts';
import type { Library, TrialWithFindings } from '../../model/library.ts';
import type { Treatment, Trial } from '../../model/trial.ts';
import { readFactSheet } from '../../read/read-fact-sheet.ts';
import { resolveSheet } from '../resolve-sheet.ts';
import { escapeText } from './escape-text.ts';

/** What the parts of a first fact sheet are written with. */
export interface TemplateWriting {
  trial: Trial;
  findings: Findings;
  /** A treatment's name at the start of a sentence and within one, as text of a sheet. */
  name(treatment: Treatment): string;
  within(treatment: Treatment): string;
  /** The text where everything that it asks for is there; else nothing. */
  ifThere(source: string): string[];
}

export function templateWriting(
  own: TrialWithFindings & { findings: Findings },
  library: Library,
): TemplateWriting {
  const { trial, findings } = own;
  const telling = tellingOf(trial, findings, library.cultivars);
  return {
    trial,
    findings,
    name: (treatment) => escapeText(telling.name(treatment)),
    within: (treatment) => escapeText(telling.within(treatment)),
    ifThere: (source) => {
      const { sheet, faults } = readFactSheet(source, 'factsheet.mdx');
      if (sheet === null || faults.length > 0) return [];
      const context = { sheet, library, own, trials: [trial.id], faulty: new Set<string>(), alone: true };
      return resolveSheet(context).problems.length === 0 ? [source] : [];
    },
  };
}
