# The peers of MixedModelCosts: lme4's glmer and glmmTMB (Debian's r-cran-lme4, r-cran-glmmtmb), Laplace, on the same file.
# OPENBLAS_NUM_THREADS=1 Rscript bench/mixed-model.R FILE.csv [rounds] [lme4|glmmTMB]
words <- commandArgs(TRUE); rounds <- if (length(words) > 1) as.integer(words[2]) else 3; only <- if (length(words) > 2) words[3] else c("lme4", "glmmTMB")
suppressMessages({ library(lme4); library(glmmTMB) })
D <- read.csv(words[1]); D$obs <- factor(seq_len(nrow(D)))
f <- cbind(fertile, eggs - fertile) ~ storage_days + machine + (1 | pen) + (1 | week) + (1 | obs)
fits <- list(lme4 = function() glmer(f, D, binomial), glmmTMB = function() glmmTMB(f, D, family = binomial))
for (engine in only) {
  cpu <- numeric(rounds)
  for (i in seq_len(rounds)) { gc(); t <- system.time(m <- suppressWarnings(fits[[engine]]())); cpu[i] <- t[["user.self"]] + t[["sys.self"]] }
  cat(sprintf("%s %s, %d rows: CPU %.2f s (least %.2f), log-likelihood %.6f\n", engine, packageVersion(engine), nrow(D), median(cpu), min(cpu), as.numeric(logLik(m))))
}
