# Estimates that longleaf-estimates.json does not have, on the quadrats of longleaf-quadrats.csv. R 4.2.2, survey 4.1-1.
# y = basal area (m2) of a quadrat, x = its stems; quadrats without stems have no basal area and a chance of zero.
suppressMessages({library(survey); library(jsonlite)})
q <- read.csv("longleaf-quadrats.csv"); N <- 64; X <- sum(q$stems); out <- list()
ci <- function(m,s,df) list(mean=m,se=s,df=df,lower=m-qt(.975,df)*s,upper=m+qt(.975,df)*s)
set.seed(1988)
# list sampling: 16 draws with replacement, chances by stems; the with-replacement estimator of survey is Hansen and Hurwitz's
s <- sort(sample(64,16,replace=TRUE,prob=q$stems/X)); d <- q[s,]; d$p <- d$stems/X; d$w <- 1/(16*d$p)
t <- svytotal(~ba_m2, svydesign(~1,weights=~w,data=d))
out$hansen_hurwitz <- c(list(ids=s,chance=d$p), ci(as.numeric(coef(t))/N, as.numeric(SE(t))/N, 15))
# without replacement: systematic along the list with chances 16 x/X
pi <- 16*q$stems/X; u <- runif(1); s <- which(floor(cumsum(pi)-u+1e-12) > floor(cumsum(pi)-pi-u+1e-12)); d <- q[s,]; p <- pi[s]; n <- length(s)
z <- d$ba_m2/p; A <- sum((1-p)*z)/sum(1-p)
po <- svytotal(~ba_m2, svydesign(~1,probs=~p,data=transform(d,p=p),pps=poisson_sampling(p)))
out$horvitz_thompson <- list(ids=s,chance=p,mean=sum(z)/N,
  se_hajek=sqrt(n/(n-1)*sum((1-p)*(z-A)^2))/N, se_poisson=as.numeric(SE(po))/N, df=n-1)
# double sampling by a ratio and by classes, on the two phases of longleaf-estimates.json
e <- fromJSON("longleaf-estimates.json")$double_sampling_regression; a <- q[e$phase1,]; b <- q[e$phase2,]
r <- mean(b$ba_m2)/mean(b$stems); sd2 <- sum((b$ba_m2-r*b$stems)^2)/11; sy2 <- var(b$ba_m2)
out$double_ratio <- list(mean=r*mean(a$stems), se=sqrt(sd2*(1/12-1/32)+sy2*(1/32-1/64)), df=11)
# classes of the first phase: the west and the east half. The estimator of survey's two-phase design is the same ratio of class
# means; the variance is the unbiased one by algebra (Cochran 1977, section 12.2)
h1 <- substr(a$stratum,2,2); h2 <- substr(b$stratum,2,2); n1 <- table(h1); n2 <- table(h2); w <- n1/32
m <- tapply(b$ba_m2,h2,mean); v <- tapply(b$ba_m2,h2,var); y <- sum(w*m); f <- v*(1/n2-1/n1)
S2 <- (sum((n1-1)*v) + sum(n1*((m-y)^2-(1-w)*f)))/31
out$double_stratified <- list(classes=as.list(n1), mean=as.numeric(y), se=sqrt(as.numeric(sum(w^2*f)+S2*(1/32-1/64))), df=10)
# ratio of basal area to stems under designs of longleaf-estimates.json and under list sampling: svyratio
L <- fromJSON("longleaf-estimates.json"); rt <- function(d) { r <- svyratio(~ba_m2,~stems,d); list(ratio=as.numeric(coef(r)),se=as.numeric(SE(r))) }
d <- q[q$cluster %in% L$cluster_one_stage$clusters,]; d$M <- 16
out$ratio_cluster <- rt(svydesign(~cluster,fpc=~M,data=d))
d <- q[L$two_stage$ids,]; d$M1 <- 16; d$M2 <- 4
out$ratio_two_stage <- rt(svydesign(~cluster+id,fpc=~M1+M2,data=d))
d <- q[L$post_stratified$ids,]; d$N <- 64
out$ratio_post_stratified <- rt(postStratify(svydesign(~1,fpc=~N,data=d),~stratum,data.frame(stratum=c("SW","SE","NW","NE"),Freq=16)))
d <- q[out$hansen_hurwitz$ids,]; d$w <- X/(16*d$stems)
out$ratio_hansen_hurwitz <- rt(svydesign(~1,weights=~w,data=d))
write_json(out,"unequal.json",auto_unbox=TRUE,digits=13,pretty=TRUE)
