package quadmean.stats;

import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.FDistribution;

/**
 * How surely a cruise reaches its target. The spread of the sample itself decides the half width that comes out, and it is as
 * often above as below what was planned with: s² follows chi-square over its degrees of freedom for normal values (Kupper and
 * Hafner 1989, from memory).
 */
public final class Assurance {
    private Assurance() {}

    /**
     * Probability that the half width comes out at or below the target.
     *
     * @param expectedPercent half width with the planned spread, percent of the mean, 0 or more
     * @param targetPercent allowed half width, percent of the mean, above 0
     * @param df degrees of freedom of the spread, above 0
     */
    public static double of(double expectedPercent, double targetPercent, double df) {
        Arguments.positive(targetPercent, "allowed error");
        if (expectedPercent == 0) {
            return 1;
        }
        double room = Math.pow(targetPercent / Arguments.positive(expectedPercent, "expected error"), 2);
        return new ChiSquaredDistribution(null, df).cumulativeProbability(df * room);
    }

    /**
     * The same where the planned spread comes from a pilot and is itself uncertain: the two variances over one another follow F.
     *
     * @param pilotDf degrees of freedom of the pilot's spread, above 0; infinity for a spread that is known
     */
    public static double afterPilot(double expectedPercent, double targetPercent, double df, double pilotDf) {
        if (pilotDf == Double.POSITIVE_INFINITY || expectedPercent == 0) {
            return of(expectedPercent, targetPercent, df);
        }
        double room = Math.pow(targetPercent / Arguments.positive(expectedPercent, "expected error"), 2);
        return new FDistribution(null, df, pilotDf).cumulativeProbability(room);
    }

    /**
     * The spread that the true one exceeds with probability 1 - level, over the spread of a pilot: √(df/χ²), for normal values.
     *
     * @param pilotDf degrees of freedom of the pilot's spread, above 0
     * @param level one-sided confidence, in (0, 1)
     */
    public static double spreadLimit(double pilotDf, double level) {
        Arguments.confidence(level);
        return Math.sqrt(pilotDf / new ChiSquaredDistribution(null, pilotDf).inverseCumulativeProbability(1 - level));
    }
}
