package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import quadmean.model.Stratum;
import quadmean.stats.MeanEstimate;
import quadmean.stats.ResampledStratum;
import quadmean.stats.Reweighting;
import quadmean.stats.StratumSample;
import quadmean.stats.WeightedSum;
import quadmean.stats.Working;

/** Strata that are each estimated for themselves by the estimator of the design, and added up by area. */
final class SeparateSample implements Sample {
    private final List<DrawnPlots> strata;
    private final EstimateSettings settings;
    private final StratumEstimator estimator;

    private SeparateSample(List<DrawnPlots> strata, EstimateSettings settings) {
        this.strata = strata;
        this.settings = settings;
        this.estimator = StratumEstimator.of(settings.rules().estimation());
    }

    static SeparateSample of(List<Stratum> strata, List<SampledPlot> plots, EstimateSettings settings) {
        List<DrawnPlots> drawn = new ArrayList<>();
        for (Stratum stratum : strata) {
            drawn.add(new DrawnPlots(stratum, plots, settings)
                    .only(p -> p.stratum().equals(stratum.code())));
        }
        return new SeparateSample(drawn, settings);
    }

    @Override
    public double areaHa() {
        return strata.stream().mapToDouble(s -> s.stratum().areaHa()).sum();
    }

    @Override
    public boolean isComplete() {
        return strata.stream().allMatch(estimator::isEnough);
    }

    @Override
    public List<String> strataWithOnePlot() {
        return strata.stream()
                .filter(s -> estimator.units(s) == 1)
                .map(s -> s.stratum().code())
                .toList();
    }

    @Override
    public long plotsWith(ToDoubleFunction<SampledPlot> value) {
        return strata.stream()
                .flatMap(s -> s.plots().stream())
                .filter(p -> value.applyAsDouble(p) > 0)
                .count();
    }

    @Override
    public MeanEstimate mean(ToDoubleFunction<SampledPlot> value, Working working) {
        double[] weights = strata.stream()
                .mapToDouble(s -> s.stratum().areaHa() / areaHa())
                .toArray();
        List<MeanEstimate> parts = new ArrayList<>();
        for (DrawnPlots s : strata) {
            if (strata.size() > 1) {
                working.heading("Part " + (parts.size() + 1) + ": stratum "
                        + s.stratum().code());
            }
            parts.add(estimator.isEnough(s) ? estimator.mean(s, value, working) : StratumEstimator.UNKNOWN);
        }
        return WeightedSum.of(weights, parts, StratifiedSample.degrees(settings), working);
    }

    @Override
    public List<StratumSample> samples(ToDoubleFunction<SampledPlot> value) {
        double area = areaHa();
        List<StratumSample> samples = new ArrayList<>();
        for (DrawnPlots s : strata) {
            double[] spread = estimator.isEnough(s) ? estimator.spread(s, value) : new double[0];
            if (spread.length == 0) {
                return List.of();
            }
            samples.add(new StratumSample(s.stratum().areaHa() / area, s.plotsInStratum(), spread));
        }
        return samples;
    }

    @Override
    public List<String> notes() {
        return DesignNotes.of(settings, strataWithOnePlot());
    }

    @Override
    public String whyNoError() {
        return DesignNotes.whyNoError(settings.rules().estimation());
    }

    /** Each stratum by itself, with its own ratio, line or classes. */
    @Override
    public Optional<Resampling> resampling() {
        List<Resampling> parts = strata.stream()
                .filter(estimator::isEnough)
                .flatMap(s -> estimator.resampling(s).stream())
                .toList();
        if (parts.size() < strata.size()) {
            return Optional.empty();
        }
        List<ResampledStratum> design = new ArrayList<>();
        for (int h = 0; h < parts.size(); h++) {
            ResampledStratum one = parts.get(h).strata().get(0);
            design.add(new ResampledStratum(
                    strata.get(h).stratum().areaHa() / areaHa(), one.populationUnits(), one.units()));
        }
        return Optional.of(new Resampling(
                design,
                parts.stream().flatMap(p -> p.plots().stream()).toList(),
                Reweighting.joined(parts.stream().map(Resampling::weights).toList(), design),
                parts.get(0).unit(),
                parts.stream().flatMap(p -> p.notes().stream()).distinct().toList()));
    }

    @Override
    public String whyNoBootstrap() {
        return DesignNotes.whyNoBootstrap(settings.rules().estimation());
    }
}
