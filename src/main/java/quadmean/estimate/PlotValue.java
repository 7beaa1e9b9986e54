package quadmean.estimate;

import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import quadmean.model.PlotDesign;
import quadmean.stats.Moments;
import quadmean.units.Attribute;
import quadmean.units.BasalArea;
import quadmean.units.Unit;
import quadmean.volume.CutLog;
import quadmean.volume.TreeWood;

/** What a plot says per hectare: the sum over its trees of expansion factor times the tree's value. */
final class PlotValue {
    private PlotValue() {}

    /** The value of an attribute from the stems that pass a filter; a plot without any is a zero. */
    static ToDoubleFunction<SampledPlot> of(PlotDesign design, Attribute attribute, Predicate<Stem> filter) {
        return of(design, attribute, Part.ALL, filter);
    }

    /** The value of an attribute from some of the logs of the stems that pass a filter. */
    static ToDoubleFunction<SampledPlot> of(PlotDesign design, Attribute attribute, Part part, Predicate<Stem> filter) {
        return of(design, attribute, filter, stem -> value(attribute, part, stem));
    }

    /** The sum per hectare of any number that trees have, over those that pass a filter and count in an attribute. */
    static ToDoubleFunction<SampledPlot> of(
            PlotDesign design, Attribute counting, Predicate<Stem> filter, ToDoubleFunction<Stem> value) {
        return plot -> {
            double[] values = new double[plot.stems().size()];
            int n = 0;
            for (Stem stem : plot.stems()) {
                if (filter.test(stem) && stem.counts().contains(counting)) {
                    values[n++] = treesPerHa(design, plot, stem) * value.applyAsDouble(stem);
                }
            }
            return Moments.sum(values); // zeros at the end add nothing
        };
    }

    /** How many trees per hectare a stem of a plot stands for. */
    static double treesPerHa(PlotDesign design, SampledPlot plot, Stem stem) {
        return treesPerHa(design, stem) / plot.inside();
    }

    /** The same of a plot that lies wholly inside its stratum. */
    static double treesPerHa(PlotDesign design, Stem stem) {
        return stem.count() * Expansion.treesPerHa(design, stem.dbhCm());
    }

    /** Of one tree, in the metric unit of the attribute's total. */
    static double value(Attribute attribute, Part part, Stem stem) {
        TreeWood wood = stem.wood();
        return switch (attribute) {
            case TREES -> 1;
            case BASAL_AREA -> BasalArea.ofTree(stem.dbhCm());
            case VOLUME -> wood.volumeM3();
            case LOG_VOLUME -> logs(wood, part, CutLog::cubicM3);
            case NET_LOG_VOLUME -> logs(wood, part, CutLog::netM3);
            case BOARD_FEET -> wood.treeBoardFeet().orElseGet(() -> logs(wood, part, CutLog::boardFeet));
            case NET_BOARD_FEET ->
                wood.treeBoardFeet().isPresent()
                        ? wood.treeBoardFeet().getAsDouble() * (1 - wood.defect())
                        : logs(wood, part, CutLog::netBoardFeet);
            case VALUE -> logs(wood, part, CutLog::value);
            case GREEN_WEIGHT -> Unit.KILOGRAM.convert(wood.greenKg(), Unit.TONNE);
            case BIOMASS -> Unit.KILOGRAM.convert(wood.dryKg(), Unit.TONNE);
            case CARBON -> Unit.KILOGRAM.convert(wood.carbonKg(), Unit.TONNE);
            case QUADRATIC_MEAN_DIAMETER -> throw new IllegalArgumentException("a ratio has no value on a single plot");
        };
    }

    private static double logs(TreeWood wood, Part part, ToDoubleFunction<CutLog> value) {
        double sum = 0;
        for (CutLog log : wood.logs()) {
            sum += part.holds(log) ? value.applyAsDouble(log) : 0;
        }
        return sum;
    }
}
