import { largestOfRelated } from './largest-of-related.ts';

/** R functions of Dunnett's comparison with a check, by numerical integration. */
export const comparisonWithCheck = String.raw`
# Dunnett's test: the chance that the largest |t| of several comparisons with one check exceeds t, their
# correlations being R. Where each correlation is a product b[i] b[j], comparisons are independent given
# one normal z, and the chance is an integral over z and over the standard error's own error s
# (C. W. Dunnett, 1955, JASA 50, 1096-1121). For other correlations (blocks or plants that are not balanced)
# see the next functions.
product_factors <- function(R) {
  k <- nrow(R)
  if (k == 1) return(0)
  if (max(abs(R[upper.tri(R)])) < 1e-8) return(rep(0, k))
  i <- which(abs(R) == max(abs(R[upper.tri(R)])) & upper.tri(R), arr.ind = TRUE)[1, ]
  others <- setdiff(seq_len(k), i)
  third <- if (k > 2) others[which.max(abs(R[i[2], others]))] else NA
  simple <- k == 2 || abs(R[i[2], third]) < 1e-8
  square <- if (simple) abs(R[i[1], i[2]]) else R[i[1], i[2]] * R[i[1], third] / R[i[2], third]
  b <- if (square <= 0) rep(NA, k) else replace(R[i[1], ] / sqrt(square), i[1], sqrt(square))
  fits <- all(abs(R - outer(b, b))[upper.tri(R)] < 1e-8) && all(abs(b) < 1)
  if (is.na(fits) || !fits) NULL else b
}
# The chance that all of several normals lie within w, a vector, where their correlations are b[i] b[j].
product_within <- function(b, w) {
  z <- seq(-9, 9, by = 0.1)                # the trapezoidal rule is exact enough on so smooth a curve
  within <- lapply(b, function(own) {
    s <- sqrt(1 - own^2)
    pnorm(outer(own * z, w, "+") / s) - pnorm(outer(own * z, w, "-") / s)
  })
  colSums(dnorm(z) * 0.1 * Reduce("*", within))
}
${largestOfRelated}
largest_t <- function(R) {
  k <- nrow(R)
  b <- product_factors(R)
  left <- tryCatch(min(diag(chol(R)))^2, error = function(e) 0)
  if (is.null(b) && (k > 12 || left < 0.01)) {
    # Too many, or all but singular: averaged over directions drawn with a seed. The published figures rest on
    # other directions: there p and the limits agree to about one part in a thousand only.
    set.seed(1955)
    u <- matrix(rnorm(100000 * k), k)
    e <- eigen(R, symmetric = TRUE)
    root <- sqrt(pmax(e$values, 0)) * t(e$vectors)
    m <- apply(abs(crossprod(root, sweep(u, 2, sqrt(colSums(u^2)), "/"))), 2, max)
    return(function(t, df) mean(pf((t / m)^2 / k, k, df, lower.tail = FALSE)))
  }
  within <- if (is.null(b)) related_within(R) else function(w) product_within(b, w)
  function(t, df) {
    f <- function(u) within(t * sqrt(qchisq(u, df) / df))
    1 - integrate(f, 0, 1, rel.tol = 1e-10, abs.tol = 1e-11, subdivisions = 1000, stop.on.error = FALSE)$value
  }
}
against_check <- function(fit, family, factor, check) {
  level <- paste0(factor, "=", check)
  control <- match(level, family$means$treatment)
  means <- family$means$mean
  if (is.na(means[control])) return(NULL)
  others <- setdiff(seq_along(means), control)
  pairs <- family$differences
  # A difference of level - check stands in the family as one or the other.
  at <- sapply(others, function(i) which((pairs$a == level & pairs$b == family$means$treatment[i]) |
                                           (pairs$b == level & pairs$a == family$means$treatment[i])))
  sign <- ifelse(pairs$a[at] == level, -1, 1)
  L <- sweep(family$L[others, , drop = FALSE], 2, family$L[control, ])
  known <- !is.na(pairs$se[at])
  chance <- if (any(known)) largest_t(cov2cor(L[known, , drop = FALSE] %*% fit$V %*% t(L[known, , drop = FALSE])))
  d <- data.frame(treatment = family$means$treatment[others], estimate = sign * pairs$estimate[at],
                  se = pairs$se[at], df = pairs$df[at])
  critical <- NA * d$df
  alike <- signif(d$df, 9)
  for (df in unique(alike[known])) {
    critical[alike %in% df] <- critical_value(function(t) chance(t, df))
  }
  d$lower <- d$estimate - critical * d$se
  d$upper <- d$estimate + critical * d$se
  d$p_adjusted <- mapply(function(t, df) if (is.na(t)) NA else chance(t, df), abs(d$estimate) / d$se, d$df)
  d$percent_of_check <- if (means[control] > 0) 100 * means[others] / means[control] else NA
  d
}
`;
