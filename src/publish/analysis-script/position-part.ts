import type { PositionEffects } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { rHeading, rNamed } from './r-text.ts';

const place = String.raw`
# Does place matter within a container? Slopes along rows and columns are fitted beside treatments and
# blocks; Moran's I asks whether neighbours (side by side in a row or column) are alike in what
# treatments leave, with its expectation and variance for residuals (A. D. Cliff and J. K. Ord, 1981,
# Spatial Processes, chapter 8) and its exact p from the distribution of a quadratic form.
slope_of <- function(name, d, formula) {
  none <- c(slope = NA, se = NA, t = NA, df = NA, p = NA)
  if (nrow(d) < 3 || length(unique(d[[name]])) < 2) return(none)
  model <- lm(formula, d)
  # Fitted last, a slope that cannot be told apart from the rest has no coefficient.
  if (is.na(coef(model)[[name]])) return(none)
  df <- df.residual(model)
  if (df == 0) return(c(slope = coef(model)[[name]], se = NA, t = NA, df = NA, p = NA))
  s <- coef(suppressWarnings(summary(model)))[name, ]
  c(slope = s[[1]], se = s[[2]], t = s[[3]], df = df, p = s[[4]])
}
morans_i <- function(d) {
  none <- c(i = NA, expected = NA, variance = NA, p = NA, exact_p = NA)
  n <- nrow(d)
  if (n < 3) return(none)
  x <- if (nlevels(d$.treatment) > 1) model.matrix(~ .treatment, d) else matrix(1, n, 1)
  W <- (abs(outer(d$.row, d$.row, "-")) + abs(outer(d$.column, d$.column, "-")) == 1) * 1
  q <- qr(x)
  m <- n - q$rank
  e <- qr.resid(q, d$pot)
  if (sum(W) == 0 || m == 0 || sum(e^2) <= 1e-20 * sum(d$pot^2)) return(none)
  K <- qr.Q(q, complete = TRUE)[, -seq_len(q$rank), drop = FALSE]
  A <- crossprod(K, W %*% K)
  if (sum(A^2) <= 1e-20 * sum(W)) return(c(i = 0, expected = 0, variance = 0, p = NA, exact_p = NA))
  scale <- n / sum(W)
  i <- scale * sum(e * (W %*% e)) / sum(e^2)
  expected <- scale * sum(diag(A)) / m
  variance <- 2 * scale^2 * (sum(A^2) - sum(diag(A))^2 / m) / (m * (m + 2))
  if (variance <= 1e-12 * scale^2 * sum(A^2)) return(c(i = i, expected = expected, variance = 0, p = NA, exact_p = NA))
  values <- eigen(A, symmetric = TRUE)$values - i / scale
  values <- values[abs(values) > 1e-12]
  f <- function(u) sapply(u, function(u) {
    sin(sum(atan(values * u)) / 2) / (u * prod((1 + (values * u)^2)^0.25))
  })
  tail <- integrate(f, 0, 1, rel.tol = 1e-9, subdivisions = 2000)$value +
    integrate(function(v) f(1 / v) / v^2, 0, 1, rel.tol = 1e-9, subdivisions = 2000, stop.on.error = FALSE)$value
  c(i = i, expected = expected, variance = variance,
    p = pnorm((i - expected) / sqrt(variance), lower.tail = FALSE), exact_p = 0.5 + tail / pi)
}
place_of <- function(container) {
  d <- pots[as.character(pots$container) == container & !is.na(pots$pot) & pots$pot < Inf, ]
  d$.treatment <- factor(d$.treatment, levels = unique(d$.treatment))
  d$block <- factor(d$block)
  fixed <- c("1", if (nlevels(d$block) > 1) "block", if (nlevels(d$.treatment) > 1) ".treatment")
  ways <- c(".row", ".column")[c(length(unique(d$.row)) > 1, length(unique(d$.column)) > 1)]
  slope <- function(name) slope_of(name, d, reformulate(c(fixed, setdiff(ways, name), name), "pot"))
  size <- grids[[container]]
  edge <- d$.row %in% c(1, size[1]) | d$.column %in% c(1, size[2])
  mean_of <- function(here) c(mean = if (any(here)) mean(d$pot[here]) else NA, n = sum(here))
  half <- floor(size / 2)
  list(container = container, rows = slope(".row"), columns = slope(".column"),
       edge = mean_of(edge), interior = mean_of(!edge), morans_i = morans_i(d),
       halves = rbind(if (size[1] > 1) mean_of(d$.row <= half[1]), if (size[1] > 1) mean_of(d$.row > size[1] - half[1]),
                      if (size[2] > 1) mean_of(d$.column <= half[2]),
                      if (size[2] > 1) mean_of(d$.column > size[2] - half[2])))
}
pots <- yields("all")$pots
results$position <- lapply(names(grids), place_of)
for (each in results$position) {
  cat("\nPlace in container", each$container, "\n")
  print(rbind(rows = each$rows, columns = each$columns), digits = 7)
  print(each$morans_i, digits = 7)
}
`;

/** Effects of place within containers; nothing where the findings have none. */
export function positionPart(trial: Trial, effects: readonly PositionEffects[]): string {
  if (effects.length === 0) return '';
  const grids = trial.metadata.containers.map((container): [string, string] => [
    container.id,
    `c(${container.rows}, ${container.columns})`,
  ]);
  return [
    rHeading('6. Place within containers'),
    '# Rows and columns of each container.',
    `grids <- ${rNamed(grids, 'list')}`,
    place,
  ].join('\n');
}
