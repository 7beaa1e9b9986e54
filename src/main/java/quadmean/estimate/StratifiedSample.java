package quadmean.estimate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import quadmean.model.DegreesRule;
import quadmean.model.OnePlotRule;
import quadmean.model.Stratum;
import quadmean.stats.CollapsedStrata;
import quadmean.stats.DegreesOfFreedom;
import quadmean.stats.MeanEstimate;
import quadmean.stats.ResampledStratum;
import quadmean.stats.Reweighting;
import quadmean.stats.StratifiedMean;
import quadmean.stats.StratumSample;
import quadmean.stats.Working;

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
    public MeanEstimate mean(ToDoubleFunction<SampledPlot> value, Working working) {
        return isCollapsed()
                ? CollapsedStrata.into(samples(value), neighbours()).estimate(degrees(settings), working)
                : StratifiedMean.estimate(samples(value), degrees(settings), working);
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

    @Override
    public List<String> notes() {
        if (!isCollapsed()) {
            return DesignNotes.of(settings, strataWithOnePlot());
        }
        List<String> notes = new ArrayList<>();
        int[] neighbours = neighbours();
        for (int i = 0; i < strata.size(); i++) {
            if (plots.get(i).size() == 1) {
                notes.add("One plot only in " + strata.get(i).code()
                        + ": for the error of the whole stand it shares the variation of "
                        + strata.get(neighbours[i]).code()
                        + ", which the design lists next to it; differences between the two count as chance, so that the"
                        + " error comes out too large rather than too small. By itself it has none.");
            }
        }
        return notes;
    }

    /** Whether strata with a single plot share the variation of others. */
    private boolean isCollapsed() {
        return settings.rules().estimation().onePlot() == OnePlotRule.COLLAPSE
                && strata.size() > 1
                && isComplete()
                && !strataWithOnePlot().isEmpty();
    }

    /** The stratum listed next; for the last the one before. */
    private int[] neighbours() {
        int last = strata.size() - 1;
        return IntStream.rangeClosed(0, last).map(i -> i < last ? i + 1 : i - 1).toArray();
    }

    @Override
    public Optional<Resampling> resampling() {
        List<SampledPlot> units = new ArrayList<>();
        plots.forEach(
                p -> p.stream().sorted(Comparator.comparing(SampledPlot::id)).forEach(units::add));
        return Optional.of(new Resampling(
                samples(plot -> 0).stream().map(ResampledStratum::of).toList(),
                units,
                Reweighting.same(units.size()),
                "plots",
                List.of()));
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
        return degrees(settings);
    }

    static DegreesOfFreedom degrees(EstimateSettings settings) {
        return settings.degreesRule() == DegreesRule.SATTERTHWAITE
                ? DegreesOfFreedom.SATTERTHWAITE
                : DegreesOfFreedom.UNITS_MINUS_STRATA;
    }
}
