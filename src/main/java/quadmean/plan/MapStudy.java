package quadmean.plan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import quadmean.model.MappedStem;
import quadmean.model.PlotDesign;
import quadmean.model.StemMap;
import quadmean.stats.Moments;
import quadmean.units.Attribute;
import quadmean.units.BasalArea;
import quadmean.units.DistanceTo;

/**
 * Tries kinds of plot out on a map of stems: each at the same places, the middles of a grid of equal cells that keeps off
 * the edge of the map as far as the largest plot reaches, so that no plot is cut.
 */
public final class MapStudy {
    /** Places along each side of the map. */
    static final int SIDE = 100;

    private final StemMap map;
    private final Attribute attribute;
    private final double reachM;

    private MapStudy(StemMap map, Attribute attribute, double reachM) {
        this.map = map;
        this.attribute = attribute;
        this.reachM = reachM;
    }

    /**
     * What plots of a kind show.
     *
     * @param cvPercent coefficient of variation between places (percent); NaN where no plot has a tree
     * @param treesPerPlot mean number of trees on a plot
     * @param room plots of this kind that have room on the map: its area over the plot's
     */
    public record Finding(double cvPercent, double treesPerPlot, double room) {}

    /**
     * A study of some kinds.
     *
     * @param attribute trees or basal area
     * @param plots fixed plots and points
     */
    static MapStudy of(StemMap map, Attribute attribute, List<PlotDesign> plots) {
        return new MapStudy(map, attribute, reach(map, plots));
    }

    /** What is wrong with a map on which the largest plot has no room, if it has none. */
    public static Optional<String> fault(StemMap map, List<PlotDesign> plots) {
        double reach = reach(map, plots);
        double side = Math.min(map.width(), map.length());
        return side > 2 * reach
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "the map is %.1f m by %.1f m, and the largest plot compared reaches %.1f m to each side of its"
                                + " centre",
                        map.width(),
                        map.length(),
                        reach));
    }

    private static double reach(StemMap map, List<PlotDesign> plots) {
        double thickest =
                map.stems().stream().mapToDouble(MappedStem::dbhCm).max().orElse(0);
        return plots.stream()
                .mapToDouble(p -> InTree.limitM(p, thickest, DistanceTo.CENTRE))
                .max()
                .orElse(0);
    }

    /** How far the places keep off the edge (m). */
    public double reachM() {
        return reachM;
    }

    /** Number of places. */
    public int places() {
        return SIDE * SIDE;
    }

    Finding of(PlotDesign plot) {
        double[] values = new double[places()];
        double[] counts = new double[places()];
        map.stems().forEach(s -> spread(s, plot, values, counts));
        Moments moments = Moments.of(values);
        double trees = Moments.of(counts).mean();
        double room = map.areaHa() / PlotSizeRule.areaHa(plot, meanTreeM2());
        return new Finding(moments.mean() > 0 ? 100 * moments.sd() / moments.mean() : Double.NaN, trees, room);
    }

    /** Adds a stem to all places from which it is in. */
    private void spread(MappedStem stem, PlotDesign plot, double[] values, double[] counts) {
        double limit = InTree.limitM(plot, stem.dbhCm(), DistanceTo.CENTRE);
        double worth = InTree.worth(plot, stem.dbhCm(), attribute);
        double stepX = (map.width() - 2 * reachM) / SIDE;
        double stepY = (map.length() - 2 * reachM) / SIDE;
        double fromX = stem.xM() - map.left() - reachM;
        double fromY = stem.yM() - map.bottom() - reachM;
        for (int i = first(fromX - limit, stepX); i < SIDE && (i + 0.5) * stepX <= fromX + limit; i++) {
            double dx = (i + 0.5) * stepX - fromX;
            for (int j = first(fromY - limit, stepY); j < SIDE && (j + 0.5) * stepY <= fromY + limit; j++) {
                double dy = (j + 0.5) * stepY - fromY;
                if (dx * dx + dy * dy <= limit * limit) {
                    values[i * SIDE + j] += worth;
                    counts[i * SIDE + j]++;
                }
            }
        }
    }

    /** The first cell whose middle can lie at a distance or beyond. */
    private static int first(double from, double step) {
        return Math.max(0, (int) Math.floor(from / step - 0.5));
    }

    private double meanTreeM2() {
        return map.stems().stream()
                .mapToDouble(s -> BasalArea.ofTree(s.dbhCm()))
                .average()
                .orElse(Double.NaN);
    }
}
