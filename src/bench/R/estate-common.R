# What both scripts of the estate share: reading, the design's equations, height curves, values of plots.
# Plots are 400 m2, as the generator of estates lays them out.
suppressPackageStartupMessages(library(data.table))
PLOT_HA <- 0.04

read_estate <- function(dir) {
  tally <- list.files(file.path(dir, "tally"), full.names = TRUE)
  if (!length(tally)) tally <- list.files(dir, "^tally[.]csv([.]gz)?$", full.names = TRUE)
  if (!length(tally)) stop("no tally.csv, tally.csv.gz or folder tally in ", dir)
  classes <- list(character = c("stand", "species"), integer = c("plot", "tree"), numeric = c("dbh_cm", "height_m"))
  list(
    stands = fread(file.path(dir, "stands.csv")),
    trees = rbindlist(lapply(tally, function(file) {
      # fread unpacks by itself only with a further package.
      if (grepl("[.]gz$", file)) fread(cmd = paste("gzip -dc", shQuote(file)), colClasses = classes, na.strings = "")
      else fread(file, colClasses = classes, na.strings = "")
    })))
}

# ln V = a + b ln D + c ln H of every species, out of the design.
equations <- function(dir) {
  lines <- readLines(file.path(dir, "estate.toml"))
  at <- grep("^\\[volume[.]", lines)
  get <- function(i, key) as.numeric(sub(".*= *", "", grep(paste0("^", key, " *="), lines[i + 1:4], value = TRUE)))
  data.table(species = sub("^\\[volume[.](.*)\\]", "\\1", lines[at]), va = sapply(at, get, "a"), vb = sapply(at, get, "b"),
             vc = sapply(at, get, "c"))
}

# The one place that knows the form of the curves: mean height (m) at a dbh (cm).
height_at <- function(d, a, b) 1.3 + (d / (a + b * d))^2

# Coefficients by region and species: nls from the straight line that the form has when it is turned over.
fit_curves <- function(trees) {
  trees[!is.na(height_m), {
    line <- coef(lm(dbh_cm / sqrt(height_m - 1.3) ~ dbh_cm))
    fit <- nls(height_m ~ height_at(dbh_cm, a, b), start = list(a = line[[1]], b = line[[2]]))
    as.list(coef(fit))
  }, by = .(region, species)]
}

# The file that an estimate of an estate reads and writes; height_at is one of its forms.
given_curves <- function(file) {
  curves <- fread(file)
  stopifnot("curves of another form" = curves[, all(form == "naslund" & units == "metric" & breast_height == 1.3 & ratio == 1)])
  curves[, .(region, species, a, b)]
}

# Basal area (m2/ha), volume (m3/ha) and trees (per ha) of every plot; plots without trees are 0.
plot_values <- function(estate, curves, volumes) {
  trees <- estate$trees
  trees[curves, on = .(region, species), height_m := fifelse(is.na(height_m), height_at(dbh_cm, i.a, i.b), height_m)]
  trees[volumes, on = "species", volume := exp(i.va + i.vb * log(dbh_cm) + i.vc * log(height_m))]
  stopifnot("trees without a curve or an equation" = !trees[!is.na(dbh_cm), anyNA(volume)])
  trees[, .(trees = sum(!is.na(dbh_cm)) / PLOT_HA, basal_area = sum(pi / 40000 * dbh_cm^2, na.rm = TRUE) / PLOT_HA,
            volume = sum(volume, na.rm = TRUE) / PLOT_HA), by = .(stand, plot)]
}

# Reading, heights, plots, each with its seconds.
prepared <- function(dir, curves_file) {
  timed <- function(what, value) {
    start <- proc.time()
    force(value)
    cat(sprintf("%s: %.2f s\n", what, (proc.time() - start)[["elapsed"]]))
    value
  }
  estate <- timed("read", read_estate(dir))
  timed("regions", estate$trees[estate$stands, on = "stand", region := i.region])
  curves <- timed("curves", if (is.na(curves_file)) fit_curves(estate$trees) else given_curves(curves_file))
  plots <- timed("heights, volumes, plots", plot_values(estate, curves, equations(dir)))
  list(stands = estate$stands, curves = curves, plots = plots, rows = nrow(estate$trees))
}
