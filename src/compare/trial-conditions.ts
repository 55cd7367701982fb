import { squareMetres } from '../compute/growing-area.ts';
import type { Findings } from '../model/findings.ts';
import type { Origin } from '../model/gathered.ts';
import type { Seasons } from '../model/generated/seasons.ts';
import type { Trial } from '../model/trial.ts';
import { meanOf } from '../statistics/mean.ts';
import { sum } from '../statistics/sum.ts';
import { cultivarFactor } from './cultivar-identity.ts';
import { say } from '../model/say.ts';

type Conditions = Omit<Seasons['trials'][number], 'cultivars' | 'replicated' | 'adjusted_mean'>;

/** What a trial was grown under: what may differ between trials and so stands beside their means. */
export function trialConditions(trial: Trial, findings: Findings): Conditions {
  const { metadata, positions } = trial;
  const others = (metadata.factors ?? []).filter(({ id }) => id !== cultivarFactor(trial)?.id);
  const described = findings.treatments[0];
  return {
    id: trial.id,
    season: `${say(metadata.season.name)} ${metadata.season.year}`,
    setting: metadata.site.setting,
    days: described?.days_from_transplanting ?? described?.days_from_sowing ?? null,
    plants_per_pot: [...new Set(positions.map(({ plants }) => plants))].sort((a, b) => a - b).join(', '),
    averaged_over: others.map(({ name }) => name.toLowerCase()).join(', '),
    cuts: metadata.dates?.cuts?.length ?? 1,
    variable: findings.variable.name,
    pots_per_m2: potsPerSquareMetre(trial),
    ec: meanConductivity(trial),
    ...(trial.origin === undefined ? {} : { origin: shownOrigin(trial.origin) }),
  };
}

function shownOrigin({
  title,
  address,
  page,
  identifier,
  gathered,
}: Origin): NonNullable<Conditions['origin']> {
  return { title, address, page, identifier, gathered };
}

/** Positions of the containers' grids over the area of their covers; null where a cover is not given. */
function potsPerSquareMetre({ metadata: { containers } }: Trial): number | null {
  const areas = containers.map(({ cover }) => (cover ? squareMetres(cover) : null));
  if (areas.some((area) => area === null)) return null;
  return sum(containers.map(({ rows, columns }) => rows * columns)) / sum(areas as number[]);
}

/** Mean of the readings of conductivity in mS/cm; null where none was read. */
function meanConductivity({ readings }: Trial): number | null {
  const read = readings.flatMap(({ ec }) => (ec === null ? [] : [ec]));
  return read.length === 0 ? null : meanOf(read);
}
