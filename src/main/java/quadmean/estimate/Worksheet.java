package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import quadmean.model.Stratum;
import quadmean.stats.MeanEstimate;
import quadmean.stats.StratifiedMean;
import quadmean.stats.StratumSample;
import quadmean.stats.StudentT;
import quadmean.stats.Working;
import quadmean.units.Attribute;

/**
 * The plots of an estimate, to show how single numbers come about. Every number is from the code that estimates.
 *
 * @param strata strata of the design
 * @param plots plots in the order in which they came in
 * @param settings how they are estimated from
 */
public record Worksheet(List<Stratum> strata, List<SampledPlot> plots, EstimateSettings settings) {
    /** Numbers that differ by less, as a share of the larger, are the same number. */
    private static final double SAME = 1e-10;

    public Worksheet {
        strata = List.copyOf(strata);
        plots = List.copyOf(plots);
    }

    /** The value of a plot, from all of its trees or those of one species. */
    public PlotWorking plot(SampledPlot plot, String species, Attribute attribute) {
        List<StemWorking> stems = new ArrayList<>();
        for (Stem stem : plot.stems()) {
            boolean counts = stem.counts().contains(attribute) && of(species).test(stem);
            double perTree = counts ? PlotValue.value(attribute, Part.ALL, stem) : 0;
            stems.add(new StemWorking(
                    stem,
                    counts,
                    Expansion.treesPerHa(settings.plot(), stem.dbhCm()),
                    perTree,
                    counts ? PlotValue.treesPerHa(settings.plot(), plot, stem) * perTree : 0));
        }
        return new PlotWorking(plot, stems, value(species, attribute).applyAsDouble(plot));
    }

    /** The mean of an attribute over the stand, or over one stratum of it. */
    public MeanWorking mean(String stratum, String species, Attribute attribute) {
        return mean(stratum, value(species, attribute));
    }

    /** The ratio of two attributes over the stand, or over one stratum of it. */
    public RatioWorking ratio(String stratum, String species, Attribute numerator, Attribute denominator) {
        Sample sample = Sample.of(strata(stratum), plots, settings);
        ToDoubleFunction<SampledPlot> y = value(species, numerator);
        ToDoubleFunction<SampledPlot> x = value(species, denominator);
        Working working = Working.kept();
        MeanEstimate ratio = sample.ratio(y, x, working);
        MeanEstimate meanX = sample.mean(x);
        MeanWorking residuals =
                mean(stratum, p -> (y.applyAsDouble(p) - ratio.mean() * x.applyAsDouble(p)) / meanX.mean());
        return new RatioWorking(
                sample.mean(y), meanX, ratio, residuals, sample.hasLinearRatios() ? List.of() : working.steps());
    }

    private MeanWorking mean(String code, ToDoubleFunction<SampledPlot> value) {
        Sample sample = Sample.of(strata(code), plots, settings);
        List<StratumWorking> parts = new ArrayList<>();
        List<StratumSample> simple = new ArrayList<>();
        for (Stratum stratum : strata(code)) {
            StratumWorking part = stratum(stratum, sample.areaHa(), value);
            parts.add(part);
            simple.add(new StratumSample(
                    part.weight(),
                    part.populationUnits(),
                    part.values().stream().mapToDouble(v -> v).toArray()));
        }
        Working working = Working.kept();
        MeanEstimate mean = sample.mean(value, working);
        boolean plain = simple.stream().allMatch(s -> s.values().length > 0)
                && isSame(mean, StratifiedMean.estimate(simple, StratifiedSample.degrees(settings)));
        double t = mean.hasError() ? StudentT.critical(settings.confidence(), mean.df()) : Double.NaN;
        MeanWorking.Way way = plain ? MeanWorking.Way.STRATA : MeanWorking.Way.OTHER;
        return new MeanWorking(sample.areaHa(), parts, mean, t, way, plain ? List.of() : working.steps());
    }

    private StratumWorking stratum(Stratum stratum, double areaHa, ToDoubleFunction<SampledPlot> value) {
        List<SampledPlot> own =
                plots.stream().filter(p -> p.stratum().equals(stratum.code())).toList();
        return new StratumWorking(
                stratum.code(),
                stratum.areaHa(),
                stratum.areaHa() / areaHa,
                settings.finitePopulation().plotsIn(settings.plot(), stratum.areaHa()),
                own.stream().map(SampledPlot::id).toList(),
                own.stream().map(SampledPlot::facts).toList(),
                own.stream().map(value::applyAsDouble).toList(),
                Sample.of(List.of(stratum), plots, settings).mean(value));
    }

    private static boolean isSame(MeanEstimate a, MeanEstimate b) {
        double size = Math.abs(a.mean()) + (Double.isFinite(a.sd()) ? a.sd() : 0);
        boolean sameError = Double.isNaN(a.se()) == Double.isNaN(b.se()) && !(Math.abs(a.se() - b.se()) > SAME * size);
        return Math.abs(a.mean() - b.mean()) <= SAME * size
                && sameError
                && !(Math.abs(a.df() - b.df()) > SAME * a.df());
    }

    private List<Stratum> strata(String code) {
        return strata.stream()
                .filter(s -> code.equals(EstimateRow.ALL) || s.code().equals(code))
                .toList();
    }

    private ToDoubleFunction<SampledPlot> value(String species, Attribute attribute) {
        return PlotValue.of(settings.plot(), attribute, of(species));
    }

    private static Predicate<Stem> of(String species) {
        return stem -> species.equals(EstimateRow.ALL) || stem.species().equals(species);
    }
}
