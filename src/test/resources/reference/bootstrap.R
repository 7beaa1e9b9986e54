# Bootstrap limits of basal area per quadrat and per stem, samples of longleaf-estimates.json. R 4.2.2, boot 1.3-28.
library(boot)
q <- read.csv("longleaf-quadrats.csv")
random <- c(8,16,20,21,22,24,32,39,47,48,50,52,56,59,61,64) # ids of simple_random
strata <- c(1,2,6,10,18,20,28,30,31,32,34,35,39,43,44,54,63,64) # ids of stratified
json <- function(x) if(is.list(x)) paste0("{",paste0('"',names(x),'":',sapply(x,json),collapse=","),"}") else {
 n <- sprintf("%.15g",x); if(length(x)>1) paste0("[",paste(n,collapse=","),"]") else n }
# 1. The arithmetic of the limits: the resamples themselves go along, so that another program starts from the same ones.
d <- q[random,]; set.seed(7)
one <- function(f) {
 b <- boot(d,f,R=999); l <- empinf(b,type="jack"); p <- boot.ci(b,conf=.9,type="perc"); a <- boot.ci(b,conf=.9,type="bca",L=l)
 list(estimate=b$t0,acceleration=sum(l^3)/(6*sum(l^2)^1.5),percentile=p$percent[4:5],bca=a$bca[4:5],t=as.numeric(b$t))
}
mean_ba <- one(function(d,i) mean(d$ba_m2[i])); per_stem <- one(function(d,i) mean(d$ba_m2[i])/mean(d$stems[i]))
# 2. Resampling itself: stratified, n - 1 draws of n in each stratum, deviations shrunk by sqrt(1-f) (Rao and Wu 1988, from memory).
s <- q[strata,]; set.seed(8); R <- 400000
st <- split(s,s$stratum)
draw <- function(v) { n <- length(v); m <- matrix(sample(v,R*(n-1),TRUE),R); mean(v)+sqrt(1-n/16)*(rowMeans(m)-mean(v)) }
t <- 0; for(h in st) t <- t+draw(h$ba_m2)/4
t0 <- mean(sapply(st,function(h) mean(h$ba_m2)))
l <- unlist(lapply(st,function(h) {n <- nrow(h); sqrt(1-n/16)*(h$ba_m2-mean(h$ba_m2))/4/n}))
a <- sum(l^3)/(6*sum(l^2)^1.5); z0 <- qnorm(mean(t<t0)); z <- qnorm(c(.05,.95)); lev <- pnorm(z0+(z0+z)/(1-a*(z0+z)))
writeLines(json(list(arithmetic=list(mean=mean_ba,per_stem=per_stem),
 stratified=list(replicates=R,estimate=t0,se=sd(t),acceleration=a,percentile=quantile(t,c(.05,.95),names=FALSE),bca=quantile(t,lev,names=FALSE)))),"bootstrap.json")
