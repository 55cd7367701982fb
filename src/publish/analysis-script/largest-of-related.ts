/** R functions of the chance that all of several related normals lie within limits, on a fixed lattice. */
export const largestOfRelated = String.raw`
# Where correlations are no products: from the product form that comes nearest they are changed to R in a
# straight line. As the correlation of a pair rises, the chance that all lie within w rises by the density of
# the pair at the corners of its square, times the chance that the others lie within w given the pair there
# (R. L. Plackett, 1954, Biometrika 41, 351-360). That chance is had by drawing one after the other within its
# limits (A. Genz, 1992, J. Comp. Graph. Stat. 1, 141-149), not at random, but at the points of a lattice.
nearest_factors <- function(R) {
  k <- nrow(R)
  mean_of_others <- (rowSums(R) - 1) / (k - 1)
  b <- ifelse(mean_of_others < 0, -1, 1) * sqrt(pmin(0.9, abs(mean_of_others)))
  b[b == 0] <- 0.1
  for (round in 1:200) for (i in 1:k) {
    b[i] <- max(-0.98, min(0.98, sum(R[i, -i] * b[-i]) / (1e-12 + sum(b[-i]^2))))
  }
  b
}
# The chance that all |means w + L z| are at most w, a vector; L lower triangular, z normal, x the lattice.
lattice_within <- function(w, means, L, x) {
  drawn <- list()
  chance <- 1
  wide <- matrix(w, nrow(x), length(w), byrow = TRUE)
  for (i in seq_along(means)) {
    mean <- means[i] * wide
    for (j in seq_len(i - 1)) mean <- mean + L[i, j] * drawn[[j]]
    below <- pnorm(-(wide + abs(mean)) / L[i, i])
    inside <- pnorm((wide - abs(mean)) / L[i, i]) - below
    chance <- chance * inside
    if (i == length(means)) break
    drawn[[i]] <- ifelse(mean < -1e-9, -1, 1) * qnorm(pmax(below + x[, i] * inside, 1e-300))
  }
  colMeans(chance)
}
# What is added to the chance of one alone, for w a vector, in units of that chance.
added_within <- function(w, R, b, x) {
  k <- nrow(R)
  excess <- R - outer(b, b)
  diag(excess) <- 0
  n <- if (k == 3) 24 else ceiling(1.5 + (if (k <= 5) 15 else 6) * max(abs(excess)))
  i <- seq_len(n - 1)                                      # Gauss-Legendre nodes, from 0 to 1
  gauss <- diag(0, n)
  gauss[cbind(i, i + 1)] <- gauss[cbind(i + 1, i)] <- i / sqrt(4 * i^2 - 1)
  gauss <- eigen(gauss, symmetric = TRUE)
  added <- 0 * w
  for (node in 1:n) for (i in 2:k) for (j in 1:(i - 1)) {
    At <- R - (1 - (gauss$values[node] + 1) / 2) * excess
    r <- At[i, j]
    on <- At[-c(i, j), c(i, j), drop = FALSE] %*% solve(At[c(i, j), c(i, j)])
    L <- t(chol(At[-c(i, j), -c(i, j)] - on %*% At[c(i, j), -c(i, j)]))
    for (sign in c(1, -1)) {
      scale <- gauss$vectors[1, node]^2 * excess[i, j] / (2 * pi * sqrt(1 - r^2)) *
        exp(-w^2 / (1 + sign * r) - pnorm(-w, log.p = TRUE))
      now <- abs(scale) > 1e-8
      if (any(now)) added[now] <- added[now] - sign * scale[now] * lattice_within(w[now], on %*% c(1, sign), L, x)
    }
  }
  added
}
related_within <- function(R) {
  k <- nrow(R)
  related <- rowSums(R^2)                                  # the most related first
  order <- c()
  while (length(order) < k) {
    left <- setdiff(seq_len(k), order)
    order <- c(order, left[which.max(round(1e9 * related[left]))])
    related <- related + R[order[length(order)], ]^2 / length(order)
  }
  R <- R[order, order]
  for (i in 2:k) if (sum(R[i, 1:(i - 1)]) < -1e-9) R[i, -i] <- R[-i, i] <- -R[i, -i]
  b <- nearest_factors(R)
  N <- if (k <= 4) 509 else if (k <= 8) 251 else 127       # the lattice and its multiplier
  times <- if (k <= 8) 97 else 37
  steps <- Reduce(function(a, i) (a * times) %% N, seq_len(max(0, k - 4)), 1, accumulate = TRUE)
  x <- 1 - abs(2 * ((outer(seq_len(N) - 0.5, steps) / N) %% 1) - 1)
  if (k == 3) x <- x[1, , drop = FALSE]                    # one besides a pair need not be drawn
  # Tabulated for w up to 8 on a scale from 0 to 16 that is finer near 0, as polynomials through Chebyshev's points.
  width <- if (k < 6) c(1, 2, 4)[k - 2] else 8
  pieces <- 16 / width
  angle <- (1:16 - 0.5) * pi / 16
  at <- as.vector(outer(width / 2 * (1 + cos(angle)), (seq_len(pieces) - 1) * width, "+"))
  as_small <- function(w) (1 - 2 * pnorm(-w))^k            # so that what is tabulated is smooth at 0
  w <- expm1(at * log(9) / 16)
  ratio <- matrix(added_within(w, R, b, x) / as_small(w), 16)
  coefficients <- crossprod(cos(outer(angle, 0:15)), ratio) * c(1, rep(2, 15)) / 16
  function(w) {
    near <- pmin(16 * log1p(w) / log(9), 16)
    piece <- pmin(near %/% width, pieces - 1)
    place <- pmax(-1, pmin(1, 2 * (near - piece * width) / width - 1))
    added <- rowSums(cos(outer(acos(place), 0:15)) * t(coefficients)[piece + 1, , drop = FALSE])
    product_within(b, w) - 2 * pnorm(-w) * as_small(w) * added
  }
}
`;
