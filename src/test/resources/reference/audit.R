# Reference values for check cruises: paired differences of plots with two one-sided t tests (t.test), exact binomial limits
# (binom.test), limits of a share of trees on plots (survey::svyciprop, method "beta"), the mean tree difference clustered by plot
# (svymean). The numbers are made up. R 4.2.2, survey 4.1-1. Prints audit.json.
suppressMessages(library(survey))
json <- function(x) if (is.list(x)) paste0("{", paste0("\n\"", names(x), "\": ", sapply(x, json), collapse = ","), "}") else
  if (length(x) == 1) sprintf("%.15g", x) else paste0("[", paste(sprintf("%.15g", x), collapse = ", "), "]")
cruise <- c(231.4, 187.2, 305.9, 264.1, 148.8, 219.5, 276.3, 198.0, 241.7, 260.2)
check  <- c(228.1, 190.4, 297.5, 262.2, 150.1, 214.8, 270.9, 199.3, 236.0, 258.8)
tost <- function(margin) {
  low <- t.test(cruise, check, paired = TRUE, mu = -margin, alternative = "greater")
  high <- t.test(cruise, check, paired = TRUE, mu = margin, alternative = "less")
  both <- t.test(cruise, check, paired = TRUE, conf.level = 0.90)
  list(margin = margin, p_lower = low$p.value, p_upper = high$p.value, interval = as.numeric(both$conf.int)) }
two <- t.test(cruise, check, paired = TRUE)
b <- function(x, n) list(having = x, n = n, both95 = as.numeric(binom.test(x, n)$conf.int),
  lower95 = binom.test(x, n, alternative = "greater")$conf.int[1], upper95 = binom.test(x, n, alternative = "less")$conf.int[2])
trees <- c(9, 14, 11, 7, 16, 12, 8, 10); within <- c(9, 13, 8, 7, 15, 9, 8, 10)
plot <- rep(seq_along(trees), trees); y <- unlist(mapply(function(w, n) c(rep(1, w), rep(0, n - w)), within, trees, SIMPLIFY = FALSE))
d <- svydesign(~plot, weights = ~1, data = data.frame(plot, y))
p95 <- svyciprop(~y, d, method = "beta", level = 0.95); p90 <- svyciprop(~y, d, method = "beta", level = 0.90)
set.seed(7); z <- round(rep(c(.2, -.1, .3, 0, .1, -.2, .15, .05), trees) + rnorm(sum(trees), 0, .25), 2)
dz <- svydesign(~plot, weights = ~1, data = data.frame(plot, z)); mz <- svymean(~z, dz)
writeLines(json(list(
  paired = list(cruise = cruise, check = check, mean = unname(two$estimate), sd = sd(cruise - check), t = unname(two$statistic),
    p = two$p.value, interval95 = as.numeric(two$conf.int), inside = tost(8), outside = tost(4)),
  binomial = list(some = b(57, 60), all = b(40, 40), none = b(0, 12)),
  clustered = list(trees = trees, within = within, share = unname(coef(p95)), limits95 = as.numeric(attr(p95, "ci")),
    limits90 = as.numeric(attr(p90, "ci"))),
  differences = list(trees = trees, values = z, mean = unname(coef(mz)), se = unname(SE(mz)[1])))), "audit.json")
