# Times R's nls on the 24 fits of heights.R (12 forms, two species, 174 heights). Run from the project's folder:
#   Rscript src/bench/R/fits.R
# Prints fits a second over ten rounds, and how many of the 24 did not converge (they take their time too).
lines <- readLines("src/test/resources/reference/heights.R")
eval(parse(text = lines[seq_len(grep("^fitall", lines) - 1)]))
h <- read.csv("src/test/resources/reference/idaho-heights.csv")
sets <- lapply(c("DF", "GF"), function(s) with(h[h$species == s, ], data.frame(d = dbh_cm, h = height_m)))
once <- function() sapply(sets, function(s) sapply(names(ex), function(n) is.na(fit1(s, n, 1.3)$rss[1])))
failed <- sum(once())
seconds <- system.time(for (i in 1:10) once())[["elapsed"]]
cat(sprintf("R %s nls: %.1f fits/s; %d of 24 did not converge\n", getRversion(), 240 / seconds, failed))
