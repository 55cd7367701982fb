/** R functions of a mixed model: base R has no restricted maximum likelihood. */
export const restrictedLikelihood = String.raw`
# Restricted maximum likelihood, for designs that are not balanced. The responses y have the means x b
# and the covariance V = sum of v[k] G[[k]]: one G for each grouping with random error (1 where two
# rows are in the same group) and the identity for the rows themselves. Minus twice the restricted
# log-likelihood is, without its constants, log|V| + log|x' V^-1 x| + r' V^-1 r
# (H. D. Patterson and R. Thompson, 1971, Biometrika 58, 545-554).
solved <- function(v, x, G) {
  W <- chol2inv(chol(Reduce("+", Map("*", v, G))))
  C <- chol2inv(chol(crossprod(x, W %*% x)))
  list(W = W, C = C, P = W - W %*% x %*% C %*% crossprod(x, W))
}
deviance_at <- function(v, y, x, G) {
  R <- tryCatch(chol(Reduce("+", Map("*", v, G))), error = function(e) NULL)
  if (is.null(R)) return(1e100)
  z <- backsolve(R, cbind(x, y), transpose = TRUE)
  q <- qr(z[, -ncol(z), drop = FALSE])
  2 * sum(log(diag(R))) + 2 * sum(log(abs(diag(qr.R(q))))) + sum(qr.resid(q, z[, ncol(z)])^2)
}
# Its slopes by the variances: tr(P G) - y' P G P y.
slopes_at <- function(v, y, x, G) {
  P <- solved(v, x, G)$P
  e <- P %*% y
  sapply(G, function(g) sum(P * g) - sum(e * (g %*% e)))
}
# Derivatives by central differences of five points.
numerically <- function(f, v, keep) sapply(keep, function(k) {
  h <- 1e-3 * v[k]
  step <- replace(0 * v, k, h)
  (8 * (f(v + step) - f(v - step)) - (f(v + 2 * step) - f(v - 2 * step))) / (12 * h)
})

# Variances may not be below zero: one that would be is zero, and then counts as known. The likelihood
# is climbed from two starts, then its peak is refined by Newton's method on the slopes.
fit_by_likelihood <- function(terms, d, columns, names) {
  m <- model_of(terms, d)
  x <- m$x[, m$keep, drop = FALSE]
  centre <- mean(d$.value)
  y <- d$.value - centre
  # In units of the plain residual variance, so that the climb is as steep whatever the weights' own unit.
  scale <- sum(qr.resid(qr(x), y)^2) / (nrow(d) - ncol(x))
  y <- y / sqrt(scale)
  G <- c(lapply(columns, function(name) outer(d[[name]], d[[name]], "==") * 1), list(diag(nrow(d))))
  k <- length(G)
  starts <- list(rep(1 / k, k), c(rep(1 / 100, k - 1), 1))
  peaks <- lapply(starts, nlminb, objective = deviance_at, gradient = slopes_at, y = y, x = x, G = G,
                  lower = c(rep(0, k - 1), 1e-9), control = list(rel.tol = 1e-14, iter.max = 1000))
  v <- peaks[[which.min(sapply(peaks, function(peak) peak$objective))]]$par
  v[v < 1e-7] <- 0
  # The climb may stop just short of the bound: a small variance is zero where the likelihood falls from zero on.
  for (j in seq_len(k - 1)) {
    zero <- replace(v, j, 0)
    if (v[j] > 0 && v[j] < 1e-2 && slopes_at(zero, y, x, G)[j] >= 0) v <- zero
  }
  keep <- which(v > 0)
  slopes <- function(u) slopes_at(u, y, x, G)[keep]
  curvature <- function(u) matrix(numerically(slopes, u, keep), length(keep))
  for (i in 1:8) {
    move <- solve(curvature(v), slopes(v))
    while (any(v[keep] <= move)) move <- move / 2
    v[keep] <- v[keep] - move
    if (all(abs(move) < 1e-11)) break
  }
  # The observed information of the variances gives the sampling covariances A of their estimates.
  H <- curvature(v)
  at <- solved(v, x, G)
  m$b <- replace(numeric(ncol(m$x)), m$keep, at$C %*% crossprod(x, at$W %*% y) * sqrt(scale))
  m$b[1] <- m$b[1] + centre
  m$V <- whole(m, at$C * scale)
  push <- at$W %*% x %*% at$C
  m$D <- lapply(G[keep], function(g) whole(m, crossprod(push, g %*% push)))
  m$A <- 2 * scale^2 * solve((H + t(H)) / 2)
  m$lacking <- 0 * m$V
  m$components <- data.frame(term = names, variance = v * scale)
  m
}

# The F test of a term: the covariance of its contrasts is turned to principal axes, F is the mean of
# the squared t along them, and the error degrees of freedom are those of an F with the mean of that sum
# (A. H. T. Fai and P. L. Cornelius, 1996). Sums of squares are F x df x the residual variance.
test_of <- function(fit, k, greatest) {
  own <- which(fit$term == k)
  null <- fit$null[own, colSums(abs(fit$null[own, , drop = FALSE])) > 0, drop = FALSE]
  q <- qr(null, tol = 1e-9)
  rank <- if (ncol(null) == 0) 0 else q$rank
  containing <- sapply(fit$terms, function(other) {
    all(fit$terms[[k]] %in% other) && length(other) > length(fit$terms[[k]])
  })
  left <- length(own) - rank
  none <- c(df = left, error_df = NA, f = NA, p = NA)
  if (left == 0 || (rank > 0 && any(containing))) return(none)
  L <- matrix(0, left, length(fit$b))
  L[, own] <- if (rank == 0) diag(left) else t(qr.Q(q, complete = TRUE)[, -seq_len(rank), drop = FALSE])
  e <- eigen(L %*% fit$V %*% t(L), symmetric = TRUE)
  axes <- crossprod(e$vectors, L)
  f <- sum((axes %*% fit$b)^2 / e$values) / left
  nu <- apply(axes, 1, function(l) spread_of(fit, l, greatest)[2])
  E <- sum(nu / (nu - 2))
  df <- if (max(nu) - min(nu) <= 1e-8 * max(nu)) mean(nu) else if (min(nu) <= 2) min(nu) else 2 * E / (E - left)
  c(df = left, error_df = df, f = f, p = pf(f, left, df, lower.tail = FALSE))
}
likelihood_table <- function(fit, errors, greatest) {
  rows <- t(sapply(seq_along(fit$terms), function(k) test_of(fit, k, greatest[k])))
  square <- rows[, "f"] * fit$components$variance[nrow(fit$components)]
  data.frame(term = sapply(fit$terms, paste, collapse = ":"), df = rows[, "df"],
             sum_of_squares = square * rows[, "df"], mean_square = square, error = errors,
             error_df = rows[, "error_df"], f = rows[, "f"], p = rows[, "p"])
}
`;
