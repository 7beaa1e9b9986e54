package quadmean.field;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import org.jspecify.annotations.Nullable;
import quadmean.design.Design;
import quadmean.design.Nearest;
import quadmean.model.Estimator;
import quadmean.model.PlotFacts;
import quadmean.model.PlotFacts.Phase;
import quadmean.model.PlotFacts.Place;
import quadmean.model.Position;
import quadmean.model.Rule;
import quadmean.model.VarianceForm;
import quadmean.units.Unit;

/** Reads what a row of the list of plots says of its plot, and holds it to what the estimator needs. */
final class PlotFactReader {
    private final Design design;
    private final Estimator estimator;
    private final boolean isOfGrid;
    private final FileProblems problems;
    private final Map<String, String> plotAt = new HashMap<>();
    private final Map<String, Double> sizes = new HashMap<>();

    PlotFactReader(Design design, FileProblems problems) {
        this.design = design;
        this.problems = problems;
        this.estimator = design.estimation().estimation().estimator();
        VarianceForm variance = design.estimation().estimation().variance();
        this.isOfGrid = variance != null && variance.isOfGrid();
    }

    PlotFacts read(String plot, String stratum, Row row) {
        double auxiliary =
                number(row, "auxiliary", estimator.needsAuxiliary(), this::isAuxiliary, "0 or more for a ratio");
        String cluster = text(row, "cluster", estimator.isClustered());
        double size = number(row, "cluster_size", estimator == Estimator.TWO_STAGE, v -> v > 0, "a number above 0");
        checkSize(row, stratum, cluster, size);
        return new PlotFacts(
                phase(row),
                auxiliary,
                cluster,
                size,
                text(row, "class", estimator.needsGroup()),
                number(row, "chance", estimator.needsChance(), v -> v > 0 && v <= 1, "above 0 and at most 1"),
                draws(row),
                place(plot, stratum, row),
                design.units()
                        .length()
                        .convert(number(row, "strip_length", false, v -> v > 0, "a length above 0"), Unit.METRE));
    }

    /** The subset of the plan that the plot belongs to; empty where none is said. */
    String subset(Row row) {
        return text(row, "subset", false);
    }

    /** Where a plot is; null if the list does not say. */
    @Nullable
    Position position(Row row) {
        double longitude = degrees(row, "longitude", "latitude", 180);
        double latitude = degrees(row, "latitude", "longitude", 90);
        return Double.isNaN(longitude) || Double.isNaN(latitude) ? null : new Position(longitude, latitude);
    }

    private double degrees(Row row, String column, String other, double most) {
        String range = String.format(
                Locale.ROOT,
                "within -%1$.0f and %1$.0f degrees with decimals; are longitude and latitude swapped?",
                most);
        double value = number(row, column, false, v -> Math.abs(v) <= most, range);
        if (text(row, column, false).isEmpty() && !text(row, other, false).isEmpty()) {
            unusable(row, column, "a position takes both longitude and latitude; leave both empty if it is not known");
        }
        return value;
    }

    private boolean isAuxiliary(double value) {
        boolean ratio = estimator == Estimator.RATIO || estimator == Estimator.DOUBLE_RATIO;
        return !ratio || value >= 0;
    }

    private Phase phase(Row row) {
        return switch (text(row, "phase", estimator.isDouble())) {
            case "" -> Phase.NOT_SAID;
            case "1" -> Phase.FIRST_ONLY;
            case "2" -> Phase.BOTH;
            default -> {
                unusable(row, "phase", "phase is 1 for a plot of the first phase alone, 2 for one that is visited too");
                yield Phase.NOT_SAID;
            }
        };
    }

    private int draws(Row row) {
        double draws =
                number(row, "draws", false, v -> v >= 1 && v <= 1000 && v == Math.rint(v), "a whole number from 1");
        if (draws > 1 && estimator != Estimator.HANSEN_HURWITZ) {
            unusable(row, "draws", "a plot is drawn more than once with estimator = \"hansen_hurwitz\" only");
        }
        return Double.isNaN(draws) ? 1 : (int) draws;
    }

    private @Nullable Place place(String plot, String stratum, Row row) {
        double r = number(row, "row", isOfGrid, PlotFactReader::isGridNumber, "a whole number");
        double c = number(row, "column", isOfGrid, PlotFactReader::isGridNumber, "a whole number");
        if (Double.isNaN(r) || Double.isNaN(c)) {
            return null;
        }
        Place place = new Place((int) r, (int) c);
        String other = plotAt.putIfAbsent(stratum + "\n" + place, plot);
        if (other != null) {
            unusable(row, "row", "plot " + other + " stands at the same row and column");
        }
        return place;
    }

    private static boolean isGridNumber(double v) {
        return v == Math.rint(v) && Math.abs(v) <= 1e6;
    }

    private void checkSize(Row row, String stratum, String cluster, double size) {
        Double before =
                cluster.isEmpty() || Double.isNaN(size) ? null : sizes.putIfAbsent(stratum + "\n" + cluster, size);
        if (before != null && before != size) {
            unusable(row, "cluster_size", "cluster " + cluster + " had another size before");
        }
    }

    private double number(Row row, String column, boolean isNeeded, DoublePredicate range, String words) {
        String text = text(row, column, isNeeded);
        if (text.isEmpty()) {
            return Double.NaN;
        }
        OptionalDouble number = Numbers.plain(text, '.');
        if (number.isEmpty()) {
            unusable(row, column, "\"" + text + "\" is not a plain number with the decimal mark \".\"");
            return Double.NaN;
        }
        if (!range.test(number.getAsDouble())) {
            unusable(row, column, column + " must be " + words);
            return Double.NaN;
        }
        return number.getAsDouble();
    }

    /** The text of a column that the list may have; one that the estimator needs is missed. */
    private String text(Row row, String column, boolean isNeeded) {
        int at = row.names().indexOf(column);
        String text =
                at < 0 || at >= row.fields().size() ? "" : row.fields().get(at).strip();
        if (text.isEmpty() && isNeeded) {
            String hint = at >= 0
                    ? ""
                    : Nearest.to(column, row.names())
                            .map(n -> "; there is no such column; did you mean \"" + n + "\"?")
                            .orElse("; there is no such column; the header has " + String.join(", ", row.names()));
            unusable(row, column, "estimator = \"" + estimator.id() + "\" needs " + column + " of each plot" + hint);
        }
        return text;
    }

    private void unusable(Row row, String column, String detail) {
        int at = row.names().indexOf(column);
        String value =
                at < 0 || at >= row.fields().size() ? "" : row.fields().get(at).strip();
        problems.add(Rule.PLOT_FACT_UNUSABLE, row.line(), column, value, detail);
    }
}
