import { comparisonWithCheck } from './comparison-with-check.ts';
import { rHeading } from './r-text.ts';

/** Which further parts the trial's entries need. */
export interface ConclusionParts {
  check: boolean;
  ranks: boolean;
  arrangements: boolean;
  otherScale: boolean;
}

const units = String.raw`
# The means of the experimental units of the finest factor, and what blocks, coarser units and
# treatments leave of them.
unit_means <- function(d, fit, design) {
  unit <- factor(d[[design$unit]], levels = unique(d[[design$unit]]))
  u <- d[!duplicated(unit), ]
  u$.value <- as.vector(tapply(d$.value, unit, mean))
  x <- model_of(fit$terms, u)$x
  for (name in design$columns) {
    groups <- unique(u[[name]])
    if (length(groups) < nrow(u)) x <- cbind(x, outer(u[[name]], groups, "==") * 1)
  }
  u$.residual <- qr.resid(qr(x), u$.value)
  u
}

# Positions whose residual is too large to be one of so many: externally studentised, p times their number.
unusual_positions <- function(d, fit) {
  place <- factor(d$.position, levels = unique(d$.position))
  u <- d[!duplicated(place), ]
  q <- qr(model_of(fit$terms, u)$x, tol = 1e-7)
  e <- qr.resid(q, as.vector(tapply(d$.value, place, mean)))
  free <- 1 - rowSums(qr.Q(q)[, seq_len(q$rank), drop = FALSE]^2)
  df <- nrow(u) - q$rank - 1
  if (df < 1) return(u[0, c("container", ".row", ".column")])
  t <- e / sqrt(pmax(0, sum(e^2) - e^2 / free) / df * free)
  odd <- which(free > 1e-9 & 2 * pt(-abs(t), df) * nrow(u) < alpha)
  data.frame(container = as.character(u$container)[odd], row = u$.row[odd], column = u$.column[odd],
             residual = e[odd])
}

# The checks: are residuals like normal ones (Shapiro-Wilk), are treatments equally spread
# (Brown-Forsythe: analysis of variance of the distances from each group's median)?
checks_of <- function(d, u, fit) {
  normal <- tryCatch(shapiro.test(u$.residual), error = function(e) list(statistic = NA, p.value = NA))
  distance <- abs(u$.value - ave(u$.value, u$.treatment, FUN = median))
  spread <- rep(NA_real_, 4)
  if (min(table(u$.treatment)) > 1) {
    spread <- tryCatch(unlist(anova(lm(distance ~ factor(u$.treatment)))[c(4, 1, 5)])[c(1, 3, 4, 5)],
                       warning = function(w) spread)
  }
  list(shapiro_wilk = c(w = unname(normal$statistic), p = normal$p.value),
       brown_forsythe = c(f = spread[[1]], df1 = spread[[2]], df2 = spread[[3]], p = spread[[4]]),
       unusual = unusual_positions(d, fit))
}
`;

const conclude = String.raw`
# Everything that the published analysis says of one measure and cut. "design" says what was fitted:
#   blocks, terms  fixed terms, each the names of its factors
#   tested         whether each of the terms can be tested
#   compared       whether levels are compared: also where not all combinations of a factor were grown, so
#                  that it has no test, but some of its levels had every combination
#   greatest       the error degrees of freedom of the stratum of each term's own unit
#   strata         names of the errors, coarsest first; columns names their groups, but for the last
#   unit           the column that names the units of the finest factor; unit_stratum their stratum
conclude <- function(measure, cut, d, fit, anova, components, design) {
  label <- sapply(design$terms, paste, collapse = ":")
  anova <- anova[, c("term", "df", "sum_of_squares", "mean_square", "error", "error_df", "f", "p")]
  hidden <- anova$term %in% label[!design$tested]
  anova[hidden, c("f", "p")] <- NA                         # no error to test these against
  anova$error_df[anova$term %in% label[!design$tested & design$greatest == 0]] <- 0
  families <- lapply(seq_along(design$terms), function(k) {
    family_of(fit, design$terms[[k]], d, design$greatest[k], design$compared[k])
  })
  u <- unit_means(d, fit, design)
  bind <- function(part) do.call(rbind, lapply(families, function(family) family[[part]]))
  result <- list(measure = measure, cut = cut, verdict = "tested", anova = anova,
                 variance_components = components, means = bind("means"), differences = bind("differences"))
  result <- c(result, checks_of(d, u, fit))
  se <- result$differences$se[!is.na(result$differences$se)]
  result$sed <- if (length(se) > 0) c(smallest = min(se), mean = mean(se), largest = max(se))

  # Fisher's protected least significant difference: one factor, F significant, replication equal.
  only <- families[[1]]$differences
  result$least_significant_difference <- NA_real_
  if (length(families) == 1 && design$tested && anova$p[match(label, anova$term)] < alpha &&
      !anyNA(only$se) && diff(range(only$se)) <= 1e-9 * only$se[1] && diff(range(only$df)) <= 1e-9 * only$df[1]) {
    result$least_significant_difference <- qt(1 - alpha / 2, only$df[1]) * only$se[1]
  }

  # The standard deviation of a unit's mean, in percent of the general mean.
  count <- c(vapply(design$columns, function(name) nlevels(d[[name]]), 1L), nrow(d))
  from <- match(design$unit_stratum, design$strata)
  parts <- seq_along(design$strata) >= from
  variance <- components$variance[match(design$strata, components$term)]
  of_mean <- sum((variance * nrow(u) / count)[parts])
  result$cv_percent <- if (!is.na(of_mean) && of_mean > 0 && mean(d$.value) > 0)
    100 * sqrt(of_mean) / mean(d$.value) else NA_real_
  result$residuals <- data.frame(unit = u[[design$unit]], fitted = u$.value - u$.residual,
                                 residual = u$.residual, normal_score = normal_scores(u$.residual))
  # How many plants of each unit are worth weighing: the variance of a mean, in percent of what it is.
  if (from == length(design$strata) - 1 && !anyNA(variance[parts])) {
    weighed <- nrow(d) / count[[from]]
    with <- function(plants) max(0, variance[from]) + variance[from + 1] / plants
    plants <- c(1, 2, 3, 4, 6, 8, 12, 16, 24)
    result$plants_per_unit <- data.frame(plants = plants, variance_percent = 100 * with_each(with, plants) / with(weighed))
  }
  for (factor in names(checks)) {
    k <- match(factor, label)
    if (is.na(k) || !design$compared[k] || !(checks[[factor]] %in% levels(d[[factor]]))) next
    result$against_check <- rbind(result$against_check, against_check(fit, families[[k]], factor, checks[[factor]]))
  }
  result
}
normal_scores <- function(x) qnorm((rank(x) - (a <- if (length(x) <= 10) 3 / 8 else 1 / 2)) / (length(x) + 1 - 2 * a))
with_each <- function(f, x) sapply(x, f)

show_result <- function(result) {
  cat("\n==", result$measure, ", cut:", result$cut, "==\n")
  for (name in setdiff(names(result), c("measure", "cut", "residuals"))) {
    cat("\n", name, "\n", sep = "")
    print(result[[name]], digits = 7)
  }
}
not_tested <- function(measure, cut, reason) {
  cat("\n==", measure, ", cut:", cut, "==\nnot tested\n")
  writeLines(strwrap(reason, 90))
  list(measure = measure, cut = cut, verdict = "not tested", reason = reason)
}
`;

