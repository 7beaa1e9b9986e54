package quadmean.stats;

import java.util.OptionalInt;
import quadmean.stats.SampleSearch.Goal;

/** How many units a simple random sample needs. */
public final class SampleSize {
    /** No cruise has more plots than this; a larger answer means that the target is out of reach. */
    public static final int LARGEST = 10_000_000;

    private SampleSize() {}

    /**
     * The smallest n ≥ 2 with n ≥ (t·CV/E)²·(1 - n/N), t on n - 1 degrees of freedom. Found by {@link SampleSearch} on that
     * inequality, since plain iteration can flip between two values.
     *
     * @param cvPercent coefficient of variation between units (percent), above 0
     * @param errorPercent allowed half width of the confidence interval (percent of the mean), above 0
     * @param confidence confidence level, in (0, 1)
     * @param populationUnits units in the population N, above 1; infinity for no correction. Need not be whole: a census
     *     takes the next whole number
     * @return n, or empty if more than {@link #LARGEST} would be needed
     */
    public static OptionalInt simpleRandom(
            double cvPercent, double errorPercent, double confidence, double populationUnits) {
        SimplePlan sample = new SimplePlan(cvPercent, populationUnits);
        Arguments.atLeast(sample.most(), sample.least(), "units in the population");
        return SampleSearch.smallest(sample, Goal.expected(errorPercent, confidence));
    }

    /**
     * The smallest n that reaches the allowed error with a given probability, where {@link #simpleRandom} reaches it little more than
     * half the time: the spread that the sample shows is left to chance. Never fewer than that.
     *
     * @param assurance probability of reaching the error, in (0, 1); 0.8 or 0.9
     * @return n, or empty if more than {@link #LARGEST} would be needed
     */
    public static OptionalInt assured(
            double cvPercent, double errorPercent, double confidence, double populationUnits, double assurance) {
        Arguments.inside(assurance, 0, 1, "assurance");
        return SampleSearch.smallest(
                new SimplePlan(cvPercent, populationUnits),
                Goal.expected(errorPercent, confidence).assured(assurance));
    }

    /** Probability that n units reach the allowed error: {@link Assurance} of their expected half width. */
    public static double assurance(int n, double cv, double error, double confidence, double populationUnits) {
        return SampleSearch.assurance(
                new SimplePlan(cv, populationUnits), new int[] {n}, Goal.expected(error, confidence));
    }
}
