package quadmean.stats;

import java.util.Arrays;
import java.util.List;
import quadmean.stats.Allocation.PlannedStratum;

/**
 * Units drawn at random in each stratum.
 *
 * @param allocation how units are shared
 * @param strata what is expected of each, in the order of the parts
 * @param rule how degrees of freedom are counted for the error to expect; the chance of reaching a target takes Satterthwaite's
 */
public record StratifiedPlan(Allocation allocation, List<PlannedStratum> strata, DegreesOfFreedom rule)
        implements PlannedSample {
    public StratifiedPlan {
        strata = List.copyOf(strata);
    }

    @Override
    public int least() {
        return strata.stream().mapToInt(PlannedStratum::least).sum();
    }

    @Override
    public int most() {
        double all = strata.stream()
                .mapToDouble(s -> Math.max(s.least(), Math.ceil(s.populationUnits())))
                .sum();
        return (int) Math.min(SampleSize.LARGEST, all);
    }

    @Override
    public int[] parts(int n) {
        return allocation.allocate(n, strata);
    }

    @Override
    public MeanEstimate expected(int[] parts) {
        return Allocation.expected(parts, strata, rule);
    }

    @Override
    public double spreadDf(int[] parts) {
        MeanEstimate e = Allocation.expected(parts, strata, DegreesOfFreedom.SATTERTHWAITE);
        return e.variance() == 0 ? Arrays.stream(parts).sum() - parts.length : e.df();
    }
}
