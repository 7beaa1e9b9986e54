# Stand tables and stand statistics with errors from samples of quadrats of the longleaf pines, heights made up by a formula. R 4.2.2, survey 4.1-1.
# Per ha; without finite population correction. Run in this folder.
suppressMessages({library(survey); library(jsonlite)})
t <- read.csv("longleaf.csv"); a <- 0.0625; q <- read.csv("longleaf-quadrats.csv"); e <- fromJSON("longleaf-estimates.json")
t$id <- 1 + pmin(floor(t$x_m/25), 7) + 8*pmin(floor(t$y_m/25), 7)
t$h <- 1.3 + 28*(1 - exp(-0.035*t$dbh_cm)); t$g <- pi/40000*t$dbh_cm^2
per <- function(v) as.numeric(tapply(v, factor(t$id, 1:64), sum, default=0))/a
q$N <- per(1 + 0*t$g); q$G <- per(t$g); q$D <- per(t$dbh_cm); q$H <- per(t$h); q$GH <- per(t$g*t$h); q$S <- per((t$dbh_cm/25.4)^1.605)
# 100 thickest per ha: 6 trees of a quadrat and a quarter of the seventh
q$T <- sapply(1:64, function(i) {x <- t[t$id == i, ]; x <- x[order(-x$dbh_cm), ]; w <- pmax(0, pmin(1, 6.25 - seq_len(nrow(x)) + 1)); if (nrow(x)) sum(w*x$h)/sum(w) else 0})
q$I <- as.numeric(q$N > 0)
for (k in 0:7) q[[paste0("c", k)]] <- per(t$dbh_cm >= 10*k & t$dbh_cm < 10*k + 10)
for (k in 0:7) q[[paste0("b", k)]] <- per(t$g*(t$dbh_cm >= 10*k & t$dbh_cm < 10*k + 10))
fits <- list(qmd=quote(sqrt(G/N/(pi/40000))), mean_diameter=quote(D/N), mean_height=quote(H/N), lorey=quote(GH/G), top=quote(T/I),
 sdi=quote(N*(sqrt(G/N/(pi/40000))/25.4)^1.605), sdi_sum=quote(S), curtis=quote(G/sqrt(sqrt(G/N/(pi/40000)))), spacing=quote(sqrt(10000/N)/(T/I)))
out <- lapply(c("simple_random", "stratified"), function(s) {d <- q[e[[s]]$ids, ]
 d$w <- if (s == "stratified") as.numeric(16/table(d$stratum)[d$stratum]) else 64/nrow(d)
 de <- if (s == "stratified") svydesign(~1, strata=~stratum, weights=~w, data=d) else svydesign(~1, weights=~w, data=d)
 m <- svymean(~N+G+D+H+GH+S+T+I, de)
 f <- lapply(fits, function(x) {r <- svycontrast(m, x); list(value=as.numeric(coef(r)), se=as.numeric(SE(r)))})
 cl <- svymean(as.formula(paste("~", paste(c(paste0("c", 0:7), paste0("b", 0:7)), collapse="+"))), de)
 x <- t$dbh_cm[t$id %in% d$id]; w <- d$w[match(t$id[t$id %in% d$id], d$id)]
 c(list(ids=d$id), f, list(class_trees=as.numeric(coef(cl))[1:8], class_trees_se=as.numeric(SE(cl))[1:8], class_ba=as.numeric(coef(cl))[9:16], class_ba_se=as.numeric(SE(cl))[9:16]))})
names(out) <- c("simple_random", "stratified")
# Weibull with shape and scale by weighted likelihood from 5 cm on; error by linearised scores, derivatives as differences
wei <- function(d, w, lim) {d$w <- w; x <- t[t$id %in% d$id & t$dbh_cm >= lim, ]; wt <- d$w[match(x$id, d$id)]
 ll <- function(p, y) dweibull(y, p[1], p[2], log=TRUE) - pweibull(lim, p[1], p[2], lower.tail=FALSE, log.p=TRUE)
 p <- optim(c(2, 30), function(p) if (any(p <= 0)) 1e10 else -sum(wt*ll(p, x$dbh_cm)), method="Nelder-Mead", control=list(reltol=1e-16, maxit=5000))$par
 u <- sapply(1:2, function(j) {h <- c(0, 0); h[j] <- 1e-5*p[j]; (ll(p + h, x$dbh_cm) - ll(p - h, x$dbh_cm))/(2*h[j])})
 H <- optimHess(p, function(p) sum(wt*ll(p, x$dbh_cm)), control=list(ndeps=c(1e-4, 1e-3)))
 z <- -u %*% solve(H); s <- sapply(1:2, function(j) sapply(d$id, function(i) sum(z[x$id == i, j])))
 d$z1 <- s[, 1]; d$z2 <- s[, 2]; v <- svytotal(~z1+z2, if (length(unique(w)) > 1) svydesign(~1, strata=~stratum, weights=~w, data=d) else svydesign(~1, weights=~w, data=d))
 list(shape=p[1], scale=p[2], shape_se=as.numeric(SE(v))[1], scale_se=as.numeric(SE(v))[2])}
for (s in names(out)) {d <- q[out[[s]]$ids, ]; w <- if (s == "stratified") as.numeric(16/table(d$stratum)[d$stratum]) else rep(64/nrow(d), nrow(d)); out[[s]]$weibull <- wei(d, w, 5)}
write_json(out, "stand-structure.json", digits=15, auto_unbox=TRUE, pretty=TRUE)
