package quadmean.stats;

import org.apache.commons.math3.distribution.NormalDistribution;

/** The standard normal distribution. */
public final class NormalCurve {
    private NormalCurve() {}

    /**
     * Probability of a value at or below z.
     *
     * @param z standardised value, not NaN; infinity gives 0 or 1
     * @throws IllegalArgumentException if z is NaN
     */
    public static double lowerTail(double z) {
        if (Double.isNaN(z)) {
            throw new IllegalArgumentException("z must be a number, got NaN");
        }
        return new NormalDistribution(null, 0, 1).cumulativeProbability(z);
    }

    /**
     * The value that leaves a probability below it.
     *
     * @param probability in [0, 1]; 0 and 1 give infinities
     */
    public static double quantile(double probability) {
        return new NormalDistribution(null, 0, 1).inverseCumulativeProbability(probability);
    }
}
