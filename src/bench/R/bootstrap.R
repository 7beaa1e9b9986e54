# BCa limits of 20 columns of 144 plots from 10 000 resamples with R's boot: the counterpart of BootstrapBenchmark.simpleRandom.
library(boot)
set.seed(144)
d <- matrix(ifelse(runif(144*20) < 1/3, 0, exp(rnorm(144*20))), 144)
seconds <- function(e) system.time(e)[["elapsed"]]
limits <- function(b, l) for (c in 1:20) boot.ci(b, type="bca", index=c, L=l[,c])
# l: jackknife influences of means, by formula, so that boot.ci does not compute them by regression
l <- sweep(d, 2, colMeans(d), "-") # for a mean (n-1)(t - t without i) is y - mean
one <- seconds({b <- boot(d, function(d, i) colMeans(d[i,]), R=10000); limits(b, l)})
two <- seconds({b <- boot(d, function(d, i) colMeans(d[i,]), R=10000, parallel="multicore", ncpus=2); limits(b, l)})
freq <- seconds({b <- boot(d, function(d, f) colSums(d*f)/144, R=10000, stype="f"); limits(b, l)})
cat(sprintf("indices, one core: %.2f s; two cores: %.2f s; frequencies, one core: %.2f s\n", one, two, freq))
# the same resamples as replicate weights of R's survey, from which it takes standard errors (it has no BCa)
if (requireNamespace("survey", quietly = TRUE)) {
  suppressPackageStartupMessages(library(survey))
  frame <- as.data.frame(d)
  names(frame) <- paste0("y", 1:20)
  plots <- svydesign(ids = ~1, weights = rep(1, 144), data = frame)
  columns <- reformulate(names(frame))
  whole <- seconds({
    r <- as.svrepdesign(plots, type = "bootstrap", replicates = 10000)
    m <- svymean(columns, r)
  })
  cat(sprintf("survey %s, bootstrap weights and means of 20 columns: %.2f s\n", packageVersion("survey"), whole))
}
