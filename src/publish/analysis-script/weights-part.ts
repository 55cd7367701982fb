import type { UnitStratum } from '../../compute/experimental-unit.ts';
import { positionKey } from '../../compute/position-key.ts';
import type { Trial } from '../../model/trial.ts';
import { guardedText } from '../formula-guard.ts';
import { rHeading, rNamed, rNumber, rString, rStrings } from './r-text.ts';

const reading = String.raw`
weights <- read.csv("weights.csv", colClasses = "character", na.strings = character(0),
                    check.names = FALSE, encoding = "UTF-8")
weights$.weight <- as.numeric(weights[[variable]])      # an empty cell becomes NA
weights$.pot_total <- as.numeric(weights$pot_total)
weights$.row <- as.integer(weights$row)
weights$.column <- as.integer(weights$column)
weights$.position <- paste(weights$container, weights$row, weights$column)
# A position outside every plot is a plot by itself.
weights$plot <- ifelse(weights$plot == "", weights$.position, weights$plot)
for (name in names(factor_levels)) {
  weights[[name]] <- factor(weights[[name]], levels = levels_in_file[[name]], labels = factor_levels[[name]])
}
# A treatment is written "factor=level", several joined by a comma.
treatment_of <- function(d, factors) {
  if (length(factors) == 0) return(rep("", nrow(d)))
  parts <- lapply(factors, function(name) paste0(name, "=", as.character(d[[name]])))
  do.call(paste, c(parts, sep = ", "))
}
weights$.treatment <- treatment_of(weights, names(factor_levels))
`;

const adding = String.raw`
# A weight that is left out on purpose (culled, not planted) is NA. A weight that is not known is
# Inf, so that every sum with it is Inf: not known either, and never 0.
total <- function(x) if (all(is.na(x))) NA_real_ else sum(x[!is.na(x)])
known <- function(x) x[!is.na(x) & x < Inf]

# Weights of plants and of pots over one cut, or over "all": the cuts of each are summed.
#   set        per plant set: dead plants and those without regrowth count as 0
#   harvested  per plant harvested: those are left out
#   pot        the sum of a pot's plants set; where one is not known, the total of the whole pot
yields <- function(cut) {
  d <- if (cut == "all") weights else weights[weights$cut == cut, ]
  value <- ifelse(is.na(d$.weight) | d$status == "not weighed", Inf, d$.weight)
  out <- d$status %in% c("culled", "not planted")
  lost <- d$status %in% c("dead", "no regrowth")
  set <- ifelse(out, NA, ifelse(lost, 0, value))
  harvested <- ifelse(out | lost, NA, value)
  # A pot of one plant that was weighed whole is that plant.
  d$plant <- ifelse(d$plant == "" & d$.plants_set == 1, "1", d$plant)
  key <- paste(d$.position, d$plant)
  key <- factor(key, levels = unique(key))
  plants <- d[!duplicated(key), ]
  plants$set <- as.vector(tapply(set, key, total))
  plants$harvested <- as.vector(tapply(harvested, key, total))
  pots <- d[!duplicated(d$.position), ]
  place <- function(x) factor(x, levels = pots$.position)
  pots$pot <- as.vector(tapply(plants$set, place(plants$.position), total))
  pot_of_cut <- function(rows) {
    own <- total(set[rows])
    weighed <- d$.pot_total[rows]
    weighed <- weighed[!is.na(weighed)]
    if (!is.na(own) && own == Inf && length(weighed) > 0) weighed[1] else own
  }
  for (i in which(pots$pot == Inf)) {
    rows <- which(d$.position == pots$.position[i])
    pots$pot[i] <- total(sapply(split(rows, d$cut[rows]), pot_of_cut))
  }
  list(plants = plants[plants$plant != "", ], pots = pots)
}
`;

/** Reads weights.csv and adds plants and pots up over the cuts. */
export function weightsPart(trial: Trial, squareUnit: UnitStratum | null): string {
  const factors = trial.metadata.factors ?? [];
  const levels = (text: (id: string) => string) =>
    rNamed(
      factors.map(({ id, levels }) => [id, rStrings(levels.map((level) => text(level.id)))]),
      'list',
    );
  const guarded = factors.some((factor) => factor.levels.some(({ id }) => guardedText(id) !== id));
  return [
    rHeading('1. The weights'),
    `variable <- ${rString(trial.metadata.variables[0]!.id)}`,
    `factor_levels <- ${levels((id) => id)}`,
    guarded
      ? `# The file has an apostrophe before text that a spreadsheet would run.\nlevels_in_file <- ${levels(guardedText)}`
      : 'levels_in_file <- factor_levels',
    reading,
    plantsSet(trial),
    squareUnit === null ? '' : bands(squareUnit),
    adding,
  ].join('\n');
}

/** Plants set in each pot, which the weights show only where plants were weighed singly. */
function plantsSet(trial: Trial): string {
  if (trial.positions.every(({ plants }) => plants === 1)) {
    return 'weights$.plants_set <- 1                                 # one plant in every pot';
  }
  const entries = trial.positions.map((position): [string, string] => [
    positionKey(position),
    rNumber(position.plants),
  ]);
  return `# Plants set in each pot, by container, row and column.\nplants_set <- ${wrapped(rNamed(entries))}\nweights$.plants_set <- plants_set[weights$.position]`;
}

/** Long vectors over several lines. */
function wrapped(vector: string): string {
  return vector.replace(/((?:[^,]+, ){8})/g, '$1\n  ').replace(/ +\n/g, '\n');
}

/** The rows and columns of a Latin square: the bands of the grid that its units lie in. */
function bands(unit: UnitStratum): string {
  const column = columnOfUnit(unit);
  return [
    '# Rows and columns of the square: the bands of the grid that its units lie in.',
    `weights$row <- paste(weights$container, ave(weights$.row, weights[[${rString(column)}]], FUN = min))`,
    `weights$column <- paste(weights$container, ave(weights$.column, weights[[${rString(column)}]], FUN = min))`,
  ].join('\n');
}

/** The column of the script's table that names the units of a stratum. */
export function columnOfUnit(unit: UnitStratum): string {
  return unit === 'position' ? '.position' : unit;
}
