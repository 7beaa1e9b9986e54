package quadmean.stats;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** How many units a stratified random sample needs and how they are shared among the strata. */
public enum Allocation {
    /** Shares by size: n_h ∝ W_h. */
    PROPORTIONAL("proportional allocation") {
        @Override
        double share(PlannedStratum s) {
            return s.weight();
        }
    },
    /** Shares by size and variation: n_h ∝ W_h·S_h, the smallest error for a given n (Neyman 1934). */
    NEYMAN("Neyman allocation") {
        @Override
        double share(PlannedStratum s) {
            return s.weight() * s.sd();
        }
    },
    /** Shares by size, variation and cost: n_h ∝ W_h·S_h/√c_h, the smallest error for the cost (Cochran 1977, section 5.5; from memory). */
    OPTIMUM("optimum allocation with costs") {
        @Override
        double share(PlannedStratum s) {
            return s.weight() * s.sd() / Math.sqrt(s.cost());
        }
    };

    /** A stratum needs two units for a standard error. */
    private static final int LEAST = 2;

    private final String label;

    Allocation(String label) {
        this.label = label;
    }

    abstract double share(PlannedStratum s);

    /** The words used in outputs. */
    public String label() {
        return label;
    }

    /**
     * What is known of a stratum before the cruise.
     *
     * @param weight share of the area, in (0, 1]
     * @param populationUnits units N for the finite population correction; infinity for none
     * @param mean expected mean
     * @param sd expected standard deviation between units
     * @param least fewest units it gets, at least 2; a stratum of fewer is taken whole
     * @param cost cost of a unit, above 0
     */
    public record PlannedStratum(
            double weight, double populationUnits, double mean, double sd, int least, double cost) {
        /** A stratum like any other: two units at least, and units of one cost. */
        public PlannedStratum(double weight, double populationUnits, double mean, double sd) {
            this(weight, populationUnits, mean, sd, LEAST, 1);
        }

        /** The estimate to expect from so many units of it. */
        MeanEstimate expected(int units) {
            double variance = sd * sd / units * Math.max(0, 1 - units / populationUnits);
            return new MeanEstimate(units, units - 1, mean, Math.sqrt(variance), sd);
        }
    }

    /**
     * Exact shares of n units, before rounding. A stratum whose share exceeds its units is taken whole and the rest
     * shared again (Cochran 1977, section 5.8; number from memory); with more units than all strata hold, each is whole.
     */
    public double[] shares(int n, List<PlannedStratum> strata) {
        double[] shares = new double[strata.size()];
        boolean[] whole = new boolean[shares.length];
        double left = n;
        boolean again = true;
        while (again) {
            again = false;
            double[] parts = parts(strata, whole);
            for (int i = 0; i < shares.length; i++) {
                shares[i] = whole[i] ? shares[i] : left * parts[i];
            }
            for (int i = 0; i < shares.length; i++) {
                double most =
                        Math.max(strata.get(i).least(), Math.ceil(strata.get(i).populationUnits()));
                if (shares[i] > most) {
                    shares[i] = most;
                    left -= most;
                    whole[i] = true;
                    again = true;
                }
            }
        }
        return shares;
    }

    /** Parts of one for the strata not taken whole; by size where none of them has any spread. */
    private double[] parts(List<PlannedStratum> strata, boolean[] whole) {
        double[] raw = new double[whole.length];
        double[] weights = new double[whole.length];
        for (int i = 0; i < whole.length; i++) {
            raw[i] = whole[i] ? 0 : share(strata.get(i));
            weights[i] = whole[i] ? 0 : strata.get(i).weight();
        }
        double[] chosen = Moments.sum(raw) > 0 ? raw : weights;
        double sum = Moments.sum(chosen);
        return Arrays.stream(chosen).map(r -> r / sum).toArray();
    }

    /**
     * Whole units for each stratum, at least the fewest it gets: floors, then the largest remainders (ties to the earlier
     * stratum), then units moved to those below their fewest from those that are farthest above. Never more than a stratum holds.
     *
     * @param n units to share, at least the fewest of all strata together
     */
    public int[] allocate(int n, List<PlannedStratum> strata) {
        Arguments.atLeast(n, least(strata), "units to allocate");
        double[] shares = shares(n, strata);
        int[] units = Arrays.stream(shares).mapToInt(s -> (int) Math.floor(s)).toArray();
        List<Integer> byRemainder = IntStream.range(0, units.length)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> units[i] - shares[i]))
                .toList();
        int left = (int) Math.rint(Moments.sum(shares)) - Arrays.stream(units).sum();
        for (int k = 0; k < left; k++) {
            units[byRemainder.get(k % units.length)]++;
        }
        for (int i = 0; i < units.length; i++) {
            while (units[i] < strata.get(i).least()) {
                units[indexOfLargest(units, strata)]--;
                units[i]++;
            }
        }
        return units;
    }

    /**
     * The smallest n that reaches the allowed error at this allocation, t on n minus strata degrees of freedom.
     *
     * @param errorPercent allowed half width of the confidence interval (percent of the mean), above 0
     * @param confidence confidence level, in (0, 1)
     * @return units for each stratum, or null if more than {@link SampleSize#LARGEST} would be needed
     */
    public int @Nullable [] smallest(double errorPercent, double confidence, List<PlannedStratum> strata) {
        Arguments.positive(errorPercent, "allowed error");
        int n = Math.max(least(strata), lowerBound(errorPercent, confidence, strata));
        while (n <= SampleSize.LARGEST) {
            int[] units = allocate(n, strata);
            if (errorPercent(units, confidence, strata) <= errorPercent) {
                return units;
            }
            n++;
        }
        return null;
    }

    /** Half width of the confidence interval in percent of the mean that an allocation is expected to give. */
    public static double errorPercent(int[] units, double confidence, List<PlannedStratum> strata) {
        return expected(units, strata, DegreesOfFreedom.UNITS_MINUS_STRATA).samplingErrorPercent(confidence);
    }

    /** The estimate to expect from so many units in each stratum. */
    static MeanEstimate expected(int[] units, List<PlannedStratum> strata, DegreesOfFreedom rule) {
        List<MeanEstimate> parts = IntStream.range(0, units.length)
                .mapToObj(h -> strata.get(h).expected(units[h]))
                .toList();
        return WeightedSum.of(
                strata.stream().mapToDouble(PlannedStratum::weight).toArray(), parts, rule);
    }

    private static int least(List<PlannedStratum> strata) {
        return strata.stream().mapToInt(PlannedStratum::least).sum();
    }

    /**
     * A number that no allocation can go below: the continuous optimum (ΣW·S)²/(V + ΣW²·S²/N) at the normal value for t.
     * The search goes up from it.
     */
    private static int lowerBound(double errorPercent, double confidence, List<PlannedStratum> strata) {
        double mean = 0;
        double spread = 0;
        double finite = 0;
        for (PlannedStratum s : strata) {
            mean += s.weight() * s.mean();
            spread += s.weight() * s.sd();
            finite += Math.pow(s.weight() * s.sd(), 2) / s.populationUnits();
        }
        double z = StudentT.critical(confidence, Double.POSITIVE_INFINITY);
        double allowed = Math.pow(errorPercent / 100 * mean / z, 2);
        return (int) Math.min(Integer.MAX_VALUE, Math.floor(spread * spread / (allowed + finite)));
    }

    private static int indexOfLargest(int[] units, List<PlannedStratum> strata) {
        int best = 0;
        for (int i = 1; i < units.length; i++) {
            if (units[i] - strata.get(i).least()
                    > units[best] - strata.get(best).least()) {
                best = i;
            }
        }
        return best;
    }
}
