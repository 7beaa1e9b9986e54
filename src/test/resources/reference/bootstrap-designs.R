# Bootstrap standard errors of sampling designs from weights of survey's "subbootstrap" (n - 1 draws), and BCa limits of boot, on
# the samples of longleaf-estimates.json and unequal.json. R 4.2.2, survey 4.1-1, boot 1.3-28. Without finite population correction.
library(survey); library(boot)
q <- read.csv("longleaf-quadrats.csv"); R <- 20000
json <- function(x) if(is.list(x)) paste0("{",paste0('"',names(x),'":',sapply(x,json),collapse=","),"}") else {
 n <- ifelse(is.na(x),"null",sprintf("%.15g",x)); if(length(x)>1) paste0("[",paste(n,collapse=","),"]") else n }
ids <- function(file,entry,key="ids") { t <- paste(readLines(file,warn=FALSE),collapse="")
 t <- sub(paste0('.*"',entry,'": *\\{'),"",t); t <- sub(paste0('.*?"',key,'": *\\[([^]]*)\\].*'),"\\1",t,perl=TRUE)
 as.numeric(strsplit(t,",")[[1]]) }
L <- "longleaf-estimates.json"; mx <- 9.125
wm <- function(v,w) sum(v*w)/sum(w)
ratio <- function(d,w) mx*sum(w*d$ba_m2)/sum(w*d$stems)
line <- function(d,w) { x <- wm(d$stems,w); b <- sum(w*(d$stems-x)*d$ba_m2)/sum(w*(d$stems-x)^2); wm(d$ba_m2,w)+b*(mx-x) }
post <- function(d,w) mean(tapply(w*d$ba_m2,d$stratum,sum)/tapply(w,d$stratum,sum))
plain <- function(d,w) wm(d$ba_m2,w)
d2r <- function(d,w) { s <- d$two; sum((w*d$ba_m2)[s])/sum((w*d$stems)[s])*wm(d$stems,w) }
d2l <- function(d,w) { s <- d[d$two,]; v <- w[d$two]; x <- wm(s$stems,v)
 b <- sum(v*(s$stems-x)*s$ba_m2)/sum(v*(s$stems-x)^2); wm(s$ba_m2,v)+b*(wm(d$stems,w)-x) }
d2s <- function(d,w) { s <- d$two; sum(tapply(w,d$stratum,sum)/sum(w)*tapply((w*d$ba_m2)[s],d$stratum[s],sum)/tapply(w[s],d$stratum[s],sum)) }
se <- function(d,f,id=~1) { rd <- as.svrepdesign(svydesign(id,weights=~one,data=d),type="subbootstrap",replicates=R)
 t <- apply(weights(rd,"analysis"),2,function(w) f(d,w)); ok <- is.finite(t)
 list(estimate=f(d,d$one),se=sd(t[ok]),kurtosis=mean((t[ok]-mean(t[ok]))^4)/var(t[ok])^2,undefined=sum(!ok)) }
take <- function(i) { d <- q[i,]; d$one <- 1; d$stratum <- factor(d$stratum); d }
set.seed(11)
simple <- take(ids(L,"ratio")); classes <- take(ids(L,"post_stratified")); whole <- take(which(q$cluster %in% c(1,2,5,8,9)))
two <- take(ids(L,"two_stage")); first <- take(ids(L,"double_sampling_regression","phase1"))
first$two <- rownames(first) %in% ids(L,"double_sampling_regression","phase2")
designs <- list(RATIO=se(simple,ratio),REGRESSION=se(simple,line),POST_STRATIFIED=se(classes,post),CLUSTER=se(whole,plain,~cluster),
 TWO_STAGE=se(two,plain,~cluster),DOUBLE_RATIO=se(first,d2r),DOUBLE_REGRESSION=se(first,d2l),DOUBLE_STRATIFIED=se(first,d2s))
one <- function(f) { set.seed(12)
 b <- boot(simple,function(d,i) f(d[i,],rep(1,length(i))),R=999); l <- empinf(b,type="jack")
 list(estimate=b$t0,acceleration=sum(l^3)/(6*sum(l^2)^1.5),bca=boot.ci(b,conf=.9,type="bca",L=l)$bca[4:5],t=as.numeric(b$t)) }
writeLines(json(list(replicates=R,designs=designs,limits=list(RATIO=one(ratio),REGRESSION=one(line)))),"bootstrap-designs.json")
