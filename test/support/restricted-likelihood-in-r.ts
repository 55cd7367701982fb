/**
 * R functions that reckon a mixed model from dense matrices, as a check that shares nothing with ours:
 * `reml(y, X, G)` minimises minus twice the restricted log-likelihood of y ~ N(X b, sum v_k G_k), the last
 * G the identity, variances at least 0, by nlminb and then Newton steps on the exact slopes; it returns the
 * variances, the log-likelihood, the coefficients' covariance and, by numerical differences, all that
 * Satterthwaite's degrees of freedom need. `satterthwaite(fit, L)` and `fai(fit, L)` give those of one
 * contrast and of a set of contrasts (rows of L).
 */
export const restrictedLikelihoodInR = `
covariance <- function(v, G) Reduce("+", Map("*", v, G))
gls <- function(v, y, X, G) {
  Vi <- solve(covariance(v, G)); C <- solve(crossprod(X, Vi %*% X))
  P <- Vi - Vi %*% X %*% C %*% t(X) %*% Vi
  list(Vi = Vi, C = C, P = P, b = drop(C %*% crossprod(X, Vi %*% y)))
}
deviance_of <- function(v, y, X, G) {
  V <- covariance(v, G); Vi <- solve(V); A <- crossprod(X, Vi %*% X)
  r <- y - X %*% solve(A, crossprod(X, Vi %*% y))
  as.numeric(determinant(V)$modulus + determinant(A)$modulus - determinant(crossprod(X))$modulus +
    crossprod(r, Vi %*% r))
}
slopes <- function(v, y, X, G) {
  P <- gls(v, y, X, G)$P; Py <- P %*% y
  sapply(G, function(g) sum(P * g) - as.numeric(crossprod(Py, g %*% Py)))
}
numerical <- function(f, v, keep) sapply(keep, function(k) {
  h <- 1e-4 * v[k]; e <- replace(0 * v, k, h)
  (8 * (f(v + e) - f(v - e)) - (f(v + 2 * e) - f(v - 2 * e))) / (12 * h)
})
reml <- function(y, X, G) {
  s <- var(as.numeric(y)); k <- length(G)
  starts <- list(rep(s / k, k), c(rep(s / 100, k - 1), s))
  fits <- lapply(starts, function(v) nlminb(v, deviance_of, slopes, y = y, X = X, G = G,
    lower = c(rep(0, k - 1), s * 1e-9), control = list(rel.tol = 1e-14, x.tol = 1e-12, eval.max = 2000, iter.max = 1000)))
  v <- fits[[which.min(sapply(fits, function(f) f$objective))]]$par
  v[v < 1e-7 * s] <- 0
  keep <- which(v > 0)
  gradient <- function(u) slopes(u, y, X, G)[keep]
  for (i in 1:6) v[keep] <- v[keep] - solve(matrix(numerical(gradient, v, keep), length(keep)), gradient(v))
  H <- matrix(numerical(gradient, v, keep), length(keep))
  fit <- gls(v, y, X, G)
  d <- numerical(function(u) as.numeric(gls(u, y, X, G)$C), v, keep)
  list(v = v, b = fit$b, C = fit$C, A = 2 * solve((H + t(H)) / 2),
    D = lapply(seq_along(keep), function(j) matrix(d[, j], ncol(X))), loglik = -0.5 * (deviance_of(v, y, X, G) +
      (length(y) - ncol(X)) * log(2 * pi)))
}
satterthwaite <- function(fit, L) {
  g <- sapply(fit$D, function(D) as.numeric(crossprod(L, D %*% L)))
  v <- as.numeric(crossprod(L, fit$C %*% L))
  2 * v^2 / as.numeric(g %*% fit$A %*% g)
}
fai <- function(fit, L) {
  e <- eigen(L %*% fit$C %*% t(L), symmetric = TRUE); W <- t(e$vectors) %*% L
  nu <- apply(W, 1, function(w) satterthwaite(fit, w)); q <- nrow(L)
  E <- sum(nu / (nu - 2))
  df <- if (q == 1) nu else if (max(nu) - min(nu) < 1e-6) mean(nu) else 2 * E / (E - q)
  f <- sum((W %*% fit$b)^2 / e$values) / q
  c(f = f, df = df, p = pf(f, q, df, lower.tail = FALSE))
}
helmert <- function(k) { m <- contr.helmert(k); sweep(m, 2, sqrt(colSums(m^2)), "/") }
`;
