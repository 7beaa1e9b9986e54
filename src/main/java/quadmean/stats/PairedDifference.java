package quadmean.stats;

/**
 * The mean of differences between two readings of the same units, such as plots: each unit is its own comparison, so that what
 * units differ by among themselves does not blur it.
 *
 * @param n number of pairs
 * @param mean mean difference
 * @param sd standard deviation of the differences, divisor n - 1; NaN for fewer than two pairs
 */
public record PairedDifference(int n, double mean, double sd) {

    /** The differences of first minus second. */
    public static PairedDifference of(double[] differences) {
        Moments m = Moments.of(differences);
        return new PairedDifference(m.n(), m.mean(), m.sd());
    }

    /** Standard error of the mean difference; NaN for fewer than two pairs. */
    public double se() {
        return sd / Math.sqrt(n);
    }

    /** The mean difference with its error on n - 1 degrees of freedom. */
    public MeanEstimate estimate() {
        return new MeanEstimate(n, Math.max(0, n - 1), mean, se(), sd);
    }

    /** Probability of a mean difference at least as large, either way, if there were none (Student's t); NaN without an error. */
    public double pValue() {
        return isTestable() ? 2 * StudentT.upperTail(Math.abs(mean / se()), n - 1) : Double.NaN;
    }

    /**
     * Two one-sided tests of whether the mean difference lies inside ± margin (Schuirmann 1987, from memory).
     *
     * @param margin largest difference that does not matter, fixed beforehand, above 0, in the unit of the differences
     * @param level error rate of each of the two tests, in (0, 0.5), such as 0.05
     */
    public Equivalence equivalence(double margin, double level) {
        Arguments.positive(margin, "margin");
        Arguments.inside(level, 0, 0.5, "level");
        if (!isTestable()) {
            return new Equivalence(margin, level, Double.NaN, Double.NaN, new Interval(Double.NaN, Double.NaN));
        }
        double aboveLower = StudentT.upperTail((mean + margin) / se(), n - 1);
        double belowUpper = StudentT.upperTail((margin - mean) / se(), n - 1);
        return new Equivalence(margin, level, aboveLower, belowUpper, estimate().interval(1 - 2 * level));
    }

    /** Whether there are several differences and they vary, without which nothing can be tested. */
    public boolean isTestable() {
        return n >= 2 && sd > 0;
    }

    /**
     * What came of two one-sided tests.
     *
     * @param margin the margin
     * @param level error rate of each test
     * @param pLower p of the test against a mean difference of -margin or less; NaN without an error
     * @param pUpper p of the test against a mean difference of margin or more
     * @param interval limits at 1 - 2·level: inside ± margin exactly where both tests reject
     */
    public record Equivalence(double margin, double level, double pLower, double pUpper, Interval interval) {
        /** The larger of the two: that of both claims together. */
        public double pValue() {
            return Math.max(pLower, pUpper);
        }

        /** Whether both tests reject: the difference is shown to be smaller than the margin. */
        public boolean isShown() {
            return pValue() < level;
        }
    }
}
