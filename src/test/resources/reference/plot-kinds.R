# Means and standard errors of the example tallies of plot kinds, each worked out anew in R from the tally alone.
# Run from the project: Rscript src/test/resources/reference/plot-kinds.R > src/test/resources/reference/plot-kinds.json
read <- function(name) read.csv(file.path("datasets", name), na.strings = "")
g <- function(cm) pi / 40000 * cm^2
entry <- function(name, mean, se, df) sprintf('  "%s": {"mean": %.12g, "se": %.12g, "df": %.12g}', name, mean, se, df)

random <- function(name, y, fpc = 1) entry(name, mean(y), sqrt(fpc * var(y) / length(y)), length(y) - 1)

# strips of 10 m x 200 m, 10 of the 20 that tile 4 ha
s <- read("longleaf-strips.csv")
strip <- random("strip", tapply(g(s$dbh_cm), factor(s$strip, 1:10), sum) / 0.2, fpc = 1 - 10 / 20)

# half sweeps: 2 x 4 m2/ha for each tree
h <- read("longleaf-half-sweeps.csv")
half <- random("half-sweep", 8 * tapply(!is.na(h$dbh_cm), factor(h$point, 1:16), sum))

# circles of 0.05 ha, a tree as often as the column edge says
m <- read("longleaf-mirage.csv")
m$edge[is.na(m$edge)] <- 1
m$dbh_cm[is.na(m$dbh_cm)] <- 0
mirage <- random("mirage", tapply(m$edge * g(m$dbh_cm), factor(m$plot, 1:25), sum) / 0.05)

# every tree
all <- read("longleaf-complete.csv")
complete <- entry("complete", sum(g(all$dbh_cm)) / 4, 0, Inf)

# 3P, adjusted: sum of predictions x mean ratio of value to prediction; the value by the weighted fit of redoak.json, in ft3 and ft3 per acre
o <- read("red-oak-3p.csv")
drawn <- o[!is.na(o$dbh_in), ]
ratio <- (0.4137225991204 + 0.00280097929465 * drawn$dbh_in^2 * drawn$height_ft) / drawn$prediction
x <- sum(o$prediction)
threep <- entry("threep", x * mean(ratio), x * sd(ratio) / sqrt(length(ratio)), length(ratio) - 1)

# count points: trees per hectare by double sampling with a ratio, 24 of 72 points measured (Cochran 1977, chapter 12, from memory)
p <- read("idaho-count-points.csv")
x <- 7 * tapply(ifelse(is.na(p$species), 0, p$count), factor(p$plot, 1:72), sum)
p$n <- ifelse(is.na(p$dbh), 0, 7 / g(p$dbh / 10))
second <- seq(3, 72, 3)
y <- tapply(p$n, factor(p$plot, 1:72), sum)[second]
r <- mean(y) / mean(x[second])
e <- y - r * x[second]
count <- entry("count-points", mean(x) * r,
  sqrt(sum(e^2) / 23 / 24 + (var(y) - sum(e^2) / 23) / 72), 23)

# two factors: trees per hectare; counts by 7, measured trees by 28, relative variances added (Bruce)
t <- read("idaho-two-factors.csv")
plots <- factor(t$plot, 1:72)
x <- 7 * tapply(!is.na(t$species), plots, sum)
z <- 28 * tapply(!is.na(t$dbh), plots, sum)
y <- tapply(ifelse(is.na(t$dbh), 0, 28 / g(t$dbh / 10)), plots, sum)
r <- mean(y) / mean(z)
v <- var(x) / 72 / mean(x)^2 + var(y - r * z) / 72 / mean(y)^2
a <- var(x) / 72 / mean(x)^2
two <- entry("two-factors", mean(x) * r, mean(x) * r * sqrt(v), v^2 / (a^2 / 71 + (v - a)^2 / 71))

# point-3P: trees per hectare at 24 points, prediction the dbh in cm; adjusted: points of mean ratio x predictions, and the variance of the
# mean ratio beside that between points (two stages that know nothing of each other, by algebra); unadjusted: value over prediction / 120
q <- read("idaho-point-3p.csv")
drawn <- q[!is.na(q$dbh), ]
tree <- 7 / g(drawn$dbh / 10)
ratio <- tree / (7 * drawn$prediction)
x <- 7 * tapply(ifelse(is.na(q$prediction), 0, q$prediction), factor(q$plot, 1:24), sum)
b <- var(mean(ratio) * x) / 24
a <- mean(x)^2 * var(ratio) / length(ratio)
adjusted <- entry("point-3p", mean(ratio) * mean(x), sqrt(a + b), (a + b)^2 / (b^2 / 23 + a^2 / (length(ratio) - 1)))
y <- tapply(tree * 120 / drawn$prediction, factor(drawn$plot, 1:24), sum)
unadjusted <- random("point-3p-unadjusted", ifelse(is.na(y), 0, y))

lines <- c(strip, half, mirage, sub("Inf", "null", complete), threep, count, two, adjusted, unadjusted)
cat("{\n", paste(lines, collapse = ",\n"), "\n}\n", sep = "")
