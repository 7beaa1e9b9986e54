# Stand statistics with errors from clusters, two stages and post-strata of the longleaf pines, with finite population correction.
# R 4.2.2, survey 4.1-1. Run in this folder; the samples are those of longleaf-estimates.json.
suppressMessages({library(survey); library(jsonlite)})
t <- read.csv("longleaf.csv"); a <- 0.0625; q <- read.csv("longleaf-quadrats.csv"); e <- fromJSON("longleaf-estimates.json")
t$id <- 1 + pmin(floor(t$x_m/25), 7) + 8*pmin(floor(t$y_m/25), 7); t$g <- pi/40000*t$dbh_cm^2
per <- function(v) as.numeric(tapply(v, factor(t$id, 1:64), sum, default=0))/a
q$N <- per(1 + 0*t$g); q$G <- per(t$g); q$D <- per(t$dbh_cm); q$S <- per((t$dbh_cm/25.4)^1.605)
fits <- list(QUADRATIC_MEAN_DIAMETER=quote(sqrt(G/N/(pi/40000))), MEAN_DIAMETER=quote(D/N),
 SDI_REINEKE=quote(N*(sqrt(G/N/(pi/40000))/25.4)^1.605), SDI_SUMMATION=quote(S), RELATIVE_DENSITY=quote(G/sqrt(sqrt(G/N/(pi/40000)))))
of <- function(design) {m <- svymean(~N+G+D+S, design)
 lapply(fits, function(x) {r <- svycontrast(m, x); list(value=as.numeric(coef(r)), se=as.numeric(SE(r)))})}
d <- q[q$cluster %in% e$cluster_one_stage$clusters, ]; d$M <- 16
x <- q[e$two_stage$ids, ]; x$M1 <- 16; x$M2 <- 4
p <- q[e$post_stratified$ids, ]; p$N64 <- 64
ps <- postStratify(svydesign(~1, fpc=~N64, data=p), ~stratum, data.frame(stratum=c("SW", "SE", "NW", "NE"), Freq=16))
write_json(list("cluster"=of(svydesign(~cluster, fpc=~M, data=d)), "two-stage"=of(svydesign(~cluster+id, fpc=~M1+M2, data=x)), "post-stratified"=of(ps)),
 "statistics-designs.json", digits=15, auto_unbox=TRUE, pretty=TRUE)
