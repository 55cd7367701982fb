import type { AnalysisKind } from '../../compute/inference/analysis-plan.ts';
import { rHeading } from './r-text.ts';
import { restrictedLikelihood } from './restricted-likelihood.ts';

const modelling = String.raw`
# The known weights of one measure and cut: one row a pot, or a plant.
observations <- function(measure, cut) {
  y <- yields(cut)
  d <- if (measure == "per_pot") y$pots else y$plants
  d$.value <- d[[c(per_pot = "pot", per_plant_set = "set", per_plant_harvested = "harvested")[[measure]]]]
  d <- d[!is.na(d$.value) & d$.value < Inf, ]
  for (name in intersect(c("container", "plot", ".position", "block", "row", "column"), names(d))) {
    d[[name]] <- factor(d[[name]], levels = unique(d[[name]]))
  }
  droplevels(d)
}

# The columns of one term of a model: products of contrasts of its factors, each of length 1 and
# summing to zero over the levels.
contrasts_of <- function(f) {
  m <- contr.helmert(nlevels(f))
  sweep(m, 2, sqrt(colSums(m^2)), "/")[as.integer(f), , drop = FALSE]
}
term_columns <- function(term, d) {
  x <- matrix(1, nrow(d), 1)
  for (name in term) {
    own <- contrasts_of(d[[name]])
    x <- x[, rep(seq_len(ncol(x)), each = ncol(own)), drop = FALSE] *
      own[, rep(seq_len(ncol(own)), ncol(x)), drop = FALSE]
  }
  x
}

# A model: its columns x, the term of each (0 for the general mean), which columns are independent of
# those before them (keep), and for each dependent one the combination that is zero (null).
model_of <- function(terms, d) {
  parts <- lapply(terms, term_columns, d = d)
  x <- do.call(cbind, c(list(matrix(1, nrow(d), 1)), parts))
  q <- qr(x, tol = 1e-7)
  keep <- sort(q$pivot[seq_len(q$rank)])
  dependent <- setdiff(seq_len(ncol(x)), keep)
  null <- matrix(0, ncol(x), length(dependent))
  for (j in seq_along(dependent)) {
    null[keep, j] <- qr.coef(qr(x[, keep, drop = FALSE]), x[, dependent[j]])
    null[dependent[j], j] <- -1
  }
  null[abs(null) < 1e-9] <- 0
  list(terms = terms, x = x, term = c(0, rep(seq_along(terms), sapply(parts, ncol))), keep = keep, null = null)
}
whole <- function(m, part) {              # a matrix of the kept columns among all columns
  full <- matrix(0, ncol(m$x), ncol(m$x))
  full[m$keep, m$keep] <- part
  full
}
estimable <- function(m, l) {
  all(abs(crossprod(m$null, l)) <= 1e-8 * sqrt(sum(l^2)) * sqrt(colSums(m$null^2)))
}

# A fitted model is the model with its coefficients b, their covariances V, the derivatives D of V by
# each variance it rests on, the sampling covariances A of those variances, and the share of V that
# no error can be found for (lacking).

# Least squares, one error.
fit_by_least_squares <- function(terms, d) {
  m <- model_of(terms, d)
  q <- qr(m$x[, m$keep, drop = FALSE])
  m$b <- replace(numeric(ncol(m$x)), m$keep, qr.coef(q, d$.value))
  m$df <- nrow(d) - length(m$keep)
  m$variance <- sum(qr.resid(q, d$.value)^2) / m$df
  m$D <- list(whole(m, chol2inv(qr.R(q))))
  m$V <- m$D[[1]] * m$variance
  m$A <- matrix(2 * m$variance^2 / m$df)
  m$lacking <- 0 * m$V
  m
}

# Groups that coincide with treatments (one tank for each strength) put an error of their own, which
# cannot be known, into every mean and difference that they tell apart.
with_confounded_groups <- function(fit, d, columns) {
  q <- qr(fit$x[, fit$keep, drop = FALSE])
  for (name in columns) {
    for (group in unique(d[[name]])) {
      pull <- replace(numeric(ncol(fit$x)), fit$keep, qr.coef(q, (d[[name]] == group) * 1))
      fit$lacking <- fit$lacking + outer(pull, pull)
    }
  }
  fit
}

spread_of <- function(fit, l, greatest) {   # standard error and degrees of freedom (Satterthwaite)
  form <- function(M) sum(l * (M %*% l))
  if (form(fit$lacking) > 1e-12 * sum(l^2)) return(c(NA, NA))
  v <- form(fit$V)
  g <- sapply(fit$D, form)
  c(sqrt(v), min(greatest, 2 * v^2 / sum(g * (fit$A %*% g))))
}

# The studentized range: the chance that the range of "groups" means, over the standard error of one,
# exceeds q. Two groups are a t test. R's ptukey is off by up to 2e-4 at few degrees of freedom and has
# none below 2, so there the integral is taken here.
range_tail <- function(q, groups, df) {
  if (anyNA(c(q, df))) return(NA_real_)
  if (groups == 2) return(2 * pt(-q / sqrt(2), df))
  if (df >= 10) return(ptukey(q, groups, df, lower.tail = FALSE))
  z <- seq(-9, 9, by = 0.1)
  f <- function(u) {
    c <- min(q, 1e8) * sqrt(qchisq(u, df) / df)
    colSums(0.1 * groups * dnorm(z) * (pnorm(z) - pnorm(outer(z, c, "-")))^(groups - 1))
  }
  1 - integrate(f, 0, 1, rel.tol = 1e-9, abs.tol = 1e-10, subdivisions = 1000, stop.on.error = FALSE)$value
}
# The value that a decreasing tail passes with the chance alpha.
critical_value <- function(tail) {
  exp(uniroot(function(x) tail(exp(x)) - alpha, c(0, 4), extendInt = "downX", tol = 1e-11)$root)
}

# Adjusted means of the combinations of some factors, all other factors and blocks with equal weights,
# and every pair of them by Tukey and Kramer. "greatest" bounds the degrees of freedom: those of the stratum of the
# factors' own unit.
family_of <- function(fit, factors, d, greatest, tested) {
  grid <- expand.grid(rev(lapply(d[factors], function(f) factor(levels(f), levels = levels(f)))))
  L <- matrix(0, nrow(grid), ncol(fit$x))
  L[, 1] <- 1
  for (k in seq_along(fit$terms)) {
    if (all(fit$terms[[k]] %in% factors)) L[, fit$term == k] <- term_columns(fit$terms[[k]], grid)
  }
  label <- treatment_of(grid, factors)
  estimate <- function(l) if (estimable(fit, l)) sum(l * fit$b) else NA_real_
  s <- apply(L, 1, function(l) if (tested && estimable(fit, l)) spread_of(fit, l, greatest) else c(NA, NA))
  means <- data.frame(treatment = label, mean = apply(L, 1, estimate), se = s[1, ], df = s[2, ])
  # A mean that is rounding beside the others is 0: all of a treatment may have died.
  means$mean[which(abs(means$mean) <= 1e-12 * max(abs(means$mean), 0, na.rm = TRUE))] <- 0
  reach <- suppressWarnings(qt(1 - alpha / 2, means$df)) * means$se
  means$lower <- means$mean - reach
  means$upper <- means$mean + reach
  differences <- NULL
  if (tested) {
    pairs <- combn(nrow(grid), 2)
    D <- L[pairs[1, ], , drop = FALSE] - L[pairs[2, ], , drop = FALSE]
    groups <- length(unique(as.vector(pairs[, apply(D, 1, estimable, m = fit)])))
    s <- apply(D, 1, function(l) if (estimable(fit, l)) spread_of(fit, l, greatest) else c(NA, NA))
    differences <- data.frame(a = label[pairs[1, ]], b = label[pairs[2, ]], estimate = apply(D, 1, estimate),
                              se = s[1, ], df = s[2, ])
    critical <- NA * differences$df
    alike <- signif(differences$df, 9)
    for (df in unique(alike[!is.na(alike)])) {
      critical[alike %in% df] <- critical_value(function(q) range_tail(q, groups, df))
    }
    reach <- critical * differences$se / sqrt(2)
    differences$lower <- differences$estimate - reach
    differences$upper <- differences$estimate + reach
    differences$p_adjusted <- mapply(range_tail, sqrt(2) * abs(differences$estimate) / differences$se,
                                     groups, differences$df)
  }
  list(L = L, means = means, differences = differences)
}
`;

