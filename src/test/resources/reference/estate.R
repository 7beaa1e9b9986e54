# Estimates of an estate as a stratified sample whose strata are its stands (survey: svymean, svytotal, no finite population
# correction), for all species and by species and by stratum of stands. The estate is made by formula, as FormulaEstate in the tests
# makes it: no tree of it is real. R 4.2.2, survey 4.1-1. Run from the folder of the reference files; prints estate.json.
suppressMessages(library(survey))
json <- function(x) if (is.list(x)) paste0("{", paste0("\n\"", names(x), "\": ", sapply(x, json), collapse = ","), "}") else
  sprintf("%.15g", x)
kinds <- c("PSME", "TSHE", "ABGR"); log_a <- c(-9.8, -9.88, -9.7); seed <- 1
plots <- do.call(rbind, lapply(1:12, function(k) data.frame(k = k, j = 1:(3 + (k * 5) %% 4))))
plots$area <- 5 + (plots$k * 7) %% 11 + 0.25 * plots$k
plots$stratum <- ifelse(plots$k %% 3 == 0, "north", "south")
values <- function(k, j, wanted) {
  n <- (k * 3 + j * 5) %% 9
  if (n == 0) return(c(trees = 0, basal_area = 0, volume = 0))
  i <- 1:n
  kind <- if (k == 4) rep(1, n) else (k + j + i) %% 3 + 1
  d <- (80 + (k * 37 + j * 101 + i * 53 + seed * 89) %% 467) / 10
  h <- floor((1.3 + (d / (1.2 + 0.17 * d))^2 + (k + i) %% 5 * 0.3) * 10 + 0.5) / 10
  v <- exp(log_a[kind] + 1.78 * log(d) + 1.08 * log(h))
  use <- if (wanted == "*") rep(TRUE, n) else kinds[kind] == wanted
  c(trees = sum(use), basal_area = sum(pi / 40000 * d[use]^2), volume = sum(v[use])) / 0.04
}
estimate <- function(where, wanted) {
  p <- cbind(plots, t(mapply(values, plots$k, plots$j, MoreArgs = list(wanted = wanted))))
  p <- p[if (where == "*") TRUE else p$stratum == where, ]
  p$w <- p$area / ave(p$j, p$k, FUN = length) # hectares that a plot stands for: weights of the ratio mean cancel out
  d <- svydesign(~1, strata = ~k, weights = ~w, data = p)
  m <- svymean(~trees + basal_area + volume, d); t <- svytotal(~trees + basal_area + volume, d)
  g <- svyratio(~basal_area, ~trees, d); ratio <- unname(coef(g)); q <- sqrt(ratio * 40000 / pi)
  c(setNames(lapply(1:3, function(a) list(mean = unname(coef(m)[a]), se = unname(SE(m)[a]),
      total = unname(coef(t)[a]), total_se = unname(SE(t)[a]))), names(coef(m))),
    list(diameter = list(mean = q, se = unname(SE(g)[1]) * q / (2 * ratio)), n = nrow(p), df = degf(d)))
}
all <- list()
for (where in c("*", "north", "south")) for (wanted in c("*", kinds))
  all[[paste(where, wanted)]] <- estimate(where, wanted)
writeLines(json(all), "estate.json")
