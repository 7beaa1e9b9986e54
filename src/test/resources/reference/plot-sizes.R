# Variation between plots of several kinds on the mapped longleaf pines, by brute force: each kind at the middles of 100 by 100 equal cells
# that keep off the edge as far as the largest plot reaches.
# Run from the project: Rscript src/test/resources/reference/plot-sizes.R > src/test/resources/reference/plot-sizes.json
trees <- read.csv("src/test/resources/reference/longleaf.csv")
side <- 200
g <- pi / 40000 * trees$dbh_cm^2
acre <- 4046.8564224
areas <- c(0.05, 0.1, 0.2) * acre
factors <- c(20, 10, 5) / 4.356
limits <- c(lapply(areas, function(a) rep(sqrt(a / pi), nrow(trees))),
            lapply(factors, function(f) trees$dbh_cm / 2 / sqrt(f)))
per_tree <- c(lapply(areas, function(a) rep(10000 / a, nrow(trees))),
              lapply(factors, function(f) f / g))
reach <- max(unlist(limits))
at <- reach + (1:100 - 0.5) * (side - 2 * reach) / 100
places <- expand.grid(x = at, y = at)
distance2 <- outer(places$x, trees$x_m, "-")^2 + outer(places$y, trees$y_m, "-")^2
study <- function(i) {
  on_plot <- sweep(distance2, 2, limits[[i]]^2, "<=")
  basal_area <- drop(on_plot %*% (per_tree[[i]] * g))
  stems <- drop(on_plot %*% per_tree[[i]])
  sprintf('    {"trees_per_plot": %.12g, "cv_basal_area_percent": %.12g, "cv_trees_percent": %.12g}',
          mean(rowSums(on_plot)), 100 * sd(basal_area) / mean(basal_area), 100 * sd(stems) / mean(stems))
}

# a pilot of 16 circles of 0.1 ha, each tree with its distance: smaller circles and points tried out on it
centres <- expand.grid(x = c(25, 75, 125, 175), y = c(25, 75, 125, 175))
distance <- sqrt(outer(centres$x, trees$x_m, "-")^2 + outer(centres$y, trees$y_m, "-")^2)
pilot <- distance <= sqrt(1000 / pi)
cv <- function(y) 100 * sd(y) / mean(y)
circle <- function(ha) cv(drop((pilot & distance <= sqrt(ha * 10000 / pi)) %*% g) / ha)
point <- function(f) cv(f * rowSums(pilot & sweep(distance, 2, trees$dbh_cm / 2 / sqrt(f), "<=")))

cat(sprintf('{\n  "reach_m": %.12g,\n  "kinds": [\n%s\n  ],\n  "pilot_cv_percent": [%s]\n}\n', reach,
            paste(sapply(seq_along(limits), study), collapse = ",\n"),
            paste(sprintf("%.12g", c(circle(0.02), circle(0.05), circle(0.1), point(9), point(6))), collapse = ", ")))
