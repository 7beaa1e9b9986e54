package quadmean.estimate;

import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import quadmean.model.PlotDesign;
import quadmean.stats.Moments;
import quadmean.units.Attribute;
import quadmean.units.BasalArea;

/** What a plot says per hectare: the sum over its trees of expansion factor times the tree's value. */
final class PlotValue {
    private PlotValue() {}

    /** The value of an attribute from the stems that pass a filter; a plot without any is a zero. */
    static ToDoubleFunction<SampledPlot> of(PlotDesign design, Attribute attribute, Predicate<Stem> filter) {
        return plot -> Moments.sum(plot.stems().stream()
                        .filter(filter)
                        .filter(stem -> stem.counts().contains(attribute))
                        .mapToDouble(stem ->
                                stem.count() * Expansion.treesPerHa(design, stem.dbhCm()) * value(attribute, stem))
                        .toArray())
                / plot.inside();
    }

    private static double value(Attribute attribute, Stem stem) {
        return switch (attribute) {
            case TREES -> 1;
            case BASAL_AREA -> BasalArea.ofTree(stem.dbhCm());
            case VOLUME -> stem.volumeM3();
            case QUADRATIC_MEAN_DIAMETER -> throw new IllegalArgumentException("a ratio has no value on a single plot");
        };
    }
}
