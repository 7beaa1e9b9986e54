# The estate by data.table, all stands at once:
#   Rscript src/bench/R/estate-table.R DIR [CURVES.csv] [THREADS]
# DIR is what quadmean.scale.EstateGenerator wrote. Heights are filled by the curves given, or by curves fitted to all measured
# heights of a region and species ("-" or nothing). Writes DIR/stands-r.csv and prints seconds and the estate's totals.
args <- commandArgs(trailingOnly = TRUE)
here <- dirname(sub("^--file=", "", grep("^--file=", commandArgs(), value = TRUE)))
source(file.path(here, "estate-common.R"))
if (length(args) > 2) setDTthreads(as.integer(args[3]))
start <- proc.time()
estate <- prepared(args[1], if (length(args) > 1 && args[2] != "-") args[2] else NA)

work <- proc.time()
values <- c("trees", "basal_area", "volume")
by_stand <- estate$plots[, .(
  plots = .N, trees.mean = mean(trees), basal_area.mean = mean(basal_area), volume.mean = mean(volume),
  trees.se = sd(trees), basal_area.se = sd(basal_area), volume.se = sd(volume)), by = stand]
for (v in paste0(values, ".se")) set(by_stand, j = v, value = by_stand[[v]] / sqrt(by_stand$plots))
table <- estate$stands[by_stand, on = "stand"]
for (v in values) {
  table[, paste0(v, ".total") := area_ha * get(paste0(v, ".mean"))]
  table[, paste0(v, ".total.se") := area_ha * get(paste0(v, ".se"))]
}
cat(sprintf("stands: %.2f s\n", (proc.time() - work)[["elapsed"]]))

# A stand is a stratum: totals add, squared errors add. Stands with one plot have no error and are counted.
written <- proc.time()
fwrite(table, file.path(args[1], "stands-r.csv"))
cat(sprintf("write: %.2f s\n", (proc.time() - written)[["elapsed"]]))
for (v in values) {
  se <- table[[paste0(v, ".total.se")]]
  cat(sprintf("%s: total %.10g, standard error %.10g without %d stands of one plot\n", v,
              sum(table[[paste0(v, ".total")]]), sqrt(sum(se^2, na.rm = TRUE)), sum(is.na(se))))
}
cat(sprintf("R %s, data.table %s, %d threads: %d rows, %d stands, %.2f s in all\n", getRversion(), packageVersion("data.table"),
            getDTthreads(), estate$rows, nrow(table), (proc.time() - start)[["elapsed"]]))
