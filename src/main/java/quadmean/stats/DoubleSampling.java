package quadmean.stats;

import java.util.List;

/**
 * Double sampling: a cheap reading x on many units, the dear one y on some of them. Variances have two parts: of the units that
 * carry y about what x foretells, and of the first sample (Cochran 1977, chapter 12; number from memory).
 */
public final class DoubleSampling {
    private DoubleSampling() {}

    /** Which variance a regression through two samples gets. */
    public enum Variance {
        /**
         * s²_yx/n2 + (s²_y - s²_yx)/n1 - s²_y/N (Cochran 1977, equation 12.51, from memory). The middle term is negative where
         * the line does not help; it is not cut off.
         */
        COCHRAN("Cochran, large sample"),
        /**
         * s²_yx·[1/n2 + (mean1 - mean2)²/SSx]·(1 - n2/n1) + s²_y/n1·(1 - n1/N) (Freese 1962, from memory).
         */
        HANDBOOK("handbook form");

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
     * One class of the first sample.
     *
     * @param firstPhase units of the first sample that fell into it, at least as many as carry y
     * @param values y of those drawn among them, at least one; two unless all are
     */
    @SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
    public record PhaseStratum(int firstPhase, double[] values) {}

    /**
     * The line of the second sample, read at the first sample's mean of x.
     *
     * @param first x of the whole first sample; its population units N correct both parts, its weight is not used
     * @param x x of the second sample, drawn at random from the first; at least two
     * @param y y of the second sample
     * @param form which variance; on n2 - 2 degrees of freedom
     */
    public static MeanEstimate regression(StratumSample first, double[] x, double[] y, Variance form) {
        FittedLine fit = FittedLine.through(x, y);
        double meanX = Moments.of(first.values()).mean();
        double s2 = fit.residualVariance();
        double variance = form == Variance.COCHRAN
                ? twoPhase(first, y, s2)
                : s2 * fit.leverage(meanX) * unseen(first, y) + ofFirst(first, y);
        return new MeanEstimate(y.length, 0, fit.line().at(meanX), Double.NaN, Math.sqrt(s2))
                .withVariance(variance, y.length - 2);
    }

    /**
     * The ratio of the second sample times the first sample's mean of x: s²_d/n2 + (s²_y - s²_d)/n1 - s²_y/N, s²_d the spread of
     * y - r·x. Also the whole error of counts on many points and a ratio on some of them.
     *
     * @param first as for the regression
     * @param x x of the second sample, at least two
     * @param y y of the second sample
     * @return the mean, on n2 - 1 degrees of freedom
     */
    public static MeanEstimate ratio(StratumSample first, double[] x, double[] y) {
        StratumSample second = StratumSample.of(1, y);
        DegreesOfFreedom rule = DegreesOfFreedom.UNITS_MINUS_STRATA;
        double r = RatioEstimate.estimate(List.of(second), List.of(second.with(x)), rule)
                .mean();
        Moments residual = Moments.of(RatioEstimate.residuals(y, x, r, 1));
        double mean = r * Moments.of(first.values()).mean();
        return new MeanEstimate(y.length, 0, mean, Double.NaN, residual.sd())
                .withVariance(twoPhase(first, y, residual.variance()), y.length - 1);
    }

    /**
     * The same over strata with one ratio for all of them: the mean of x over all strata times R = Σ W·mean(y)/Σ W·mean(x), and
     * in each stratum the variance above with the common R (by algebra).
     *
     * @param first whole first sample of each stratum
     * @param x x of the second sample, at least two units in each stratum for an error
     * @param y y of the second sample, strata and units in the same order
     * @return the mean, on Σ(n2_h - 1) degrees of freedom
     */
    public static MeanEstimate ratio(List<StratumSample> first, List<StratumSample> x, List<StratumSample> y) {
        DegreesOfFreedom rule = DegreesOfFreedom.UNITS_MINUS_STRATA;
        double r = RatioEstimate.estimate(y, x, rule).mean();
        double mean = r * StratifiedMean.estimate(first, rule).mean();
        double variance = 0;
        double within = 0;
        int n = 0;
        for (int h = 0; h < y.size(); h++) {
            double[] values = y.get(h).values();
            Moments residual =
                    Moments.of(RatioEstimate.residuals(values, x.get(h).values(), r, 1));
            double w = y.get(h).weight();
            variance += w * w * twoPhase(first.get(h), values, residual.variance());
            within += w * residual.variance();
            n += values.length;
        }
        return new MeanEstimate(n, 0, mean, Double.NaN, Math.sqrt(within)).withVariance(variance, n - y.size());
    }

    /**
     * Classes whose sizes the first sample estimates, and y on some units of each: Σ (n1_h/n1)·mean_h. The variance is unbiased
     * where the number of y depends on the first sample only through its class sizes: Σ w²·s²·(1/n2 - 1/n1_h) for the second
     * sample, and for the first the variance of all its y rebuilt from parts within and between classes (by algebra; as Rao 1973
     * and Cochran 1977, section 12.2, from memory).
     *
     * @param strata classes with at least one unit in the first sample
     * @param populationUnits N; infinity for no correction
     * @return the mean, on Σ(n2_h - 1) degrees of freedom
     */
    public static MeanEstimate stratification(List<PhaseStratum> strata, double populationUnits) {
        int n1 = strata.stream().mapToInt(PhaseStratum::firstPhase).sum();
        int n2 = strata.stream().mapToInt(s -> s.values().length).sum();
        double mean = 0;
        for (PhaseStratum s : strata) {
            Arguments.atLeast(s.values().length, 1, "units with y in a class");
            Arguments.atLeast(s.firstPhase(), s.values().length, "units of a class in the first sample");
            mean += (double) s.firstPhase() / n1 * Moments.of(s.values()).mean();
        }
        double ofSecond = 0;
        double squares = 0;
        double within = 0;
        for (PhaseStratum s : strata) {
            Moments m = Moments.of(s.values());
            double w = (double) s.firstPhase() / n1;
            double s2 = s.firstPhase() == 1 ? 0 : m.variance();
            double drawn = s2 * (1.0 / m.n() - 1.0 / s.firstPhase());
            ofSecond += w * w * drawn;
            within += w * s2;
            squares += (s.firstPhase() - 1) * s2
                    + s.firstPhase() * ((m.mean() - mean) * (m.mean() - mean) - (1 - w) * drawn);
        }
        double variance = ofSecond + squares / (n1 - 1) * (1.0 / n1 - 1 / populationUnits);
        return new MeanEstimate(n2, 0, mean, Double.NaN, Math.sqrt(within)).withVariance(variance, n2 - strata.size());
    }

    private static double twoPhase(StratumSample first, double[] y, double residual) {
        return residual * unseen(first, y) / y.length + ofFirst(first, y);
    }

    /** Share of the first sample that carries no y. */
    private static double unseen(StratumSample first, double[] y) {
        return 1 - (double) y.length / Arguments.atLeast(first.values().length, y.length, "units of the first sample");
    }

    /** Variance of the first sample's mean, had all its units y. */
    private static double ofFirst(StratumSample first, double[] y) {
        return Moments.of(y).variance() / first.values().length * first.unseen();
    }
}
