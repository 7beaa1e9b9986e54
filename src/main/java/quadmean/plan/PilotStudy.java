package quadmean.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quadmean.design.Design;
import quadmean.design.StratumEntry;
import quadmean.measure.FixedPlot;
import quadmean.model.Plot;
import quadmean.model.PlotDesign;
import quadmean.model.Tree;
import quadmean.stats.Moments;
import quadmean.units.Attribute;
import quadmean.units.DistanceTo;

/**
 * Tries kinds of plot out inside the plots of a pilot whose trees have their distance from the centre: each kind takes the
 * trees within its own limit. A kind that reaches farther than the pilot's plots cannot be tried. What a tree counts for at the
 * boundary of the tract is left out.
 */
final class PilotStudy {
    /** Sizes that went through units come back a hair off. */
    private static final double ROUNDING = 1 - 1e-12;

    private final Design design;
    private final Attribute attribute;
    private final List<Plot> plots;
    private final DistanceTo to;

    private PilotStudy(Design design, Attribute attribute, List<Plot> plots) {
        this.design = design;
        this.attribute = attribute;
        this.plots = plots;
        DistanceTo limitTo = design.plotRules().limitTo();
        this.to = limitTo == null ? DistanceTo.CENTRE : limitTo;
    }

    /** A study of a pilot; empty where a tree has no distance, or no tree has. */
    static Optional<PilotStudy> of(Design design, Attribute attribute, List<Plot> plots) {
        boolean measured = plots.stream().anyMatch(p -> !p.trees().isEmpty()) && withoutDistance(plots) == 0;
        return measured ? Optional.of(new PilotStudy(design, attribute, plots)) : Optional.empty();
    }

    /** Rows of trees without a distance or without a dbh. */
    static long withoutDistance(List<Plot> plots) {
        return plots.stream()
                .mapToLong(p -> p.counted().size()
                        + p.trees().stream()
                                .filter(t -> t.detail().distanceM().isEmpty())
                                .count())
                .sum();
    }

    int plots() {
        return plots.size();
    }

    /** Coefficient of variation within strata (percent); NaN for a kind that the pilot cannot show. */
    double cvPercent(PlotDesign kind) {
        if (!isInside(kind)) {
            return Double.NaN;
        }
        List<StratumOutlook> found = new ArrayList<>();
        for (StratumEntry entry : design.strata()) {
            String code = entry.stratum().code();
            double[] values = plots.stream()
                    .filter(p -> p.stratum().equals(code))
                    .mapToDouble(p -> value(p, kind))
                    .toArray();
            Moments moments = Moments.of(values);
            double cv = moments.mean() == 0 ? 0 : 100 * moments.sd() / moments.mean();
            found.add(new StratumOutlook(code, entry.stratum().areaHa(), moments.mean(), cv));
        }
        return KindComparer.pooledCvPercent(found);
    }

    /** Whether the pilot has every tree that the kind would have at the same centres. */
    private boolean isInside(PlotDesign kind) {
        PlotDesign own = design.plot();
        if (own instanceof PlotDesign.Point point) {
            return kind instanceof PlotDesign.Point other
                    && other.basalAreaFactor() >= point.basalAreaFactor() * ROUNDING;
        }
        double thickest = plots.stream()
                .flatMap(p -> p.trees().stream())
                .mapToDouble(Tree::dbhCm)
                .max()
                .orElse(0);
        return own instanceof PlotDesign.Fixed fixed
                && InTree.limitM(kind, thickest, to) * ROUNDING
                        <= FixedPlot.ofArea(fixed.areaHa()).radius();
    }

    private double value(Plot plot, PlotDesign kind) {
        return plot.trees().stream()
                .filter(t -> design.counting().counts(attribute, t.detail().status(), t.dbhCm()))
                .filter(t -> t.detail().distanceM().orElse(Double.NaN) <= InTree.limitM(kind, t.dbhCm(), to))
                .mapToDouble(t -> t.detail().count() * InTree.worth(kind, t.dbhCm(), attribute))
                .sum();
    }
}
