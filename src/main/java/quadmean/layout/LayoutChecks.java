package quadmean.layout;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import quadmean.design.LayoutSettings;

/** Layouts that cannot be run, and plots that chance put on top of one another. */
final class LayoutChecks {
    /** Plots of a layout at the most, as for {@code plots} in the design. */
    private static final int MOST_PLOTS = 5000;

    /** Points of a lattice around the tract at the most: long thin cells have many where few plots fall. */
    private static final double MOST_POINTS = 1e6;

    private LayoutChecks() {}

    /** What keeps a layout from being drawn, in words; empty if nothing does. */
    static Optional<String> before(
            LayoutSettings settings, Tract tract, Map<String, Integer> asked, LengthText lengths) {
        int total = asked.values().stream().mapToInt(Integer::intValue).sum();
        if (total == 0 && settings.spacingM().isEmpty()) {
            return Optional.of("no number of plots is known, for none reaches the target; write plots or spacing");
        }
        Optional<String> large = clusterTooLarge(settings, tract, lengths);
        if (large.isPresent() || !settings.pattern().isGrid()) {
            return large;
        }
        double area =
                tract.parts().stream().mapToDouble(p -> p.shape().getArea()).sum();
        GridPattern grid = GridSize.of(settings, area, Math.max(1, total), 0, 1);
        double plots =
                area / grid.cell() * settings.cluster().map(c -> c.plots()).orElse(1);
        return plots > MOST_PLOTS || grid.points(tract.outline()) > MOST_POINTS
                ? Optional.of(String.format(
                        Locale.ROOT,
                        "plots %s apart on lines %s apart make about %.0f on this tract, and %d are the most; write a larger"
                                + " spacing",
                        lengths.of(grid.alongM(), 2),
                        lengths.of(grid.acrossM(), 2),
                        plots,
                        MOST_PLOTS))
                : Optional.empty();
    }

    /** A cluster whose plots cannot lie on the tract together. */
    private static Optional<String> clusterTooLarge(LayoutSettings settings, Tract tract, LengthText lengths) {
        Envelope whole = tract.outline().getEnvelopeInternal();
        double across = Math.hypot(whole.getWidth(), whole.getHeight());
        return settings.cluster()
                .map(LayoutSettings.Cluster::spacingM)
                .filter(spacing -> spacing > across)
                .map(spacing -> "plots of a cluster lie " + lengths.of(spacing, 0) + " apart, and the tract is "
                        + lengths.of(across, 0) + " from corner to corner: no two of them fit; write a smaller"
                        + " cluster_spacing");
    }

    /** Says how many pairs of plots overlap, if any: chance, or two grids that meet, may put them there. */
    static Optional<String> overlaps(List<LaidPlot> plots, double radiusM, LengthText lengths) {
        int pairs = 0;
        for (int i = 0; i < plots.size(); i++) {
            for (int k = 0; k < i; k++) {
                pairs += plots.get(i).at().distance(plots.get(k).at()) < 2 * radiusM ? 1 : 0;
            }
        }
        return pairs == 0
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "%d pair%s of plots lie%s nearer to each other than the %s that a plot is across: both are run where they"
                                + " fell, and a tree on both counts on each.",
                        pairs,
                        pairs == 1 ? "" : "s",
                        pairs == 1 ? "s" : "",
                        lengths.of(2 * radiusM, 1)));
    }
}
