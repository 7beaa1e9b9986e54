package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import quadmean.model.PlotDesign;
import quadmean.stats.Interval;
import quadmean.stats.MeanEstimate;
import quadmean.units.Attribute;
import quadmean.units.BasalArea;
import quadmean.units.Basis;

/** Makes the rows of the estimate table for one stratum, or for all of them, and one species, or all. */
final class RowMaker {
    private static final List<Attribute> SUMS = List.of(Attribute.TREES, Attribute.BASAL_AREA, Attribute.VOLUME);

    /** Plots with trees of a species from which on the error of its mean diameter is given: common practice, no source. */
    private static final int FEW_PLOTS = 3;

    private final Sample sample;
    private final EstimateSettings settings;
    private final String stratum;

    RowMaker(Sample sample, EstimateSettings settings, String stratum) {
        this.sample = sample;
        this.settings = settings;
        this.stratum = stratum;
    }

    List<EstimateRow> rows(String species) {
        List<EstimateRow> rows = new ArrayList<>();
        for (Attribute attribute : SUMS) {
            MeanEstimate mean = sample.mean(value(attribute, species));
            rows.add(row(species, attribute, Basis.PER_AREA, mean));
            rows.add(row(species, attribute, Basis.TOTAL, mean.times(sample.areaHa())));
        }
        rows.add(row(species, Attribute.QUADRATIC_MEAN_DIAMETER, Basis.RATIO, quadraticMeanDiameter(species)));
        return rows;
    }

    private ToDoubleFunction<SampledPlot> value(Attribute attribute, String species) {
        PlotDesign plot = settings.plot();
        Predicate<Stem> filter =
                stem -> species.equals(EstimateRow.ALL) || stem.species().equals(species);
        return PlotValue.of(plot, attribute, filter);
    }

    /** √(G/(k·N)), its error from that of the ratio G/N: the relative error of a square root is half as large. */
    private MeanEstimate quadraticMeanDiameter(String species) {
        MeanEstimate ratio = sample.ratio(value(Attribute.BASAL_AREA, species), value(Attribute.TREES, species));
        double qmd = BasalArea.quadraticMeanDiameter(ratio.mean(), 1);
        double half = qmd / (2 * ratio.mean());
        if (isOnFewPlots(species) && ratio.n() > FEW_PLOTS) {
            return new MeanEstimate(ratio.n(), 0, qmd, Double.NaN, Double.NaN);
        }
        return new MeanEstimate(ratio.n(), ratio.df(), qmd, half * ratio.se(), half * ratio.sd());
    }

    /** Trees of one or two plots show next to nothing of how diameters vary, and a ratio's error comes out far too small. */
    private boolean isOnFewPlots(String species) {
        return sample.plotsWith(value(Attribute.TREES, species)) < FEW_PLOTS;
    }

    private EstimateRow row(String species, Attribute attribute, Basis basis, MeanEstimate e) {
        Interval limits = e.interval(settings.confidence());
        return new EstimateRow(
                stratum,
                species,
                attribute,
                basis,
                e.n(),
                e.hasError() ? e.df() : Double.NaN,
                e.mean(),
                e.se(),
                e.cvPercent(),
                limits.lower(),
                limits.upper(),
                e.samplingErrorPercent(settings.confidence()),
                reason(attribute, e));
    }

    private String reason(Attribute attribute, MeanEstimate e) {
        if (Double.isNaN(e.mean())) {
            return attribute == Attribute.VOLUME ? settings.volumeMissing() : "no trees tallied here";
        }
        if (!e.hasError()) {
            List<String> single = sample.strataWithOnePlot();
            return single.isEmpty()
                    ? "no standard error: trees on fewer than " + FEW_PLOTS + " plots"
                    : "no standard error: one plot in " + String.join(", ", single);
        }
        if (e.mean() != 0) {
            return "";
        }
        return attribute == Attribute.VOLUME
                ? "no volume: no tree here that counts in volume"
                : "no trees tallied here";
    }
}
