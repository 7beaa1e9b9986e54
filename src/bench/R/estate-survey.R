# The estate by survey, stand by stand:
#   Rscript src/bench/R/estate-survey.R DIR [N] [CURVES.csv]
# Values of plots as in estate-table.R; then a design, means and totals of each of the first N stands (500) that have two plots or
# more. Prints seconds a stand, and what all stands would take, which is an extrapolation. Compares with
# DIR/stands-r.csv if that is there; both must have been made with the same curves.
args <- commandArgs(trailingOnly = TRUE)
here <- dirname(sub("^--file=", "", grep("^--file=", commandArgs(), value = TRUE)))
source(file.path(here, "estate-common.R"))
suppressPackageStartupMessages(library(survey))
wanted <- if (length(args) > 1) as.integer(args[2]) else 500L
estate <- prepared(args[1], if (length(args) > 2) args[3] else NA)

# Each plot stands for its share of the stand: weights are hectares, so totals are those of the stand.
estate$plots[estate$stands, on = "stand", area := i.area_ha]
one_stand <- function(plots) {
  plots$weight <- plots$area / nrow(plots)
  design <- svydesign(ids = ~1, weights = ~weight, data = plots)
  mean <- svymean(~trees + basal_area + volume, design)
  total <- svytotal(~trees + basal_area + volume, design)
  c(coef(mean), SE(mean), coef(total), SE(total))
}

parts <- split(estate$plots, by = "stand")
chosen <- head(parts[vapply(parts, nrow, 1L) > 1], wanted)
start <- proc.time()
results <- t(vapply(chosen, function(plots) one_stand(as.data.frame(plots)), numeric(12)))
spent <- proc.time() - start
seconds <- spent[["elapsed"]]
cat(sprintf("R %s, survey %s: %d stands in %.2f s (%.2f s of processors), %.3f ms a stand\n", getRversion(), packageVersion("survey"),
            length(chosen), seconds, spent[["user.self"]] + spent[["sys.self"]], 1000 * seconds / length(chosen)))
cat(sprintf("extrapolated to %d stands: %.0f s, besides reading and plots\n", length(parts), seconds / length(chosen) * length(parts)))

file <- file.path(args[1], "stands-r.csv")
if (file.exists(file)) {
  table <- fread(file)[match(names(chosen), stand)]
  names <- c("trees", "basal_area", "volume")
  vectorised <- as.matrix(table[, c(paste0(names, ".mean"), paste0(names, ".se"), paste0(names, ".total")), with = FALSE])
  cat(sprintf("largest relative difference from stands-r.csv, means, errors and totals: %.2g\n",
              max(abs(results[, 1:9] / vectorised - 1), na.rm = TRUE)))
}
