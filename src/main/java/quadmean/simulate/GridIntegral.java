package quadmean.simulate;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import quadmean.design.Design;
import quadmean.design.LayoutSettings.Extent;
import quadmean.estimate.Expansion;
import quadmean.model.MappedTree;
import quadmean.simulate.PlotTaker.Seen;
import quadmean.stats.Moments;
import quadmean.units.Attribute;
import quadmean.units.BasalArea;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/**
 * Expected value and variance of what one plot has of basal area per hectare, by integration over a fine grid of places: no chance is
 * in it.
 *
 * @param mean mean over all places (m²/ha)
 * @param variance variance over all places, within strata where plots are laid out in each
 * @param truth basal area that really stands there (m²/ha)
 * @param places places of the grid
 */
record GridIntegral(double mean, double variance, double truth, long places) {
    /** Places at the most. */
    private static final double MOST = 200_000;

    /** Plots of a design. */
    static GridIntegral of(PaperDesign paper, Forest forest) {
        return of(paper, forest, Math.sqrt(forest.box().getArea() / MOST));
    }

    /**
     * Plots of a design, anywhere on the tract or within strata; strata count by their area.
     *
     * @param stepM distance between places (m)
     */
    static GridIntegral of(PaperDesign paper, Forest forest, double stepM) {
        PlotTaker taker = PlotTaker.of(paper.design(), forest);
        double mean = 0;
        double variance = 0;
        long places = 0;
        List<Ground> grounds = paper.layout().extent() == Extent.TRACT
                ? List.of(forest.whole())
                : List.copyOf(forest.strata().values());
        for (int s = 0; s < grounds.size(); s++) {
            int stratum = paper.layout().extent() == Extent.TRACT ? -1 : s;
            double share = grounds.get(s).areaHa() / forest.areaHa();
            Moments moments = Moments.of(values(paper.design(), forest, taker, grounds.get(s), stratum, stepM));
            mean += share * moments.mean();
            variance += share * moments.variance();
            places += moments.n();
        }
        double[] stand = forest.trees().stream()
                .mapToDouble(t -> BasalArea.ofTree(t.dbhCm()))
                .toArray();
        return new GridIntegral(mean, variance, Moments.sum(stand) / forest.areaHa(), places);
    }

    private static double[] values(
            Design design, Forest forest, PlotTaker taker, Ground ground, int stratum, double stepM) {
        int columns = (int) Math.ceil(ground.box().getWidth() / stepM);
        int rows = (int) Math.ceil(ground.box().getHeight() / stepM);
        double across = ground.box().getWidth() / columns;
        double up = ground.box().getHeight() / rows;
        return IntStream.range(0, rows * columns)
                .parallel()
                .mapToDouble(i -> {
                    int row = i / columns;
                    double x = ground.box().getMinX() + (i % columns + 0.5) * across;
                    double y = ground.box().getMinY() + (row + 0.5) * up;
                    return ground.holds(x, y) ? value(design, forest, taker.at(x, y, ground, stratum)) : Double.NaN;
                })
                .filter(v -> !Double.isNaN(v))
                .toArray();
    }

    private static double value(Design design, Forest forest, List<Seen> seen) {
        double sum = 0;
        for (Seen s : seen) {
            MappedTree tree = forest.trees().get(s.tree());
            sum += s.times() * Expansion.treesPerHa(design.plot(), tree.dbhCm()) * BasalArea.ofTree(tree.dbhCm());
        }
        return sum;
    }

    /** The bias that plots have by where they may lie, in percent of the truth. */
    double biasPercent() {
        return 100 * (mean / truth - 1);
    }

    /** The same in a sentence, in a unit system. */
    String words(UnitSystem units) {
        Unit unit = Attribute.BASAL_AREA.unit(Basis.PER_AREA, units);
        return String.format(
                Locale.ROOT,
                "Without chance: over %,d places on a fine grid one plot has %s of basal area on average, and %s stand there: a bias"
                        + " of %+.2f %% by where plots lie and what is done at the boundary. The standard deviation between places is"
                        + " %s.",
                places,
                text(mean, unit),
                text(truth, unit),
                biasPercent(),
                text(Math.sqrt(variance), unit));
    }

    private static String text(double metric, Unit unit) {
        return Plain.of(Unit.SQUARE_METRES_PER_HECTARE.convert(metric, unit), 5) + " " + unit.label();
    }
}
