# Volume of an example stem by sections, inside bark, to a top of 10 cm inside bark, tip a cone. R 4.2.2. The values stand in
# FitVolumeSectionsTest; run the script to see them.
h <- c(0.3, 1.3, 3.3, 5.3, 7.3, 9.3); d <- c(36, 30, 27.4, 25.1, 22.7, 20.2) - 2 * c(1.5, 1.1, 0.9, 0.8, 0.8, 0.7)
total <- 20; a <- function(d) pi * d^2 / 40000; n <- length(h); top <- 10
smalian <- (a(d[-n]) + a(d[-1])) / 2 * diff(h)
newton <- function(i) (a(d[i]) + 4 * a(d[i + 1]) + a(d[i + 2])) / 6 * (h[i + 2] - h[i])
huber <- function(i) a(d[i + 1]) * (h[i + 2] - h[i])
end <- total - top / d[n] * (total - h[n])                       # where the cone is 10 cm thick
tip <- integrate(function(x) a(d[n] * (total - x) / (total - h[n])), h[n], end, rel.tol = 1e-13)$value
cat(sprintf("%.15g\n", c(end, tip, smalian = sum(smalian) + tip, newton = smalian[1] + newton(2) + newton(4) + tip,
  huber = smalian[1] + huber(2) + huber(4) + tip)))
# whole, outside bark, from a stump of 1 m on the straight line between the first two points, by Smalian, tip a paraboloid
o <- c(36, 30, 27.4, 25.1, 22.7, 20.2); s <- 36 + (1 - 0.3) / (1.3 - 0.3) * (30 - 36)
hh <- c(1, h[-1]); dd <- c(s, o[-1])
cat(sprintf("%.15g\n", sum((a(dd[-n]) + a(dd[-1])) / 2 * diff(hh)) + a(o[n]) * (total - h[n]) / 2))
