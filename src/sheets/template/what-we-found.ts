import { headlineMeasure } from '../../compute/headline-measure.ts';
import { say } from '../../model/say.ts';
import type { Treatment } from '../../model/trial.ts';
import { written } from '../asked-treatment.ts';
import type { TemplateWriting } from './template-writing.ts';

/** More treatments than this are told by the table alone. */
const mostInWords = 6;

/** The part on what was found: table, differences in words, each cut, and the figures. */
export function whatWeFound(writing: TemplateWriting): string[] {
  const { trial, ifThere } = writing;
  const [first] = trial.metadata.containers;
  const differences = differencesInWords(writing);
  const intro = headlineMeasure(trial) === 'per_pot' ? say('For each pot:') : say('For each plant:');
  const map = ifThere(`<PositionMap container="${first?.id ?? ''}" />`);
  return [
    ...ifThere('<Treatments />'),
    ...(differences.length === 0 ? [] : [intro, differences.join('\n')]),
    ...eachCut(writing),
    ...ifThere('<WeightsByTreatment />'),
    ...(map.length === 0
      ? []
      : [say('The map shows where each pot stood and what it gave, seen as we stood to cut.'), ...map]),
  ];
}

/** How each level differs from the check, or from the first where there is none; of one factor only. */
function differencesInWords({ trial, findings, name, within, ifThere }: TemplateWriting): string[] {
  const [factor, another] = trial.metadata.factors ?? [];
  if (factor === undefined || another !== undefined) return [];
  const base = factor.check ?? factor.levels[0]!.id;
  const other: Treatment = { [factor.id]: base };
  const rest = findings.treatments
    .map(({ treatment }) => treatment)
    .filter((each) => each[factor.id] !== base);
  if (rest.length > mostInWords) return [];
  return rest.flatMap((treatment) => {
    const difference = `<Difference a="${written(treatment)}" b="${written(other)}" />`;
    const values = { name: name(treatment), difference, other: within(other) };
    return ifThere(`- ${say('{name} gave {difference} than {other}.', values)}`);
  });
}

/** Of a trial with several cuts, the mean of each at each. */
function eachCut({ findings, name, ifThere }: TemplateWriting): string[] {
  return findings.treatments_by_cut.flatMap(({ cut, treatments }) => {
    if (treatments.length > mostInWords) return [];
    const lines = treatments.flatMap(({ treatment }) => {
      const where = Object.keys(treatment).length === 0 ? '' : ` where="${written(treatment)}"`;
      return ifThere(`- ${name(treatment)}: <Value of="mean"${where} cut="${String(cut)}" />`);
    });
    return lines.length === 0 ? [] : [say('On average, at cut {cut}:', { cut }), lines.join('\n')];
  });
}
