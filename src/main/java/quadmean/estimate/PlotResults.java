package quadmean.estimate;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.units.Attribute;

/**
 * The value of each plot by itself. A plot of which some trees were counted or predicted has basal area by its count, and nothing that
 * takes measured trees.
 */
public final class PlotResults {
    private static final String PART = "the plots of a complete tally are parts of it and have no area of their own";
    private static final String COUNTED =
            "trees were counted and not measured here; what is not basal area is known of the stand alone";
    private static final String PREDICTED =
            "trees were predicted and not measured; 3P sampling is of the stand, not of a plot";
    private static final String UNKNOWN = "not known of a tree of this plot: ";

    private PlotResults() {}

    /** All plots in the order in which they came in. */
    public static List<PlotResult> of(Worksheet sheet) {
        return sheet.plots().stream().map(p -> of(sheet, p)).toList();
    }

    private static PlotResult of(Worksheet sheet, SampledPlot plot) {
        Map<Attribute, Double> values = new LinkedHashMap<>();
        Set<String> reasons = new LinkedHashSet<>();
        for (Attribute attribute : sheet.settings().attributes()) {
            double value = value(sheet, plot, attribute);
            values.put(attribute, value);
            if (Double.isNaN(value)) {
                reasons.add(reason(sheet.settings(), attribute));
            }
        }
        return new PlotResult(
                plot.id(),
                plot.stratum(),
                plot.stems().stream().mapToInt(Stem::count).sum(),
                plot.counted().stream().mapToInt(CountedStem::count).sum(),
                plot.inside(),
                values,
                List.copyOf(reasons));
    }

    private static double value(Worksheet sheet, SampledPlot plot, Attribute attribute) {
        PlotDesign design = sheet.settings().plot();
        if (sheet.settings().missing().containsKey(attribute)
                || design instanceof PlotDesign.Complete
                || design.measuring() instanceof Measuring.ThreeP) {
            return Double.NaN;
        }
        if (design instanceof PlotDesign.Point point && isCounted(point.measuring(), plot)) {
            return attribute == Attribute.BASAL_AREA ? CountedSample.counted(point, plot) : Double.NaN;
        }
        return sheet.plot(plot, EstimateRow.ALL, attribute).perHa();
    }

    private static boolean isCounted(Measuring measuring, SampledPlot plot) {
        return measuring instanceof Measuring.LargerFactor || !plot.counted().isEmpty();
    }

    private static String reason(EstimateSettings settings, Attribute attribute) {
        PlotDesign design = settings.plot();
        String missing = settings.missing().get(attribute);
        if (missing != null) {
            return missing;
        }
        if (design instanceof PlotDesign.Complete) {
            return PART;
        }
        if (design.measuring() instanceof Measuring.ThreeP) {
            return PREDICTED;
        }
        return design.measuring().hasCounts() ? COUNTED : UNKNOWN + attribute.label();
    }
}