const typeThree = String.raw`
# Each term after all others (Type III), by drop1 with contrasts that sum to zero. "errors" name the stratum
# of each term; the last is that of the residual.
type_three <- function(formula, d, errors) {
  old <- options(contrasts = c("contr.sum", "contr.poly"))
  on.exit(options(old))
  model <- lm(formula, d)
  full <- drop1(model, . ~ ., test = "F")[-1, ]
  residual <- sum(residuals(model)^2)
  df <- df.residual(model)
  term <- gsub(backtick, "", attr(terms(model), "term.labels"))
  rows <- data.frame(term = term, df = full[["Df"]], sum_of_squares = full[["Sum of Sq"]],
                     mean_square = full[["Sum of Sq"]] / full[["Df"]], error = errors[-length(errors)], error_df = df,
                     f = full[["F value"]], p = full[["Pr(>F)"]])
  rbind(rows, data.frame(term = "residual", df = df, sum_of_squares = residual, mean_square = residual / df,
                         error = errors[length(errors)], error_df = NA, f = NA, p = NA))
}
`;

const strata = String.raw`
# The analysis of variance of a balanced design from aov: each term is tested against the error of the
# stratum in which it was allotted; blocks are fixed and stand against the coarsest. "names" are the
# strata, coarsest first; "columns" are the columns of all but the last, which aov calls Within.
strata_table <- function(model, d, blocks, names, columns) {
  parts <- if (inherits(model, "aovlist")) model[names(model) != "(Intercept)"] else list(Within = model)
  rows <- do.call(rbind, lapply(names(parts), function(stratum) {
    s <- summary(parts[[stratum]])[[1]]
    last <- df.residual(parts[[stratum]]) > 0
    term <- gsub(backtick, "", trimws(rownames(s)))
    name <- c(names, names[length(names)])[match(stratum, c(columns, "Within"))]
    data.frame(stratum = name, term = term, residual = last & seq_along(term) == length(term),
               df = s[["Df"]], sum_of_squares = s[["Sum Sq"]])
  }))
  rows$block <- !rows$residual & rows$term %in% blocks
  rows$term[rows$residual] <- "residual"
  # Blocks that lie in several strata (the rows of several squares) are one line.
  for (term in unique(rows$term[rows$block])) {
    own <- which(rows$block & rows$term == term)
    last <- own[length(own)]
    rows$df[last] <- sum(rows$df[own])
    rows$sum_of_squares[last] <- sum(rows$sum_of_squares[own])
    rows <- rows[setdiff(seq_len(nrow(rows)), own[-length(own)]), ]
  }
  coarsest <- intersect(names, rows$stratum[!rows$block])[1]
  rows$error <- ifelse(rows$block, coarsest, rows$stratum)
  at <- match(rows$error, ifelse(rows$residual, rows$stratum, NA))
  rows$mean_square <- rows$sum_of_squares / rows$df
  rows$error_df <- ifelse(rows$residual, NA, rows$df[at])
  # An error that is rounding noise (units treated alike weighed alike) is none.
  noise <- max(1e-28 * sum(d$.value^2), 1e-20 * sum((d$.value - mean(d$.value))^2))
  rows$usable <- rows$residual & rows$sum_of_squares > noise
  rows$f <- ifelse(rows$residual | !rows$usable[at], NA, rows$mean_square / rows$mean_square[at])
  rows$p <- pf(rows$f, rows$df, rows$error_df, lower.tail = FALSE)
  rows
}

# Variances by stratum, from the mean squares; one below zero is given as it came out.
strata_components <- function(table, names, columns, d) {
  size <- c(nrow(d) / vapply(columns, function(name) nlevels(d[[name]]), 1L), 1)
  here <- names %in% table$stratum[!table$block]
  square <- table$mean_square[match(names[here], ifelse(table$residual, table$stratum, NA))]
  data.frame(term = names[here], variance = (square - c(square[-1], 0)) / size[here])
}

# Least squares with each term's covariance from the mean square of its stratum; those mean squares are
# independent, with sampling variances 2 MS^2 / df.
fit_by_strata <- function(terms, d, table) {
  m <- model_of(terms, d)
  q <- qr(m$x[, m$keep, drop = FALSE])
  m$b <- replace(numeric(ncol(m$x)), m$keep, qr.coef(q, d$.value))
  unscaled <- whole(m, chol2inv(qr.R(q)))
  found <- unique(table$stratum[!table$block])
  coarsest <- if (any(table$block)) table$error[table$block][1] else found[1]
  home <- table$stratum[match(sapply(terms, paste, collapse = ":"), ifelse(table$block, NA, table$term))]
  home <- c(coarsest, ifelse(is.na(home), coarsest, home))[m$term + 1]
  share <- lapply(found, function(s) unscaled * outer(home == s, home == s))
  error <- match(found, ifelse(table$usable, table$stratum, NA))
  square <- table$mean_square[error]
  has <- !is.na(error)
  m$D <- share[has]
  m$V <- Reduce("+", Map("*", share[has], square[has]))
  m$A <- diag(2 * square[has]^2 / table$df[error[has]], sum(has))
  m$lacking <- Reduce("+", share[!has], 0 * unscaled)
  m
}
`;

/** What every analysis of the trial needs, and the kinds of model that it uses. */
export function linearModelPart(kinds: ReadonlySet<AnalysisKind>): string {
  return [
    rHeading('3. Models: adjusted means and their comparison'),
    'alpha <- 0.05',
    'backtick <- "\\x60"            # R quotes some names with it',
    modelling,
    kinds.has('strata') ? strata : '',
    kinds.has('least squares') ? typeThree : '',
    kinds.has('likelihood') ? restrictedLikelihood : '',
  ].join('\n');
}
