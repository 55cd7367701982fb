import type { Findings } from '../model/findings.ts';
import { say } from '../model/say.ts';
import type { HarvestRecord, Trial, Variable } from '../model/trial.ts';
import { isWeight } from '../model/units.ts';
import { fiveNumberSummary } from '../statistics/five-number-summary.ts';
import { mean } from '../statistics/mean.ts';
import { medianOf } from '../statistics/median.ts';
import { standardDeviation } from '../statistics/standard-deviation.ts';
import { wilsonInterval } from '../statistics/wilson-interval.ts';
import { cutNumbers } from './cuts.ts';
import { commonUnit } from './experimental-unit.ts';
import { positionKey } from './position-key.ts';
import { notReplicates } from './summary-of.ts';
import { type TreatmentGroup, treatmentGroups } from './treatments.ts';

type OtherVariable = NonNullable<Findings['other_variables']>[number];
type Described = OtherVariable['treatments'][number];
type Kind = OtherVariable['variable']['kind'];

/** A variable, or the judges of one panel. */
interface Recorded {
  variables: readonly Variable[];
  about: OtherVariable['variable'];
}

/**
 * Every variable but the primary one, described as what it is: measured values by mean and spread, counts by
 * both and by how often each came up, marks by their median and how often each was given, yes or no by the part
 * that was yes, with Wilson's interval where plants or pots are the replicates. Variables of one panel count
 * together: each plant or pot with the median of its judges.
 */
export function otherVariables(trial: Trial): OtherVariable[] {
  const cuts = cutNumbers(trial);
  return recorded(trial.metadata.variables.slice(1)).flatMap((each) =>
    cuts.flatMap((cut): OtherVariable[] => {
      const records = trial.harvest.filter((record) => record.cut === cut);
      if (!records.some((record) => valueOf(record, each) !== null)) return [];
      const treatments = treatmentGroups(trial).map((group) => describeGroup(trial, each, group, records));
      return [{ variable: each.about, cut, treatments }];
    }),
  );
}

function recorded(variables: readonly Variable[]): Recorded[] {
  const groups = Map.groupBy(variables, ({ id, panel }) => panel ?? `\0${id}`);
  return [...groups.values()].map((members): Recorded => {
    const first = members[0]!;
    const { id, name, panel, of } = first;
    const unit = isWeight(first.unit) ? 'g' : (first.unit ?? '');
    const together = panel !== undefined && members.length > 1;
    return {
      variables: members,
      about: {
        id: together ? panel : id,
        name: together ? panel : name,
        unit,
        kind: kindOf(first),
        of,
        ...(together ? { judges: members.length } : {}),
      },
    };
  });
}

function kindOf({ kind, scale }: Variable): Kind {
  return scale === 'yes or no' ? scale : kind;
}

/** A record's value; with several judges the median of those who gave one. */
function valueOf({ values }: HarvestRecord, { variables }: Recorded): number | null {
  const known = variables.flatMap(({ id }) => values[id] ?? []);
  return known.length === 0 ? null : medianOf(known);
}

function describeGroup(
  trial: Trial,
  each: Recorded,
  { treatment, positions }: TreatmentGroup,
  records: readonly HarvestRecord[],
): Described {
  const { kind, of } = each.about;
  const keys = new Set(positions.map(positionKey));
  const grown = records.filter(
    (record) =>
      keys.has(positionKey(record)) && (record.status === 'weighed' || record.status === 'not weighed'),
  );
  const values = of === 'plant' ? grown.map((record) => valueOf(record, each)) : byPot(grown, each);
  const known = values.filter((value) => value !== null);
  const five = fiveNumberSummary(values);
  const amounts = kind === 'measured' || kind === 'counted';
  const proportion = kind === 'yes or no' ? proportionOf(known, areReplicates(trial, each, positions)) : null;
  const reason =
    known.length === 0
      ? say('No value is known.')
      : proportion !== null && proportion.lower === null
        ? notReplicates()
        : undefined;
  return {
    treatment,
    n: known.length,
    missing: values.length - known.length,
    mean: amounts ? mean(values).value : null,
    sd: amounts ? standardDeviation(values).value : null,
    minimum: five.minimum,
    lower_quartile: five.lowerQuartile,
    median: five.median,
    upper_quartile: five.upperQuartile,
    maximum: five.maximum,
    counts: kind === 'measured' ? null : countsOf(known),
    proportion,
    ...(reason === undefined ? {} : { reason }),
  };
}

/** One value a pot: that of whichever of its rows gives one. */
function byPot(records: readonly HarvestRecord[], each: Recorded): (number | null)[] {
  return [...Map.groupBy(records, positionKey).values()].map(
    (ofPot) => ofPot.map((record) => valueOf(record, each)).find((value) => value !== null) ?? null,
  );
}

function countsOf(values: readonly number[]): { value: number; count: number }[] {
  return [...Map.groupBy(values, (value) => value)]
    .map(([value, same]) => ({ value, count: same.length }))
    .sort((a, b) => a.value - b.value);
}

/** Plants or pots are what was allotted: only then does each count as one trial of the proportion. */
function areReplicates(trial: Trial, { about }: Recorded, positions: TreatmentGroup['positions']): boolean {
  return (
    commonUnit(trial) === 'position' && (about.of === 'pot' || positions.every(({ plants }) => plants === 1))
  );
}

function proportionOf(values: readonly number[], replicates: boolean): Described['proportion'] {
  const yes = values.filter((value) => value > 0).length;
  if (values.length === 0) return null;
  const { proportion, lower, upper } = wilsonInterval(yes, values.length);
  return { yes, proportion: proportion!, lower: replicates ? lower : null, upper: replicates ? upper : null };
}
