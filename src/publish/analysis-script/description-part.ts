import { dateOfCut, cutNumbers, type Cut } from '../../compute/cuts.ts';
import { commonUnit } from '../../compute/experimental-unit.ts';
import { treatmentGroups } from '../../compute/treatments.ts';
import type { Container, Treatment, Trial } from '../../model/trial.ts';
import { isWeight, metresIn } from '../../model/units.ts';
import { rHeading, rNamed, rNumber, rString, rStrings } from './r-text.ts';

const describing = String.raw`
# A description of some weights. Quartiles are R's own (type 7). The standard error is given only
# where the weights are the replicates: plants of one pot say nothing of another pot.
describe <- function(x, replicates) {
  x <- x[!is.na(x)]
  y <- known(x)
  n <- length(y)
  several <- n >= 2
  q <- if (n > 0) quantile(y, type = 7, names = FALSE) else rep(NA_real_, 5)
  s <- if (several) sd(y) else NA_real_
  m <- if (n > 0) mean(y) else NA_real_
  se <- if (several && replicates) s / sqrt(n) else NA_real_
  reach <- if (several && replicates) qt(0.975, n - 1) * se else NA_real_
  data.frame(n = n, missing = length(x) - n, mean = m, sd = s, se = se,
             cv = if (several && m > 0) 100 * s / m else NA_real_,
             minimum = q[1], lower_quartile = q[2], median = q[3], upper_quartile = q[4], maximum = q[5],
             ci95_lower = m - reach, ci95_upper = m + reach)
}

describe_treatment <- function(treatment, y, days) {
  here <- weights[weights$.treatment == treatment, ]
  place <- here[!duplicated(here$.position), ]
  plants <- y$plants[y$plants$.treatment == treatment, ]
  pots <- y$pots[y$pots$.treatment == treatment, ]
  one_plant_a_pot <- all(place$.plants_set == 1)
  one_pot_a_unit <- common_unit == "position" ||
    (common_unit == "plot" && !any(duplicated(place$plot)))
  per_plant <- function(x) {
    d <- describe(x, one_pot_a_unit && one_plant_a_pot)
    if (length(x) == 0) d[] <- NA
    d
  }
  containers <- tapply(pots$pot, pots$container, total)
  weighed <- pots[pots$.position %in% pots$.position[!is.na(pots$pot) & pots$pot < Inf], ]
  area <- sum(cover_per_position[weighed$container])
  kg <- if (nrow(weighed) > 0) sum(weighed$pot) / 1000 / area else NA_real_
  data.frame(treatment = treatment, containers = length(unique(place$container)), pots = nrow(place),
             plants = sum(place$.plants_set),
             per_plant_harvested = per_plant(plants$harvested), per_plant_set = per_plant(plants$set),
             per_pot = describe(pots$pot, one_pot_a_unit),
             per_container = describe(as.vector(containers), common_unit == "container"),
             kg_per_m2 = kg, g_per_m2_day = kg * 1000 / days)
}

describe_cut <- function(cut) {
  y <- yields(cut)
  rows <- lapply(treatments, describe_treatment, y = y, days = days_grown[[cut]])
  do.call(rbind, rows)
}

# Plants by what became of them: each is counted once, by the worst of its cuts.
worst_first <- c("not planted", "culled", "dead", "no regrowth", "not weighed", "weighed")
worst <- tapply(match(weights$status, worst_first), paste(weights$.position, weights$plant), min)
fate <- table(factor(worst_first[worst], levels = worst_first))
results$counts <- c(set = length(worst) - fate[["not planted"]], weighed = fate[["weighed"]],
                    dead = fate[["dead"]], culled = fate[["culled"]], not_weighed = fate[["not weighed"]],
                    not_planted = fate[["not planted"]], no_regrowth = fate[["no regrowth"]])
results$treatments <- lapply(cuts, describe_cut)
names(results$treatments) <- cuts

cat("\nPlants\n")
print(results$counts)
for (cut in cuts) {
  cat("\nWeights by treatment, cut:", cut, "\n")
  print(t(results$treatments[[cut]]), quote = FALSE)
}
`;

/** The description of every treatment, over all cuts and cut by cut. */
export function descriptionPart(trial: Trial): string {
  const cuts = namedCuts(trial);
  return [
    rHeading('2. Description: what was weighed, treatment by treatment'),
    `treatments <- ${rStrings(treatmentGroups(trial).map((group) => labelOf(trial, group.treatment)))}`,
    `cuts <- ${rStrings(cuts.map(String))}`,
    '# What whole treatment combinations were allotted to: only such units are replicates (none of scores).',
    `common_unit <- ${rString(replicating(trial))}`,
    coverOfPositions(trial),
    '# Days in the tanks (from sowing where no day of transplanting is given), to each cut.',
    `days_grown <- ${rNamed(
      cuts.map((cut) => [String(cut), daysTo(trial, cut)]),
      'list',
    )}`,
    describing,
  ].join('\n');
}

function replicating(trial: Trial): string {
  const scored = trial.metadata.variables[0]!.kind === 'scored';
  return scored ? 'none' : (commonUnit(trial) ?? 'none');
}

/** "factor=level", several joined by a comma: how the script names a treatment. */
export function labelOf(trial: Trial, treatment: Treatment): string {
  const ids = (trial.metadata.factors ?? []).map(({ id }) => id).filter((id) => Object.hasOwn(treatment, id));
  return ids.map((id) => `${id}=${treatment[id]!}`).join(', ');
}

function namedCuts(trial: Trial): Cut[] {
  const numbers = cutNumbers(trial);
  return numbers.length > 1 ? ['all', ...numbers] : ['all'];
}

function daysTo(trial: Trial, cut: Cut): string {
  const { sown, transplanted } = trial.metadata.dates ?? {};
  const [from, to] = [transplanted ?? sown, dateOfCut(trial, cut)];
  if (from === undefined || to === null || to <= from) return 'NA_real_';
  return `as.numeric(as.Date(${rString(to)}) - as.Date(${rString(from)}))`;
}

/** The part of the cover, in m2, that one position has. */
function coverOfPositions(trial: Trial): string {
  const { containers, variables } = trial.metadata;
  const weight = isWeight(variables[0]!.unit);
  const area = ({ cover, rows, columns }: Container) => {
    if (!weight || !cover) return 'NA_real_';
    const metres = rNumber(metresIn[cover.unit]!);
    return `${rNumber(cover.length)} * ${metres} * (${rNumber(cover.width)} * ${metres}) / (${rows} * ${columns})`;
  };
  const entries = containers.map((container): [string, string] => [container.id, area(container)]);
  return `# The part of its container's cover, in m2, that one position has.\ncover_per_position <- ${rNamed(entries).replaceAll(', "', ',\n  "')}`;
}
