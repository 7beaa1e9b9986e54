package quadmean.field;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import quadmean.design.ColumnRole;
import quadmean.design.Design;
import quadmean.design.KindsSettings.StemMapFile;
import quadmean.model.MappedStem;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.StemMap;
import quadmean.units.Unit;

/** Reads a map of stems, CSV or workbook, one row a stem; a map with a bad row is refused, for it would have a gap. */
public final class StemMapReader {
    private static final Map<ColumnRole, String> WORDS =
            Map.of(StemMapFile.X, "x", StemMapFile.Y, "y", ColumnRole.DBH, "dbh");
    /** No tree is as thick (cm), from memory. */
    private static final double THICKEST = 1_200;

    private static final MathContext DIGITS = new MathContext(8);

    private final StemMapFile file;
    private final List<Problem> problems = new ArrayList<>();
    private final List<MappedStem> stems = new ArrayList<>();
    private final Map<MappedStem, Long> lines = new HashMap<>();

    private StemMapReader(StemMapFile file) {
        this.file = file;
    }

    /**
     * What came of reading a map.
     *
     * @param map the map; null if a problem refuses it
     * @param problems everything found
     */
    public record Reading(@Nullable StemMap map, List<Problem> problems) {
        public Reading {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads the map of a design.
     *
     * @throws IOException if the file is missing or cannot be read
     */
    public static Reading read(Design design, StemMapFile file) throws IOException {
        return new StemMapReader(file).read(design);
    }

    private Reading read(Design design) throws IOException {
        FileProblems log = new FileProblems(design::policy, file.table().name(), p -> problems.add(inWordsOfMaps(p)));
        TallyRows.forEach(file.table(), log, this::take);
        boolean refused = problems.stream().anyMatch(p -> p.policy() == Policy.REFUSE);
        return new Reading(refused ? null : map(), problems);
    }

    /** Columns are read under roles of tallies, which messages must not show. */
    private static Problem inWordsOfMaps(Problem p) {
        String detail = p.detail();
        for (Map.Entry<ColumnRole, String> word : WORDS.entrySet()) {
            detail = detail.replace(" for " + word.getKey().key(), " for " + word.getValue());
        }
        return new Problem(p.file(), p.row(), p.column(), p.value(), p.rule(), p.policy(), detail);
    }

    private void take(Row row) {
        if (row.position().isEmpty()) {
            String text = String.join(String.valueOf(row.file().separator()), row.fields());
            add(row, Rule.ROW_LENGTH, "", text, "the row has " + row.fields().size() + " fields");
            return;
        }
        int before = problems.size();
        double x = number(row, StemMapFile.X, Unit.METRE);
        double y = number(row, StemMapFile.Y, Unit.METRE);
        double dbh = number(row, ColumnRole.DBH, Unit.CENTIMETRE);
        if (!Double.isNaN(dbh) && !(dbh > 0 && dbh < THICKEST)) {
            add(
                    row,
                    ColumnRole.DBH,
                    row.text(ColumnRole.DBH) + " " + unit(row, ColumnRole.DBH).symbol() + " is no dbh of a tree");
        }
        checkInside(row, x, StemMapFile.X, 0);
        checkInside(row, y, StemMapFile.Y, 1);
        if (problems.size() == before) {
            keep(row, new MappedStem(x, y, dbh));
        }
    }

    private void keep(Row row, MappedStem stem) {
        Long before = lines.putIfAbsent(stem, row.line());
        if (before == null) {
            stems.add(stem);
        } else {
            String text = String.join(String.valueOf(row.file().separator()), row.fields());
            add(
                    row,
                    Rule.STEM_MAP_ROW,
                    "",
                    text,
                    "the stem stands in line " + before + " already, position and dbh alike");
        }
    }

    private void checkInside(Row row, double metres, ColumnRole role, int axis) {
        List<Double> corners = file.corners();
        if (corners.isEmpty() || Double.isNaN(metres)) {
            return;
        }
        double low = corners.get(axis);
        double high = corners.get(axis + 2);
        if (metres < low || metres > high) {
            Unit unit = unit(row, role);
            String limits = show(Unit.METRE.convert(low, unit)) + " to " + show(Unit.METRE.convert(high, unit));
            add(row, role, row.text(role) + " lies outside the corners, which go from " + limits + " " + unit.symbol());
        }
    }

    private static String show(double value) {
        BigDecimal cut = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        return cut.signum() == 0 ? "0" : cut.toPlainString();
    }

    /** The number of a column; NaN for what is none, which is then noted. */
    private double number(Row row, ColumnRole role, Unit inside) {
        String text = row.text(role);
        OptionalDouble number = Numbers.plain(text, row.file().decimal());
        if (number.isEmpty()) {
            String detail = text.isEmpty()
                    ? "the stem has no " + WORDS.get(role)
                    : "\"" + text + "\" is not a plain number with the decimal mark \""
                            + row.file().decimal() + "\"";
            add(row, role, detail);
            return Double.NaN;
        }
        return unit(row, role).convert(number.getAsDouble(), inside);
    }

    private static Unit unit(Row row, ColumnRole role) {
        return Objects.requireNonNull(
                Objects.requireNonNull(row.file().columns().get(role)).unit());
    }

    private void add(Row row, ColumnRole role, String detail) {
        add(row, Rule.STEM_MAP_ROW, row.column(role), row.text(role), detail);
    }

    private void add(Row row, Rule rule, String column, String value, String detail) {
        problems.add(new Problem(row.fileName(), row.line(), column, value, rule, Policy.REFUSE, detail));
    }

    private @Nullable StemMap map() {
        List<Double> c = file.corners().isEmpty() ? around() : file.corners();
        if (stems.isEmpty() || !(c.get(0) < c.get(2) && c.get(1) < c.get(3))) {
            String detail = stems.isEmpty() ? "the map has no stems" : "the stems stand on one line, which has no area";
            problems.add(new Problem(file.table().name(), 0, "", "", Rule.STEM_MAP, Policy.REFUSE, detail));
            return null;
        }
        return new StemMap(file.table().name(), c.get(0), c.get(1), c.get(2), c.get(3), stems);
    }

    /** The corners of the rectangle around the stems (m). */
    private List<Double> around() {
        return List.of(
                stems.stream().mapToDouble(MappedStem::xM).min().orElse(0),
                stems.stream().mapToDouble(MappedStem::yM).min().orElse(0),
                stems.stream().mapToDouble(MappedStem::xM).max().orElse(0),
                stems.stream().mapToDouble(MappedStem::yM).max().orElse(0));
    }
}
