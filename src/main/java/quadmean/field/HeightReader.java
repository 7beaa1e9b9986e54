package quadmean.field;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import quadmean.design.ColumnRole;
import quadmean.design.ColumnSpec;
import quadmean.design.Design;
import quadmean.measure.TreeHeight;
import quadmean.model.FieldHeight;
import quadmean.model.HeightSource;
import quadmean.model.Rule;
import quadmean.units.Unit;

/** The height of a row: as written, or worked out from its readings. */
final class HeightReader {
    /** The tallest tree known is near 116 m (from memory). */
    private static final double TALLEST_M = 130;

    private final double breastHeightM;
    private final String breastHeight;

    HeightReader(Design design) {
        Unit unit = design.units().length();
        this.breastHeightM = unit.convert(design.height().breastHeight(), Unit.METRE);
        this.breastHeight =
                String.format(Locale.ROOT, "%.2f %s", design.height().breastHeight(), unit.symbol());
    }

    /** The field height, or null if there is none to use. */
    @Nullable
    FieldHeight read(Row row, RowProblems problems) {
        OptionalDouble written = Numbers.read(row, ColumnRole.HEIGHT, problems);
        if (written.isPresent()) {
            double metres = metres(row, ColumnRole.HEIGHT, written.getAsDouble());
            if (!isPossible(metres)) {
                problems.add(
                        Rule.HEIGHT_IMPOSSIBLE,
                        ColumnRole.HEIGHT,
                        row.text(ColumnRole.HEIGHT) + " " + symbol(row, ColumnRole.HEIGHT)
                                + " is no tree height (breast height is " + breastHeight + ")");
                return null;
            }
            return new FieldHeight(
                    metres, HeightSource.MEASURED, row.column(ColumnRole.HEIGHT), row.text(ColumnRole.HEIGHT));
        }
        return fromReadings(row, problems);
    }

    private @Nullable FieldHeight fromReadings(Row row, RowProblems problems) {
        List<ColumnRole> roles = List.of(ColumnRole.TOP, ColumnRole.BASE, ColumnRole.DISTANCE);
        if (roles.stream().allMatch(r -> row.text(r).isEmpty())) {
            return null;
        }
        OptionalDouble top = Numbers.read(row, ColumnRole.TOP, problems);
        OptionalDouble base = Numbers.read(row, ColumnRole.BASE, problems);
        OptionalDouble distance = Numbers.read(row, ColumnRole.DISTANCE, problems);
        String text = "top " + row.text(ColumnRole.TOP) + ", base " + row.text(ColumnRole.BASE) + ", distance "
                + row.text(ColumnRole.DISTANCE);
        if (top.isEmpty() || base.isEmpty() || distance.isEmpty()) {
            boolean blank = roles.stream().anyMatch(r -> row.text(r).isEmpty());
            if (blank) {
                unusable(row, problems, text, "a reading is missing: " + text);
            }
            return null;
        }
        double metres;
        try {
            metres = height(row, top.getAsDouble(), base.getAsDouble(), distance.getAsDouble());
        } catch (IllegalArgumentException e) {
            unusable(row, problems, text, e.getMessage() + ": " + text);
            return null;
        }
        if (!isPossible(metres)) {
            unusable(
                    row,
                    problems,
                    text,
                    String.format(
                            Locale.ROOT,
                            "%s gives a height of %.1f m; readings below the eye carry a minus",
                            text,
                            metres));
            return null;
        }
        return new FieldHeight(metres, HeightSource.READING, row.column(ColumnRole.TOP), text);
    }

    private double height(Row row, double top, double base, double distance) {
        ColumnSpec topSpec = spec(row, ColumnRole.TOP);
        ColumnSpec baseSpec = spec(row, ColumnRole.BASE);
        if (topSpec.scale() == null || topSpec.scale() != baseSpec.scale()) {
            throw new IllegalArgumentException("top and base must be read on the same scale");
        }
        return TreeHeight.fromReadings(topSpec.scale(), top, base, metres(row, ColumnRole.DISTANCE, distance));
    }

    private static void unusable(Row row, RowProblems problems, String value, String detail) {
        problems.add(Rule.READING_UNUSABLE, row.column(ColumnRole.TOP), value, detail);
    }

    private boolean isPossible(double metres) {
        return metres > breastHeightM && metres < TALLEST_M;
    }

    private static double metres(Row row, ColumnRole role, double value) {
        Unit unit = spec(row, role).unit();
        return (unit == null ? Unit.METRE : unit).convert(value, Unit.METRE);
    }

    private static String symbol(Row row, ColumnRole role) {
        Unit unit = spec(row, role).unit();
        return unit == null ? "" : unit.symbol();
    }

    private static ColumnSpec spec(Row row, ColumnRole role) {
        ColumnSpec spec = row.file().columns().get(role);
        if (spec == null) {
            throw new IllegalStateException("the tally has no column for " + role.key());
        }
        return spec;
    }
}
