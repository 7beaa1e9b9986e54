package quadmean.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import quadmean.stats.Allocation.PlannedStratum;

/**
 * How many more units a sample needs, from what it has shown so far. Units already measured stay: a stratum that has more than its
 * share gets no more.
 *
 * @param units units of each stratum in all, those measured included
 * @param more units still to measure in each stratum
 * @param total units in all
 * @param expectedErrorPercent half width to expect, percent of the mean, if means and spreads stay
 * @param assurance probability that the half width comes out at or below the target, by {@link Assurance} with Satterthwaite's degrees
 *     of freedom
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
public record NextUnits(int[] units, int[] more, int total, double expectedErrorPercent, double assurance) {

    /**
     * What is asked of the whole sample.
     *
     * @param errorPercent allowed error in percent of the mean, above 0
     * @param confidence confidence level, in (0, 1)
     * @param rule how degrees of freedom are counted for the half width to expect
     */
    public record Target(double errorPercent, double confidence, DegreesOfFreedom rule) {
        /** Refuses what is no target. */
        public Target {
            Arguments.positive(errorPercent, "allowed error");
            Arguments.confidence(confidence);
        }

        /** A target with units less strata for degrees of freedom. */
        public Target(double errorPercent, double confidence) {
            this(errorPercent, confidence, DegreesOfFreedom.UNITS_MINUS_STRATA);
        }
    }

    /**
     * The smallest sample that is expected to reach the target.
     *
     * @param sample the units so far, at least two in each stratum
     * @param allocation how units are shared
     * @param target what is asked
     * @return the sample to aim at, nothing more where it is reached; empty where the target is out of reach
     */
    public static Optional<NextUnits> reach(List<StratumSample> sample, Allocation allocation, Target target) {
        return search(sample, allocation, target, 0);
    }

    /**
     * The smallest sample that reaches the target with a given probability.
     *
     * @param assurance probability, in (0, 1)
     */
    public static Optional<NextUnits> reach(
            List<StratumSample> sample, Allocation allocation, Target target, double assurance) {
        return search(sample, allocation, target, Arguments.inside(assurance, 0, 1, "assurance"));
    }

    /**
     * What more units bring: the expected error for samples from the present one to one of a given size.
     *
     * @param sample the units so far, at least two in each stratum
     * @param largest units in all to go to
     * @param steps number of samples, at least 2
     * @return samples of rising size, none twice; the first is the present one
     */
    public static List<NextUnits> gainCurve(
            List<StratumSample> sample, Allocation allocation, Target target, int largest, int steps) {
        List<PlannedStratum> planned = planned(sample);
        int least = units(sample);
        List<NextUnits> curve = new ArrayList<>();
        curve.add(of(sizes(sample), sample, planned, target));
        for (int k = 1; k < Arguments.atLeast(steps, 2, "steps of the curve"); k++) {
            int n = least + (int) Math.rint((double) (largest - least) * k / (steps - 1));
            NextUnits next = withAll(Math.max(n, least), sample, planned, allocation, target);
            if (next.total > curve.get(curve.size() - 1).total) {
                curve.add(next);
            }
        }
        return curve;
    }

    private static Optional<NextUnits> search(
            List<StratumSample> sample, Allocation allocation, Target target, double assurance) {
        List<PlannedStratum> planned = planned(sample);
        NextUnits now = of(sizes(sample), sample, planned, target);
        if (now.reaches(target, assurance)) {
            return Optional.of(now);
        }
        int low = units(sample);
        int high = low;
        while (!withAll(high, sample, planned, allocation, target).reaches(target, assurance)) {
            low = high;
            if (high >= SampleSize.LARGEST) {
                return Optional.empty();
            }
            high = Math.min(SampleSize.LARGEST, 2 * high);
        }
        while (low < high) {
            int middle = low + (high - low) / 2;
            if (withAll(middle, sample, planned, allocation, target).reaches(target, assurance)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return Optional.of(withAll(high, sample, planned, allocation, target));
    }

    private boolean reaches(Target target, double asked) {
        return expectedErrorPercent <= target.errorPercent && assurance >= asked;
    }

    /** Shares n among the strata; those with more than their share keep what they have, and the others share the rest. */
    private static NextUnits withAll(
            int n, List<StratumSample> sample, List<PlannedStratum> planned, Allocation allocation, Target target) {
        int[] units = sizes(sample);
        List<Integer> open = IntStream.range(0, units.length).boxed().toList();
        while (true) {
            List<Integer> sharing = open;
            int held = IntStream.range(0, units.length)
                    .filter(h -> !sharing.contains(h))
                    .map(h -> units[h])
                    .sum();
            int[] shares = allocation.allocate(
                    n - held, sharing.stream().map(planned::get).toList());
            open = IntStream.range(0, shares.length)
                    .filter(k -> shares[k] >= units[sharing.get(k)])
                    .mapToObj(sharing::get)
                    .toList();
            if (open.size() == shares.length) {
                for (int k = 0; k < shares.length; k++) {
                    units[sharing.get(k)] = shares[k];
                }
                return of(units, sample, planned, target);
            }
        }
    }

    private static NextUnits of(int[] units, List<StratumSample> sample, List<PlannedStratum> planned, Target target) {
        int[] more = IntStream.range(0, units.length)
                .map(h -> units[h] - sample.get(h).values().length)
                .toArray();
        double df = Allocation.expected(units, planned, DegreesOfFreedom.SATTERTHWAITE)
                .df();
        double expected = Allocation.expected(units, planned, target.rule).samplingErrorPercent(target.confidence);
        double assurance = Assurance.of(expected, target.errorPercent, df);
        return new NextUnits(units, more, Arrays.stream(units).sum(), expected, assurance);
    }

    private static List<PlannedStratum> planned(List<StratumSample> sample) {
        List<PlannedStratum> planned = new ArrayList<>();
        for (StratumSample s : sample) {
            Arguments.atLeast(s.values().length, 2, "units in a stratum, for its spread,");
            Moments m = Moments.of(s.values());
            planned.add(new PlannedStratum(s.weight(), s.populationUnits(), m.mean(), m.sd()));
        }
        return planned;
    }

    private static int[] sizes(List<StratumSample> sample) {
        return sample.stream().mapToInt(s -> s.values().length).toArray();
    }

    private static int units(List<StratumSample> sample) {
        return Arrays.stream(sizes(sample)).sum();
    }
}
