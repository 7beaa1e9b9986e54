package quadmean.stats;

import java.util.OptionalInt;
import java.util.function.IntPredicate;

/** Finds sizes of planned samples. The error falls as a sample grows, but for the rounding of its parts. */
public final class SampleSearch {
    /** How far rounding of one part to whole units can put the order of neighbouring sizes wrong. */
    private static final int ROUNDING = 2;

    private SampleSearch() {}

    /**
     * What a sample has to reach.
     *
     * @param errorPercent allowed half width of the confidence interval (percent of the mean), above 0
     * @param confidence confidence level, in (0, 1)
     * @param assurance probability of reaching it, in [0, 1); 0 asks only that the expected half width does
     * @param pilotDf degrees of freedom behind the spread planned with; infinity for one that is known
     */
    public record Goal(double errorPercent, double confidence, double assurance, double pilotDf) {
        /** Refuses what is no goal. */
        public Goal {
            Arguments.positive(errorPercent, "allowed error");
            Arguments.confidence(confidence);
            if (!(assurance >= 0 && assurance < 1)) {
                throw new IllegalArgumentException("an assurance must lie in [0, 1), got " + assurance);
            }
        }

        /** The expected half width alone. */
        public static Goal expected(double errorPercent, double confidence) {
            return new Goal(errorPercent, confidence, 0, Double.POSITIVE_INFINITY);
        }

        /** The same reached with a probability, the spread being known. */
        public Goal assured(double probability) {
            return new Goal(errorPercent, confidence, probability, Double.POSITIVE_INFINITY);
        }

        /** The same reached with a probability, the spread coming from a pilot. */
        public Goal assured(double probability, double degreesOfPilot) {
            return new Goal(errorPercent, confidence, probability, degreesOfPilot);
        }
    }

    /**
     * The smallest size that reaches a goal.
     *
     * @return empty if none does
     */
    public static OptionalInt smallest(PlannedSample sample, Goal goal) {
        return first(sample, n -> isReached(sample, sample.parts(n), goal));
    }

    /**
     * The largest size that costs no more than a budget.
     *
     * @param fixed cost whatever the size
     * @param costs cost of a unit of each part, 0 or more, not all 0
     * @param budget what there is
     * @return empty if it does not pay for the smallest sample
     */
    public static OptionalInt affordable(PlannedSample sample, double fixed, double[] costs, double budget) {
        OptionalInt beyond = first(sample, n -> cost(sample.parts(n), fixed, costs) > budget);
        int largest = beyond.isPresent() ? beyond.getAsInt() - 1 : sample.most();
        return largest < sample.least() ? OptionalInt.empty() : OptionalInt.of(largest);
    }

    /** Cost of a sample. */
    public static double cost(int[] parts, double fixed, double[] costs) {
        Arguments.sameLength(parts.length, costs.length, "parts and their costs");
        double sum = fixed;
        for (int i = 0; i < parts.length; i++) {
            sum += parts[i] * costs[i];
        }
        return sum;
    }

    /** Probability that a sample's half width comes out at or below the allowed error. */
    public static double assurance(PlannedSample sample, int[] parts, Goal goal) {
        double expected = sample.expected(parts).samplingErrorPercent(goal.confidence);
        return Assurance.afterPilot(expected, goal.errorPercent, sample.spreadDf(parts), goal.pilotDf);
    }

    private static boolean isReached(PlannedSample sample, int[] parts, Goal goal) {
        return sample.expected(parts).samplingErrorPercent(goal.confidence) <= goal.errorPercent
                && (goal.assurance == 0 || assurance(sample, parts, goal) >= goal.assurance);
    }

    /** Bisection, then a look at the sizes just below, since rounding makes the order uneven there. */
    private static OptionalInt first(PlannedSample sample, IntPredicate holds) {
        int low = sample.least();
        int high = low;
        if (sample.most() < low) {
            return OptionalInt.empty();
        }
        while (!holds.test(high)) {
            if (high >= sample.most()) {
                return OptionalInt.empty();
            }
            low = high + 1;
            high = (int) Math.min(sample.most(), 2L * high);
        }
        while (low < high) {
            int middle = low + (high - low) / 2;
            if (holds.test(middle)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        int from = Math.max(sample.least(), high - ROUNDING * sample.parts(high).length);
        for (int n = from; n < high; n++) {
            if (holds.test(n)) {
                return OptionalInt.of(n);
            }
        }
        return OptionalInt.of(high);
    }
}
