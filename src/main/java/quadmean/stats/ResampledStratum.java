package quadmean.stats;

/**
 * One stratum as a bootstrap sees it. The units are those that were drawn: plots, or whole clusters.
 *
 * @param weight share of the population, in (0, 1]
 * @param populationUnits units N for the finite population correction; infinity for none
 * @param units units in the sample, at least 1; a single one cannot vary
 */
public record ResampledStratum(double weight, double populationUnits, int units) {
    /** Refuses strata without units. */
    public ResampledStratum {
        Arguments.atLeast(units, 1, "units in a stratum");
    }

    /** The stratum of a sample. */
    public static ResampledStratum of(StratumSample s) {
        return new ResampledStratum(s.weight(), s.populationUnits(), s.values().length);
    }

    /** By how much deviations shrink, √(1-n/N), so that the resamples vary as the estimate does (Rao and Wu 1988). */
    double shrinkage() {
        return Math.sqrt(Math.max(0, 1 - units / populationUnits));
    }
}
