# Weibull distributions of largest likelihood, 339 longleaf pines with dbh >= 20 cm, whole and cut off at 20 cm. R 4.2.2.
d <- read.csv("longleaf.csv"); x <- d$dbh_cm[d$dbh_cm >= 20]; n <- length(x)
rows <- lapply(c(0, 20), function(t) {
 tc <- function(c, k=0) if (t > 0) t^c*log(t)^k else 0
 f <- function(c) 1/c + mean(log(x)) - sum(x^c*log(x) - tc(c, 1))/sum(x^c - tc(c))
 c <- uniroot(f, c(.5, 10), tol=1e-14)$root; b <- mean(x^c - tc(c))^(1/c)
 score <- function(p) {z <- x/p[2]; zt <- t/p[2]; l <- if (t > 0) log(zt) else 0
  c(n/p[1] + sum(log(z)) - sum(z^p[1]*log(z)) + n*zt^p[1]*l, -n*p[1]/p[2] + p[1]/p[2]*sum(z^p[1]) - n*p[1]/p[2]*zt^p[1])}
 h <- sapply(1:2, function(j) {e <- c(0, 0); e[j] <- 1e-5*c(c, b)[j]; (score(c(c, b) + e) - score(c(c, b) - e))/(2*e[j])})
 v <- solve(-(h + base::t(h))/2)
 ll <- sum(dweibull(x, c, b, log=TRUE) - pweibull(t, c, b, lower.tail=FALSE, log.p=TRUE))
 sprintf("%g,%.13g,%.13g,%.9g,%.9g,%.13g", t, c, b, sqrt(v[1, 1]), sqrt(v[2, 2]), ll)})
writeLines(c("limit_cm,shape,scale,se_shape,se_scale,log_likelihood", unlist(rows)), "weibull.csv")
