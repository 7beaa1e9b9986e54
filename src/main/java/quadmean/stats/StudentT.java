package quadmean.stats;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;

/** Two-sided critical values of Student's t, and its tails. */
public final class StudentT {
    /** Values found before, for whole degrees of freedom: an estimate asks for the same again and again. */
    private static final Map<Question, Double> KNOWN = new ConcurrentHashMap<>();

    private static final int MOST_KNOWN = 10_000;

    private record Question(double confidence, double df) {}

    private StudentT() {}

    /**
     * The t that leaves {@code 1 - confidence} outside (-t, t).
     *
     * @param confidence confidence level, in (0, 1)
     * @param df degrees of freedom, above 0; not necessarily whole; infinity gives the normal value
     * @throws IllegalArgumentException outside these domains
     */
    public static double critical(double confidence, double df) {
        Arguments.confidence(confidence);
        double upperTail = (1 - confidence) / 2;
        if (df == Double.POSITIVE_INFINITY) {
            return -new NormalDistribution(null, 0, 1).inverseCumulativeProbability(upperTail);
        }
        Arguments.positive(df, "degrees of freedom");
        boolean isKept = df == Math.rint(df) && KNOWN.size() < MOST_KNOWN;
        return isKept
                ? KNOWN.computeIfAbsent(new Question(confidence, df), q -> quantile(df, upperTail))
                : quantile(df, upperTail);
    }

    private static double quantile(double df, double upperTail) {
        return -new TDistribution(null, df).inverseCumulativeProbability(upperTail);
    }

    /**
     * Probability of a value above t.
     *
     * @param df degrees of freedom, above 0
     */
    public static double upperTail(double t, double df) {
        return new TDistribution(null, Arguments.positive(df, "degrees of freedom")).cumulativeProbability(-t);
    }
}