const otherScale = String.raw`
# Means of an analysis on another scale, turned back; its F and p.
on_other_scale <- function(result, from) {
  back <- result$means[, c("treatment", "mean", "lower", "upper")]
  back[-1] <- lapply(back[-1], from)
  list(terms = result$anova[, c("term", "f", "p")], means = back)
}
`;

const ranks = String.raw`
# For scores and counts: medians, and a test on ranks of the units (of block means in blocks).
rank_test <- function(d, fit, design) {
  u <- unit_means(d, fit, design)
  treatment <- factor(u$.treatment, levels = unique(u$.treatment))
  if (length(unique(u$block)) < 2) {
    test <- kruskal.test(u$.value, treatment)
  } else {
    m <- tapply(u$.value, list(u$block, treatment), mean)
    test <- friedman.test(m[complete.cases(m), , drop = FALSE])
  }
  list(statistic = unname(test$statistic), df = unname(test$parameter), p = test$p.value,
       medians = data.frame(treatment = levels(treatment), median = as.vector(tapply(u$.value, treatment, median)),
                            n = as.vector(table(treatment))))
}
`;

const arrangements = String.raw`
# The exact randomisation test: every arrangement that lots could have given, treatments changing places
# within blocks (or coarser units) only, and the share of them whose treatment sum of squares is at least
# as large as that of the arrangement used.
orders_of <- function(x) {
  if (length(unique(x)) == 1) return(matrix(x, 1))
  do.call(rbind, lapply(unique(x), function(first) cbind(first, orders_of(x[-match(first, x)]))))
}
randomisation_test <- function(d, fit, design, factors, within) {
  u <- unit_means(d, fit, design)
  treatment <- as.integer(factor(treatment_of(u, factors)))
  t <- max(treatment)
  pools <- split(seq_len(nrow(u)), do.call(paste, c(list(rep("", nrow(u))), u[within])))
  C <- matrix(0, t, t)
  sums <- matrix(0, 1, t)
  observed <- numeric(t)
  totals <- function(e, order) sapply(seq_len(t), function(k) sum(e[order == k]))
  for (pool in pools) {
    e <- u$.value[pool] - mean(u$.value[pool])
    counts <- tabulate(treatment[pool], t)
    C <- C + diag(counts, t) - outer(counts, counts) / length(pool)
    observed <- observed + totals(e, treatment[pool])
    own <- t(apply(orders_of(treatment[pool]), 1, totals, e = e))
    sums <- sums[rep(seq_len(nrow(sums)), nrow(own)), , drop = FALSE] +
      own[rep(seq_len(nrow(own)), each = nrow(sums)), , drop = FALSE]
  }
  form <- function(q) rowSums((q[, -t, drop = FALSE] %*% solve(C[-t, -t])) * q[, -t, drop = FALSE])
  # Ties are ties: sums that differ by rounding alone are equal.
  least <- form(matrix(observed, 1)) * (1 - 1e-10)
  list(p = mean(form(sums) >= least), arrangements = nrow(sums))
}
`;

/** What is concluded from a fitted model: comparisons, checks, and the further tests that the trial has. */
export function conclusionsPart(parts: ConclusionParts, checks: string): string {
  return [
    rHeading('4. Conclusions from a model'),
    '# The check of each factor that names one.',
    `checks <- ${checks}`,
    parts.check ? comparisonWithCheck : '',
    units,
    conclude,
    parts.otherScale ? otherScale : '',
    parts.ranks ? ranks : '',
    parts.arrangements ? arrangements : '',
  ].join('\n');
}
