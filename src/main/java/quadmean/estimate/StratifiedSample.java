package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import quadmean.model.DegreesRule;
import quadmean.model.Stratum;
import quadmean.stats.DegreesOfFreedom;
import quadmean.stats.MeanEstimate;
import quadmean.stats.RatioEstimate;
import quadmean.stats.StratifiedMean;
import quadmean.stats.StratumSample;

/** Plots drawn at random within strata, or in the whole stand. */
final class StratifiedSample implements Sample {
    private final List<Stratum> strata;
    private final List<List<SampledPlot>> plots;
    private final EstimateSettings settings;

    private StratifiedSample(List<Stratum> strata, List<List<SampledPlot>> plots, EstimateSettings settings) {
        this.strata = strata;
        this.plots = plots;
        this.settings = settings;
    }

    static StratifiedSample of(List<Stratum> strata, List<SampledPlot> plots, EstimateSettings settings) {
        List<List<SampledPlot>> sorted = new ArrayList<>();
        for (Stratum stratum : strata) {
            sorted.add(plots.stream()
                    .filter(p -> p.stratum().equals(stratum.code()))
                    .toList());
        }
        return new StratifiedSample(strata, sorted, settings);
    }

    @Override
    public double areaHa() {
        return strata.stream().mapToDouble(Stratum::areaHa).sum();
    }

    @Override
    public boolean isComplete() {
        return plots.stream().noneMatch(List::isEmpty);
    }

    @Override
    public List<String> strataWithOnePlot() {
        List<String> single = new ArrayList<>();
        for (int i = 0; i < strata.size(); i++) {
            if (plots.get(i).size() == 1) {
                single.add(strata.get(i).code());
            }
        }
        return single;
    }

    @Override
    public long plotsWith(ToDoubleFunction<SampledPlot> value) {
        return plots.stream()
                .flatMap(List::stream)
                .filter(p -> value.applyAsDouble(p) > 0)
                .count();
    }

    @Override
    public MeanEstimate mean(ToDoubleFunction<SampledPlot> value) {
        return StratifiedMean.estimate(samples(value), degrees());
    }

    @Override
    public MeanEstimate ratio(ToDoubleFunction<SampledPlot> y, ToDoubleFunction<SampledPlot> x) {
        return RatioEstimate.estimate(samples(y), samples(x), degrees());
    }

    @Override
    public List<StratumSample> samples(ToDoubleFunction<SampledPlot> value) {
        double area = areaHa();
        List<StratumSample> samples = new ArrayList<>();
        for (int i = 0; i < strata.size(); i++) {
            double[] values = plots.get(i).stream().mapToDouble(value).toArray();
            double areaHa = strata.get(i).areaHa();
            samples.add(new StratumSample(
                    areaHa / area, settings.finitePopulation().plotsIn(settings.plot(), areaHa), values));
        }
        return samples;
    }

    /** The plots stratum by stratum. */
    List<List<SampledPlot>> plots() {
        return plots;
    }

    /** Shares of the area that the strata hold. */
    double[] weights() {
        return strata.stream().mapToDouble(s -> s.areaHa() / areaHa()).toArray();
    }

    DegreesOfFreedom degrees() {
        return settings.degreesRule() == DegreesRule.SATTERTHWAITE
                ? DegreesOfFreedom.SATTERTHWAITE
                : DegreesOfFreedom.UNITS_MINUS_STRATA;
    }
}
