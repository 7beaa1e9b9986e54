# Stem profiles and a bucked stem; R 4.2.2, integrate() and exhaustive search. Coefficients are examples.
options(digits = 15)
g <- pi / 40000 # m2 per cm2

# Kozak 1969 with bark; cm and m
D <- 40; H <- 30; b0 <- 0.95; b1 <- -1.15; b2 <- 0.2
d <- function(h) { z <- h / H; 0.903563 * pmax(0, D^2 * (b0 + b1 * z + b2 * z^2))^(0.989388 / 2) }
print(c(d(0.3), d(15), integrate(function(h) g * d(h)^2, 0.3, H, rel.tol = 1e-12)$value))

# Form class 78.9 of 18 in and 90 ft, bark ratio 0.9
D <- 18 * 2.54; H <- 90 * 0.3048; fh <- 17.3 * 0.3048; bh <- 4.5 * 0.3048; a <- 0.38
ib <- 0.9 * D; f <- D * 78.9 / 100
d <- function(h) ifelse(h <= fh, f + (ib - f) * (fh - h) / (fh - bh), {
  x <- (H - h) / (H - fh)
  f * x / (a + (1 - a) * x)
})
print(c(d(0.3048) / 2.54, d(fh) / 2.54, d(50 * 0.3048) / 2.54,
  integrate(function(h) g * d(h)^2, 0.3048, fh, rel.tol = 1e-13)$value +
  integrate(function(h) g * d(h)^2, fh, H, rel.tol = 1e-13)$value))

# Ormerod with bark, volume from 2 m to 25 m
D <- 40; H <- 30; p <- 0.7
d <- function(h) 0.9 * (D * ((H - h) / (H - 1.3))^p)^0.97
print(c(d(1.3), d(20), integrate(function(h) g * d(h)^2, 2, 25, rel.tol = 1e-13)$value))

# A cone of 40 cm at 1.3 m and 31.3 m, stump 0.3 m, trim 0.1 m, Smalian, 10 % defect, prices per m3
top <- 31.3; trim <- 0.1
d <- function(h) 40 * (top - h) / 30
volume <- function(from, L) g * (d(from)^2 + d(from + L)^2) / 2 * L
products <- list(list(code = "saw", lengths = c(5, 4), least = 24, price = 60),
                 list(code = "pulp", lengths = 3, least = 8, price = 25))
fits <- function(p, L, at) at + L + trim <= top + 1e-9 && d(at + L) >= p$least
value <- function(p, L, at) p$price * volume(at, L) * 0.9
greedy <- function(at) {
  for (p in products) for (L in p$lengths) if (fits(p, L, at)) {
    cat(p$code, L, round(at, 3), d(at), d(at + L), volume(at, L), value(p, L, at), "\n")
    return(value(p, L, at) + greedy(at + L + trim))
  }
  0
}
print(greedy(0.3))
best <- function(at, sum, logs) { # every way without pieces left between logs
  found <- list(sum, logs)
  for (p in products) for (L in p$lengths) if (fits(p, L, at)) {
    way <- best(at + L + trim, sum + value(p, L, at), paste0(logs, " ", p$code, L))
    if (way[[1]] > found[[1]] + 1e-9) found <- way
  }
  found
}
print(best(0.3, 0, ""))
