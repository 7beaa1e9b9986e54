package quadmean.stats;

import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.distribution.NormalDistribution;

/** The range that n normal values are expected to show, in standard deviations: ∫ (1 - Φⁿ - (1 - Φ)ⁿ) dx (Tippett 1925, from memory). */
public final class ExpectedRange {
    /** Beyond so many standard deviations nothing is left to add. */
    private static final double WIDE = 9;

    private static final int EVALUATIONS = 1_000_000;

    private ExpectedRange() {}

    /**
     * Expected range over the standard deviation.
     *
     * @param n values, at least 2
     */
    public static double ofNormal(int n) {
        Arguments.atLeast(n, 2, "values of a range");
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        return new SimpsonIntegrator(1e-10, 1e-10, 5, 60)
                .integrate(EVALUATIONS, x -> outside(normal, x, n), -WIDE, WIDE);
    }

    private static double outside(NormalDistribution normal, double x, int n) {
        double below = normal.cumulativeProbability(x);
        double above = normal.cumulativeProbability(-x);
        return 1 - Math.pow(below, n) - Math.pow(above, n);
    }
}
