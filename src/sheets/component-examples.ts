import { levelNames, treatmentName } from '../compute/format/level-names.ts';
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

function exampleTrials({ trials, cultivars }: Library): ExampleTrial[] {
  const found = trials.flatMap((item): (ExampleTrial & { tested: boolean })[] => {
    const [first, ...others] = item.findings?.treatments ?? [];
    if (first === undefined) return [];
    const names = levelNames(item.trial, cultivars);
    const second = others[0] ?? first;
    const tested = item.findings?.inference.some(({ verdict }) => verdict === 'tested') ?? false;
    const of = ({ treatment }: typeof first) => treatmentName(item.trial, treatment, names);
    return [
      {
        item,
        treatment: written(second.treatment),
        other: written(first.treatment),
        name: of(second),
        otherName: of(first),
        tested,
      },
    ];
  });
  // Names read more easily than numbers: a trial of cultivars comes first where one was tested.
  const rank = ({ tested, name }: (typeof found)[number]): number =>
    (tested ? 0 : 2) + (/\d/.test(name) ? 1 : 0);
  return found.sort((a, b) => rank(a) - rank(b));
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
