# Compares the table of stands that the program wrote with R's, both made with the same curves:
#   Rscript src/bench/R/estate-compare.R DIR STANDS.csv
# DIR holds stands-r.csv of estate-table.R. Every stand must be in both; what one leaves open the other must too. Ends with 1 where a
# value is off by more than 1e-9 of itself.
suppressPackageStartupMessages(library(data.table))
args <- commandArgs(trailingOnly = TRUE)
r <- fread(file.path(args[1], "stands-r.csv"))
program <- fread(args[2])
stopifnot("stands are not the same" = setequal(r$stand, program$stand) && nrow(r) == nrow(program))
program <- program[match(r$stand, stand)]
columns <- c(
  plots = "plots", trees.mean = "trees_trees_per_ha", trees.se = "trees_trees_per_ha_se", trees.total = "trees_total_trees",
  trees.total.se = "trees_total_trees_se", basal_area.mean = "basal_area_m2_per_ha", basal_area.se = "basal_area_m2_per_ha_se",
  basal_area.total = "basal_area_total_m2", basal_area.total.se = "basal_area_total_m2_se", volume.mean = "volume_m3_per_ha",
  volume.se = "volume_m3_per_ha_se", volume.total = "volume_total_m3", volume.total.se = "volume_total_m3_se")
off <- vapply(names(columns), function(name) {
  ours <- program[[columns[[name]]]]
  theirs <- r[[name]]
  if (!identical(is.na(ours), is.na(theirs))) stop(name, ": one has values where the other has none")
  max(ifelse(ours == theirs, 0, abs(ours - theirs) / abs(theirs)), na.rm = TRUE)
}, 1)
print(signif(off, 2))
cat(sprintf("%d stands, %d values of each: largest relative difference %.2g (%s)\n", nrow(r), length(columns), max(off), names(which.max(off))))
if (max(off) > 1e-9) {
  cat("this is more than 1e-9\n")
  quit(status = 1)
}
