package quadmean.stats;

/**
 * Mean of y where the population mean of an auxiliary x is known: the line fitted to the sample, read at that mean (Cochran
 * 1977, section 7.4; number from memory). Biased, by an amount that shrinks as 1/n. Strata with lines of their own join by
 * {@link WeightedSum}.
 */
public final class RegressionEstimate {
    private RegressionEstimate() {}

    /** The two variances that handbooks print; both on n - 2 degrees of freedom. */
    public enum Variance {
        /** s²·(1-f)/n, s² the residual variance on n - 2. */
        LARGE_SAMPLE("large sample"),
        /** s²·(1/n + (meanX - sample mean)²/SSx)·(1-f): exact where a line with even scatter holds. */
        EXACT("exact");

        private final String label;

        Variance(String label) {
            this.label = label;
        }

        /** The name used in outputs. */
        public String label() {
            return label;
        }
    }

    /**
     * The regression estimate of a mean.
     *
     * @param y measured values of a simple random sample, at least two; its weight is not used
     * @param x auxiliary values, one for each
     * @param meanX population mean of x
     * @param form which variance
     * @return the mean; its sd is that about the line. Without error for two units; NaN where all x are equal
     */
    public static MeanEstimate mean(StratumSample y, double[] x, double meanX, Variance form) {
        return mean(y, x, meanX, form, Working.silent());
    }

    /** The same, step by step. */
    public static MeanEstimate mean(StratumSample y, double[] x, double meanX, Variance form, Working working) {
        FittedLine fit = FittedLine.through(x, y.values());
        double share = form == Variance.EXACT ? fit.leverage(meanX) : 1.0 / fit.n();
        double variance = fit.residualVariance() * share * y.unseen();
        double sd = Math.sqrt(fit.residualVariance());
        double mean = fit.line().at(meanX);
        MeanEstimate e = new MeanEstimate(fit.n(), 0, mean, Double.NaN, sd).withVariance(variance, fit.n() - 2);
        working.number("X", "known mean of the auxiliary", meanX);
        fit.show(x, y.values(), meanX, working);
        if (e.hasError()) {
            String unseen = working.unseen(y, "n");
            String of = form == Variance.EXACT ? "(1 / {n} + ({X} - {x̄})² / {SS})" : "(1 / {n})";
            working.step("v", "variance, " + form.label(), "{s²} × " + of + unseen, variance, Working.Scale.SQUARE);
            working.error(e, "{n} - 2");
        }
        return e;
    }
}
