package quadmean.stats;

/**
 * The sampled units of one stratum; a simple random sample is one stratum of weight 1.
 *
 * @param weight share of the population that the stratum holds, in (0, 1]
 * @param populationUnits number of units N in the stratum for the finite population correction; infinity for none
 * @param values one value for each sampled unit
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
public record StratumSample(double weight, double populationUnits, double[] values) {

    /** A stratum that is not corrected for the size of its population. */
    public static StratumSample of(double weight, double[] values) {
        return new StratumSample(weight, Double.POSITIVE_INFINITY, values);
    }

    /** Share of the population's units that is still unseen, 1 - n/N, never below zero. */
    double unseen() {
        return unseen(values.length, populationUnits);
    }

    static double unseen(int n, double populationUnits) {
        return Math.max(0, 1 - n / populationUnits);
    }

    /** The same design with other values. */
    StratumSample with(double[] other) {
        return new StratumSample(weight, populationUnits, other);
    }

    /** The stratum as a population of its own. */
    StratumSample alone() {
        return new StratumSample(1, populationUnits, values);
    }
}
