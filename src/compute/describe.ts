import { say } from '../model/say.ts';
import type { TreatmentDescription } from '../model/findings.ts';
import type { Position, Trial } from '../model/trial.ts';
import { isWeight } from '../model/units.ts';
import { sum } from '../statistics/sum.ts';
import { type Cut, dateOfCut } from './cuts.ts';
import { daysBetween } from './days-between.ts';
import { commonUnit } from './experimental-unit.ts';
import { coverOfPosition } from './growing-area.ts';
import { positionKey } from './position-key.ts';
import { marksNotAmounts, notReplicates, summaryOf } from './summary-of.ts';
import { type TreatmentGroup, treatmentGroups } from './treatments.ts';
import type { PotYield, Yield, Yields } from './yields.ts';

/** Describes every treatment combination over one cut or all. */
export function describe(trial: Trial, yields: Yields, cut: Cut): TreatmentDescription[] {
  const unit = commonUnit(trial);
  return treatmentGroups(trial).map((group) => describeTreatment(trial, yields, cut, group, unit));
}

function describeTreatment(
  trial: Trial,
  yields: Yields,
  cut: Cut,
  group: TreatmentGroup,
  unit: ReturnType<typeof commonUnit>,
): TreatmentDescription {
  const keys = new Set(group.positions.map(positionKey));
  const plants = yields.plants.filter(({ position }) => keys.has(positionKey(position)));
  const pots = yields.pots.filter(({ position }) => keys.has(positionKey(position)));
  const single = plants.filter((plant) => plant.plant !== null);
  const onePlantAPot = group.positions.every((position) => position.plants === 1);
  const onePotAUnit = unit === 'position' || (unit === 'plot' && plotsAreSinglePots(group.positions));
  const scored = trial.metadata.variables[0]!.kind === 'scored';
  const withheld = (replicates: boolean) =>
    scored ? marksNotAmounts() : replicates ? null : notReplicates();
  const perPlant = (of: 'set' | 'harvested') =>
    single.length === 0
      ? null
      : summaryOf(
          single.map((plant) => plant[of]),
          withheld(onePotAUnit && onePlantAPot),
        );
  const reasons: string[] = [];
  if (single.length === 0)
    reasons.push(say('Pots were weighed whole, so nothing is known of single plants.'));
  const area = kilogramsPerSquareMetre(trial, pots);
  if (area.value === null) reasons.push(area.reason);
  const last = dateOfCut(trial, cut);
  const { sown, transplanted } = trial.metadata.dates ?? {};
  const daysSinceSowing = sown && last ? daysBetween(sown, last) : null;
  const daysSinceTransplanting = transplanted && last ? daysBetween(transplanted, last) : null;
  if (daysSinceSowing === null) reasons.push(say('No day of sowing is given.'));
  if (daysSinceTransplanting === null) reasons.push(say('No day of transplanting is given.'));
  const days = daysSinceTransplanting ?? daysSinceSowing;
  return {
    treatment: group.treatment,
    containers: new Set(group.positions.map(({ container }) => container)).size,
    pots: group.positions.length,
    plants: sum(group.positions.map((position) => position.plants)),
    per_plant_harvested: perPlant('harvested'),
    per_plant_set: perPlant('set'),
    per_pot: summaryOf(
      pots.map(({ pot }) => pot),
      withheld(onePotAUnit),
    ),
    per_container: summaryOf(containerTotals(pots), withheld(unit === 'container')),
    kg_per_m2: area.value,
    g_per_m2_day: area.value !== null && days !== null && days > 0 ? (area.value * 1000) / days : null,
    days_from_sowing: daysSinceSowing,
    days_from_transplanting: daysSinceTransplanting,
    ...(reasons.length > 0 ? { reason: reasons.join(' ') } : {}),
  };
}

function plotsAreSinglePots(positions: readonly Position[]): boolean {
  return new Set(positions.map(({ plot }) => plot)).size === positions.length;
}

/** The treatment's pots of each container, summed; unknown where one of them is. */
function containerTotals(pots: readonly PotYield[]): Yield[] {
  const byContainer = Map.groupBy(pots, ({ position }) => position.container);
  return [...byContainer.values()].map((ofContainer) => {
    if (ofContainer.some(({ pot }) => pot.unknown)) return { value: null, unknown: true };
    const values = ofContainer.flatMap(({ pot }) => (pot.value === null ? [] : [pot.value]));
    return { value: values.length === 0 ? null : sum(values), unknown: false };
  });
}

/** The weight of the pots that are known over the part of the cover that those pots had, in kg/m2. */
function kilogramsPerSquareMetre(
  trial: Trial,
  pots: readonly PotYield[],
): { value: number } | { value: null; reason: string } {
  if (!isWeight(trial.metadata.variables[0]!.unit)) {
    return {
      value: null,
      reason: say('The primary variable is not a weight, so there is no yield by area.'),
    };
  }
  const containers = new Map(trial.metadata.containers.map((container) => [container.id, container]));
  const grams: number[] = [];
  const areas: number[] = [];
  for (const { position, pot } of pots) {
    if (pot.value === null) continue;
    const area = coverOfPosition(containers.get(position.container)!);
    if (area === null)
      return { value: null, reason: say('No cover is given, so there is no area to divide by.') };
    grams.push(pot.value);
    areas.push(area);
  }
  if (areas.length === 0) return { value: null, reason: say('No pot has a known weight.') };
  return { value: sum(grams) / 1000 / sum(areas) };
}
