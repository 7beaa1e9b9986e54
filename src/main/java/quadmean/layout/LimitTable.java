package quadmean.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import quadmean.design.Design;
import quadmean.measure.PointGauge;
import quadmean.measure.Slope;
import quadmean.units.AngleScale;
import quadmean.units.DistanceTo;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/**
 * Limiting distances of one basal area factor by dbh and by the slope of the line to the tree.
 *
 * @param factor basal area factor (m²/ha)
 * @param to the part of the stem that distances reach
 * @param purpose what the factor chooses trees for
 * @param plotRadiusFactor horizontal limit over dbh (m per cm)
 * @param percents slopes of the columns (percent), level first
 * @param rows one for each dbh
 */
public record LimitTable(
        double factor, DistanceTo to, Purpose purpose, double plotRadiusFactor, List<Double> percents, List<Row> rows) {
    /** The steepest lines that a tape still follows; between them the next one up serves as a rough check. */
    private static final List<Double> PERCENTS = List.of(0.0, 10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0);

    private static final int US_FIRST = 4;
    private static final int US_LAST = 40;
    private static final int US_STEP = 1;
    private static final int METRIC_FIRST = 10;
    private static final int METRIC_LAST = 100;
    private static final int METRIC_STEP = 2;

    public LimitTable {
        percents = List.copyOf(percents);
        rows = List.copyOf(rows);
    }

    /** What trees are chosen for. */
    public enum Purpose {
        /** To be tallied. */
        TALLY,
        /** To be measured too, by the larger factor. */
        MEASURE
    }

    /**
     * A dbh and its limits.
     *
     * @param dbhCm dbh (cm)
     * @param limitsM distance along each slope of the table up to which the tree is in (m)
     */
    public record Row(double dbhCm, List<Double> limitsM) {
        public Row {
            limitsM = List.copyOf(limitsM);
        }
    }

    static LimitTable of(double factor, DistanceTo to, Purpose purpose, Design design) {
        PointGauge gauge = new PointGauge(factor);
        List<Slope> slopes =
                PERCENTS.stream().map(p -> Slope.of(AngleScale.PERCENT, p)).toList();
        List<Row> rows = new ArrayList<>();
        for (double dbh : diameters(design)) {
            rows.add(new Row(
                    dbh,
                    slopes.stream().map(s -> gauge.limitingDistance(dbh, to, s)).toList()));
        }
        return new LimitTable(factor, to, purpose, gauge.plotRadiusFactor(to), PERCENTS, rows);
    }

    /** Whole inches from 4 to 40, or every second centimetre from 10 to 100; from the smallest tallied dbh where that is stated. */
    private static List<Double> diameters(Design design) {
        boolean us = design.units() == UnitSystem.US;
        Unit unit = design.units().diameter();
        int step = us ? US_STEP : METRIC_STEP;
        double smallest = Unit.CENTIMETRE.convert(design.sizes().smallestCm(), unit);
        // to the step below, but for a hair that the way through centimetres may have cost
        int below = Math.max(step, (int) Math.floor(smallest / step + 1e-9) * step);
        int first = smallest > 0 ? below : us ? US_FIRST : METRIC_FIRST;
        int last = Math.max(us ? US_LAST : METRIC_LAST, first);
        return IntStream.iterate(first, i -> i <= last, i -> i + step)
                .mapToObj(i -> unit.convert(i, Unit.CENTIMETRE))
                .toList();
    }
}
