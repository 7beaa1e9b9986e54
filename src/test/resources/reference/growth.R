# Growth of basal area (m2 a hectare) on the invented permanent plots of datasets/demo-plots-2021.csv and demo-plots-2026.csv (0.1 acre,
# two strata of 62 and 41 acres): components and standard errors from the paired plots, covariance of both dates. R 4.2.2,
# survey 4.1-1 (svymean, vcov). Run from the folder of the reference files; prints growth.json.
suppressMessages(library(survey))
json <- function(x) if (is.list(x)) paste0("{", paste0("\n\"", names(x), "\": ", sapply(x, json), collapse = ","), "}") else
  if (length(x) == 1) sprintf("%.15g", x) else paste0("[", paste(sprintf("%.15g", x), collapse = ", "), "]")
folder <- "../../../../datasets/"
a <- read.csv(paste0(folder, "demo-plots-2021.csv")); b <- read.csv(paste0(folder, "demo-plots-2026.csv"))
perha <- 1 / (0.1 * 0.40468564224)
ba <- function(d) pi / 4 * (d * 0.0254)^2 * perha
m <- merge(a, b, by = c("plot", "stratum", "tree"), all = TRUE)
v1 <- ifelse(is.na(m$dbh_in.x), 0, ba(m$dbh_in.x)); v2 <- ifelse(is.na(m$dbh_in.y) | m$status.y == "dead", 0, ba(m$dbh_in.y))
fate <- ifelse(is.na(m$dbh_in.x), "ingrowth", ifelse(is.na(m$dbh_in.y), "removals", ifelse(m$status.y == "dead", "mortality", "survivors")))
parts <- data.frame(start = v1, end = v2, change = v2 - v1, survivor_growth = (v2 - v1) * (fate == "survivors"),
  ingrowth = v2 * (fate == "ingrowth"), mortality = v1 * (fate == "mortality"), removals = v1 * (fate == "removals"))
parts$gross_growth <- parts$survivor_growth + parts$ingrowth; parts$net_growth <- parts$gross_growth - parts$mortality
p <- aggregate(parts, by = list(plot = m$plot, stratum = m$stratum), sum)
p$w <- c(N = 62, B = 41)[p$stratum] / ave(p$plot, p$stratum, FUN = length)
d <- svydesign(~1, strata = ~stratum, weights = ~w, data = p)
components <- lapply(setNames(names(parts), names(parts)), function(c) { s <- svymean(as.formula(paste0("~", c)), d)
  list(mean = unname(coef(s)), se = unname(SE(s)[1])) })
both <- vcov(svymean(~start + end, d))
writeLines(json(list(components = components, covariance = both[1, 2], correlation = cov2cor(both)[1, 2])), "growth.json")
