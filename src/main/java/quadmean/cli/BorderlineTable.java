package quadmean.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quadmean.measure.PointGauge;
import quadmean.measure.Slope;
import quadmean.units.DistanceTo;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Tables for the pocket. */
final class BorderlineTable {
    private static final double[] US_FACTORS = {5, 10, 15, 20, 25, 30, 40, 50, 60};
    private static final double[] METRIC_FACTORS = {1, 2, 3, 4, 5, 6, 8, 9, 10};
    private static final int MOST_ROWS = 500;

    private BorderlineTable() {}

    /**
     * The diameters of a table.
     *
     * @param system unit system of table and diameters
     * @param from first dbh
     * @param to last dbh
     * @param step from one to the next
     */
    record Range(UnitSystem system, double from, double to, double step) {
        Range {
            if (!(from > 0 && to >= from && step > 0 && (to - from) / step < MOST_ROWS)) {
                throw new IllegalArgumentException(
                        "a table needs a first dbh above zero, a last one not below it, and at" + " most " + MOST_ROWS
                                + " steps, got " + from + " to " + to + " by " + step);
            }
        }

        static Range of(UnitSystem system, @Nullable Double from, @Nullable Double to, @Nullable Double step) {
            boolean us = system == UnitSystem.US;
            return new Range(
                    system,
                    from == null ? (us ? 4 : 10) : from,
                    to == null ? (us ? 40 : 100) : to,
                    step == null ? (us ? 1 : 2) : step);
        }

        int rows() {
            return (int) Math.floor((to - from) / step + 1e-9) + 1;
        }
    }

    /** Plot radius factors and angles of the common basal area factors. */
    static List<String> factors(UnitSystem system) {
        List<String> lines = new ArrayList<>();
        String unit = system.length().symbol() + "/" + system.diameter().symbol();
        lines.add("Plot radius factors (" + unit + "): horizontal limit = factor × dbh");
        lines.add(row(system.basalAreaFactor().label(), "to centre", "to face", "angle"));
        for (double factor : system == UnitSystem.US ? US_FACTORS : METRIC_FACTORS) {
            PointGauge gauge = new PointGauge(system.basalAreaFactor().convert(factor, Unit.SQUARE_METRES_PER_HECTARE));
            lines.add(row(
                    Figures.plain(factor),
                    factor(gauge, DistanceTo.CENTRE, system),
                    factor(gauge, DistanceTo.FACE, system),
                    Figures.number(60 * Math.toDegrees(gauge.angle()), 2) + "'"));
        }
        return lines;
    }

    /** Limiting distances by dbh. */
    static List<String> limits(PointGauge gauge, Slope line, Range range) {
        UnitSystem system = range.system();
        List<String> lines = new ArrayList<>();
        double factor = Unit.SQUARE_METRES_PER_HECTARE.convert(gauge.factor(), system.basalAreaFactor());
        lines.add("Limiting distances (" + system.length().symbol() + "), basal area factor "
                + Figures.number(factor, 2) + " " + system.basalAreaFactor().label() + ", "
                + (line.ratio() == 0 ? "horizontal" : "along a slope of " + Figures.slope(line) + " to the tree"));
        lines.add(row("dbh " + system.diameter().symbol(), "to centre", "to face", ""));
        for (int i = 0; i < range.rows(); i++) {
            double dbh = range.from() + i * range.step();
            double cm = system.diameter().convert(dbh, Unit.CENTIMETRE);
            lines.add(row(
                    Figures.number(dbh, 1),
                    limit(gauge.limitingDistance(cm, DistanceTo.CENTRE, line), system),
                    limit(gauge.limitingDistance(cm, DistanceTo.FACE, line), system),
                    ""));
        }
        return lines;
    }

    private static String factor(PointGauge gauge, DistanceTo to, UnitSystem system) {
        double metresPerUnit = gauge.plotRadiusFactor(to) * system.diameter().convert(1, Unit.CENTIMETRE);
        return Figures.number(Unit.METRE.convert(metresPerUnit, system.length()), 4);
    }

    private static String limit(double metres, UnitSystem system) {
        return Figures.number(Unit.METRE.convert(metres, system.length()), system == UnitSystem.US ? 2 : 3);
    }

    private static String row(String first, String second, String third, String fourth) {
        return String.format(Locale.ROOT, "%8s %10s %10s %10s", first, second, third, fourth)
                .stripTrailing();
    }
}
