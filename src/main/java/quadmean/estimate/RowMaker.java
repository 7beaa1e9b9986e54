package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import quadmean.stats.MeanEstimate;
import quadmean.units.Attribute;
import quadmean.units.BasalArea;
import quadmean.units.Basis;

/** Makes the rows of the estimate table for one stratum, or for all of them, and one species, or all. */
final class RowMaker {
    /** Plots with trees of a species from which on the error of its mean diameter is given: common practice, no source. */
    private static final int FEW_PLOTS = 3;

    /** Why there is no error where {@link #isOnFewPlots}. */
    static final String ON_FEW_PLOTS = "trees on fewer than " + FEW_PLOTS + " plots";

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
        for (Attribute attribute : settings.attributes()) {
            sums(species, Part.ALL, attribute, rows);
        }
        rows.add(
                row(species, Part.ALL, Attribute.QUADRATIC_MEAN_DIAMETER, Basis.RATIO, quadraticMeanDiameter(species)));
        return rows;
    }

    /** The rows of one product, or of one place in the stem. */
    List<EstimateRow> rows(String species, Part part) {
        List<EstimateRow> rows = new ArrayList<>();
        settings.attributes().stream()
                .filter(Attribute::isOfLogs)
                .forEach(attribute -> sums(species, part, attribute, rows));
        return rows;
    }

    private void sums(String species, Part part, Attribute attribute, List<EstimateRow> rows) {
        MeanEstimate mean = sample.mean(PlotValue.of(settings.plot(), attribute, part, stem -> isOf(stem, species)));
        rows.add(row(species, part, attribute, Basis.PER_AREA, mean));
        rows.add(row(species, part, attribute, Basis.TOTAL, mean.times(sample.areaHa())));
    }

    /** The rows of the trees of one diameter class. */
    List<EstimateRow> rows(String species, Attribute attribute, DiameterClass size) {
        MeanEstimate mean = sample.mean(
                PlotValue.of(settings.plot(), attribute, stem -> isOf(stem, species) && size.holds(stem.dbhCm())));
        return List.of(
                row(species, Part.ALL, attribute, Basis.PER_AREA, mean),
                row(species, Part.ALL, attribute, Basis.TOTAL, mean.times(sample.areaHa())));
    }

    private static boolean isOf(Stem stem, String species) {
        return species.equals(EstimateRow.ALL) || stem.species().equals(species);
    }

    private ToDoubleFunction<SampledPlot> value(Attribute attribute, String species) {
        return PlotValue.of(settings.plot(), attribute, stem -> isOf(stem, species));
    }

    /** √(G/(k·N)), its error from that of the ratio G/N: the relative error of a square root is half as large. */
    MeanEstimate quadraticMeanDiameter(String species) {
        MeanEstimate ratio = sample.ratio(value(Attribute.BASAL_AREA, species), value(Attribute.TREES, species));
        double qmd = BasalArea.quadraticMeanDiameter(ratio.mean(), 1);
        double half = qmd / (2 * ratio.mean());
        if (isOnFewPlots(sample.plotsWith(value(Attribute.TREES, species)), ratio.n())) {
            return new MeanEstimate(ratio.n(), 0, qmd, Double.NaN, Double.NaN);
        }
        return new MeanEstimate(ratio.n(), ratio.df(), qmd, half * ratio.se(), half * ratio.sd());
    }

    /** Trees of one or two plots show next to nothing of how diameters vary, and a ratio's error comes out far too small. */
    static boolean isOnFewPlots(long plotsWithTrees, int plots) {
        return plotsWithTrees < FEW_PLOTS && plots > FEW_PLOTS;
    }

    private EstimateRow row(String species, Part part, Attribute attribute, Basis basis, MeanEstimate e) {
        return EstimateRow.of(stratum, species, part, attribute, basis, e, settings.confidence(), reason(attribute, e));
    }

    private String reason(Attribute attribute, MeanEstimate e) {
        if (Double.isNaN(e.mean())) {
            String why = settings.whyMissing(attribute);
            return why.isEmpty() ? sample.whyNoEstimate() : why;
        }
        if (!e.hasError()) {
            return noError(attribute);
        }
        return e.mean() == 0 ? nothing(attribute) : "";
    }

    /** Why there is no standard error. */
    static String noError(Sample sample) {
        List<String> single = sample.strataWithOnePlot();
        return single.isEmpty()
                ? "no standard error: " + ON_FEW_PLOTS
                : "no standard error: one plot in " + String.join(", ", single);
    }

    private String noError(Attribute attribute) {
        return attribute == Attribute.QUADRATIC_MEAN_DIAMETER
                ? noError(sample)
                : sample.strataWithOnePlot().isEmpty() ? sample.whyNoError() : noError(sample);
    }

    static String nothing(Attribute attribute) {
        return switch (attribute) {
            case TREES, BASAL_AREA, QUADRATIC_MEAN_DIAMETER -> "no trees tallied here";
            case VOLUME, GREEN_WEIGHT -> "no volume: no tree here that counts in volume";
            case BIOMASS, CARBON -> "no tree here that counts in biomass";
            case LOG_VOLUME -> "no log of this kind here";
            case NET_LOG_VOLUME -> "no log of this kind here that has anything net of defect";
            case BOARD_FEET, NET_BOARD_FEET -> "no board feet: no log or tree here that has any";
            case VALUE -> "no log here that fetches anything";
        };
    }
}
