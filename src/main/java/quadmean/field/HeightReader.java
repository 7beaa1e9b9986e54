package quadmean.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import quadmean.design.ColumnRole;
import quadmean.design.ColumnSpec;
import quadmean.design.Design;
import quadmean.design.ReadingSettings;
import quadmean.design.TallyFile;
import quadmean.measure.AngleError;
import quadmean.measure.BestDistance;
import quadmean.measure.CommonPractice;
import quadmean.measure.HeightErrors;
import quadmean.measure.ReadingCheck;
import quadmean.measure.TreeReadings;
import quadmean.model.FieldHeight;
import quadmean.model.HeightSource;
import quadmean.model.Rule;
import quadmean.units.Unit;

/** The height of a row: as written, or worked out from its readings. */
final class HeightReader {
    private final SightingReader sightings;
    private final HeightErrors errors;
    private final double eyeHeightM;
    private final Unit length;
    private final double breastHeightM;
    private final String breastHeight;

    HeightReader(Design design) {
        this.sightings = new SightingReader(new Corrections(design));
        Unit unit = design.units().length();
        ReadingSettings usual = design.height().readings();
        this.length = unit;
        this.eyeHeightM = usual.eyeHeightM();
        this.errors = new HeightErrors(
                AngleError.ofAngle(Math.toRadians(usual.angleSdDegrees())),
                usual.distanceSdM(),
                Math.toRadians(usual.slopeSdDegrees()));
        this.breastHeightM = unit.convert(design.height().breastHeight(), Unit.METRE);
        this.breastHeight =
                String.format(Locale.ROOT, "%.2f %s", design.height().breastHeight(), unit.symbol());
    }

    /** The field height, or null if there is none to use. */
    @Nullable
    FieldHeight read(Row row, RowProblems problems) {
        OptionalDouble written = Numbers.read(row, ColumnRole.HEIGHT, problems);
        if (written.isPresent()) {
            FieldHeight height = measured(row.file(), written.getAsDouble(), row.text(ColumnRole.HEIGHT));
            if (height == null) {
                problems.add(
                        Rule.HEIGHT_IMPOSSIBLE,
                        ColumnRole.HEIGHT,
                        row.text(ColumnRole.HEIGHT) + " " + symbol(row, ColumnRole.HEIGHT)
                                + " is no tree height (breast height is " + breastHeight + ")");
            }
            return height;
        }
        return fromReadings(row, problems);
    }

    /**
     * A height that was measured; null if no tree has it.
     *
     * @param written the number in the column of heights
     * @param text what stands there
     */
    @Nullable
    FieldHeight measured(TallyFile file, double written, String text) {
        ColumnSpec spec = file.columns().get(ColumnRole.HEIGHT);
        Unit unit = spec == null || spec.unit() == null ? Unit.METRE : spec.unit();
        double metres = unit.convert(written, Unit.METRE);
        return isPossible(metres)
                ? new FieldHeight(metres, HeightSource.MEASURED, spec == null ? "" : spec.name(), text)
                : null;
    }

    private @Nullable FieldHeight fromReadings(Row row, RowProblems problems) {
        String text = SightingReader.text(row);
        if (text.isEmpty()) {
            return null;
        }
        Optional<TreeReadings> readings;
        try {
            readings = sightings.read(row, problems);
        } catch (IllegalArgumentException e) {
            unusable(row, problems, text, e.getMessage() + ": " + text);
            return null;
        }
        if (readings.isEmpty()) {
            return null;
        }
        double metres = readings.get().meanHeight();
        if (!isPossible(metres)) {
            String detail = String.format(
                    Locale.ROOT, "%s gives a height of %.1f m; readings below the eye carry a minus", text, metres);
            unusable(row, problems, text, detail);
            return null;
        }
        return new FieldHeight(
                metres,
                HeightSource.READING,
                row.column(ColumnRole.TOP),
                text,
                readings.get().meanSd(errors),
                remarks(readings.get()),
                readings.get().working());
    }

    /** What is doubtful in the readings, and from where they would be best. */
    private List<String> remarks(TreeReadings readings) {
        List<String> remarks = new ArrayList<>();
        ReadingCheck.flags(readings, eyeHeightM).forEach(f -> remarks.add(f.code() + ": " + f.sentence()));
        if (!remarks.isEmpty()) {
            BestDistance.of(readings.sightings().get(0), errors)
                    .ifPresent(best -> remarks.add(String.format(
                            Locale.ROOT,
                            "best distance about %.0f %s",
                            Unit.METRE.convert(best.distance(), length),
                            length.symbol())));
        }
        return remarks;
    }

    private static void unusable(Row row, RowProblems problems, String value, String detail) {
        problems.add(Rule.READING_UNUSABLE, row.column(ColumnRole.TOP), value, detail);
    }

    private boolean isPossible(double metres) {
        return metres > breastHeightM && metres < CommonPractice.TALLEST_TREE;
    }

    private static String symbol(Row row, ColumnRole role) {
        ColumnSpec spec = row.file().columns().get(role);
        return spec == null || spec.unit() == null ? "" : spec.unit().symbol();
    }
}
