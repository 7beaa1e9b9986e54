package quadmean.plan;

import java.util.List;

/**
 * A target and what is expected of its attribute.
 *
 * @param target the target
 * @param strata what is expected of each stratum of the design, in its order
 */
public record TargetOutlook(PlanTarget target, List<StratumOutlook> strata) {
    public TargetOutlook {
        strata = List.copyOf(strata);
    }

    /** Mean expected of the whole stand, in the unit of the strata. */
    public double mean() {
        double area = areaHa();
        return strata.stream().mapToDouble(s -> s.areaHa() / area * s.mean()).sum();
    }

    /**
     * Coefficient of variation between plots anywhere in the stand (percent): within strata and between them,
     * √(Σ W·(s² + (m - M)²))/M.
     */
    public double cvPercent() {
        double area = areaHa();
        double mean = mean();
        double variance = 0;
        for (StratumOutlook s : strata) {
            double sd = s.cvPercent() / 100 * s.mean();
            variance += s.areaHa() / area * (sd * sd + (s.mean() - mean) * (s.mean() - mean));
        }
        return strata.size() == 1 ? strata.get(0).cvPercent() : 100 * Math.sqrt(variance) / mean;
    }

    /** Area of the stand (ha). */
    public double areaHa() {
        return strata.stream().mapToDouble(StratumOutlook::areaHa).sum();
    }

    /** Degrees of freedom behind the spread: plots less strata; infinity for one that is taken as known. */
    public double pilotDf() {
        int df = strata.stream().mapToInt(s -> s.plots() - 1).sum();
        return strata.stream().allMatch(s -> s.plots() > 1) ? df : Double.POSITIVE_INFINITY;
    }

    /** The same if the spread were larger in every stratum. */
    TargetOutlook spread(double factor) {
        return new TargetOutlook(
                target, strata.stream().map(s -> s.spread(factor)).toList());
    }
}
