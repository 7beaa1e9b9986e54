# Reference fits of volume equations to felled trees (dbh in, height ft, volume ft3), with leverages, Cook's distances and
# leave-one-out errors by refitting without each tree. R 4.2.2.
json <- function(x) if (is.list(x)) paste0("{", paste0("\n\"", names(x), "\": ", sapply(x, json), collapse = ","), "}") else
  if (length(x) == 1) sprintf("%.15g", x) else paste0("[", paste(sprintf("%.15g", x), collapse = ", "), "]")
summarise <- function(m) { s <- summary(m); list(estimate = unname(coef(m)), se = unname(s$coefficients[, 2]),
  sigma = s$sigma, r2 = s$r.squared, hat = unname(hatvalues(m)), cook = unname(cooks.distance(m))) }
# root mean square of V minus prediction without the tree; back(fit, newdata) gives the volume
loo <- function(data, fit, back) sqrt(mean(sapply(seq_len(nrow(data)), function(i)
  data$v[i] - back(fit(data[-i, ]), data[i, , drop = FALSE]))^2))
plain <- function(m, t) unname(predict(m, t)); logs <- function(m, t) unname(exp(predict(m, t) + summary(m)$sigma^2 / 2))
inverse <- function(m, t) unname(t$d^2 / predict(m, t))
forms <- list(
  combined = list(function(x) lm(v ~ I(d^2 * h), x), plain),
  combined_weighted = list(function(x) { x$w <- 1 / (x$d^2 * x$h)^2; lm(v ~ I(d^2 * h), x, weights = w) }, plain),
  schumacher_hall = list(function(x) lm(log(v) ~ log(d) + log(h), x), logs),
  log_polynomial = list(function(x) lm(log(v) ~ log(d) + log(h) + I(log(d)^2) + I(log(h)^2) + I(log(d) * log(h)), x), logs),
  honer = list(function(x) lm(I(d^2 / v) ~ I(1 / h), x), inverse),
  form_factor_weighted = list(function(x) { x$w <- 1 / (x$d^2 * x$h)^2; x$g <- pi / 4 * (x$d / 12)^2 * x$h
    lm(v ~ 0 + g, x, weights = w) }, function(m, t) unname(coef(m) * pi / 4 * (t$d / 12)^2 * t$h)),
  dbh_and_height = list(function(x) lm(v ~ d + h, x), plain), dbh = list(function(x) lm(v ~ d, x), plain))
read <- function(file) { x <- read.csv(file); data.frame(d = x$dbh_in, h = x$height_ft, v = x$volume_ft3) }
all <- lapply(c(blackcherry = "blackcherry.csv", redoak = "redoak.csv"), function(file) { x <- read(file)
  lapply(forms, function(f) { m <- f[[1]](x)
    c(summarise(m), list(leave_one_out = loo(x, f[[1]], f[[2]]), bias_percent = 100 * (sum(f[[2]](m, x)) / sum(x$v) - 1))) }) })
writeLines(json(all), "felled.json")
