import type { FactSheet } from '../model/fact-sheet.ts';
import type { Library } from '../model/library.ts';
import { readFactSheet } from '../read/read-fact-sheet.ts';
import { written } from './asked-treatment.ts';
import type { ExampleTrial, SheetComponent } from './component.ts';
import { sheetComponents } from './components.ts';
import { type ResolvedSheet, resolveSheet } from './resolve-sheet.ts';

/** A component with what is written for it and what that becomes, for a trial of the site. */
export interface ComponentExample {
  component: SheetComponent;
  /** Null where no trial of the site has anything of the kind. */
  shown: { source: string; trial: string; sheet: FactSheet; resolved: ResolvedSheet } | null;
}

/** Every component with an example from the site's own trials: from the first that was tested, where it has one. */
export function componentExamples(library: Library): ComponentExample[] {
  const trials = exampleTrials(library);
  return sheetComponents.map((component) => ({
    component,
    shown: firstThatWorks(component, trials, library),
  }));
}

function exampleTrials({ trials }: Library): ExampleTrial[] {
  const found = trials.flatMap((item): (ExampleTrial & { tested: boolean })[] => {
    const [first, second] = item.findings?.treatments ?? [];
    if (first === undefined) return [];
    const tested = item.findings?.inference.some(({ verdict }) => verdict === 'tested') ?? false;
    const treatment = written((second ?? first).treatment);
    return [{ item, treatment, other: written(first.treatment), tested }];
  });
  return [...found.filter(({ tested }) => tested), ...found.filter(({ tested }) => !tested)];
}

function firstThatWorks(
  component: SheetComponent,
  trials: readonly ExampleTrial[],
  library: Library,
): ComponentExample['shown'] {
  for (const trial of trials) {
    const source = component.example(trial);
    if (source === null) continue;
    const own = trial.item;
    const { sheet } = readFactSheet(source, 'factsheet.mdx');
    if (sheet === null) continue;
    const context = { sheet, library, own, trials: [own.trial.id], faulty: new Set<string>(), alone: false };
    const resolved = resolveSheet(context);
    if (resolved.problems.length === 0) return { source, trial: own.trial.id, sheet, resolved };
  }
  return null;
}
