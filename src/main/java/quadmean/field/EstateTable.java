package quadmean.field;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import quadmean.design.ColumnRole;
import quadmean.design.ColumnSpec;
import quadmean.design.Design;
import quadmean.design.EstateSettings;
import quadmean.design.EstateSettings.StandColumn;
import quadmean.design.TallyFile;
import quadmean.design.TallyFormat;
import quadmean.model.EstateStand;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.units.Unit;

/** Reads the table of stands of an estate: a CSV file with a row for each stand. */
public final class EstateTable {
    private final EstateSettings settings;
    private final FileProblems problems;
    private final List<EstateStand> stands = new ArrayList<>();
    private final Map<String, Long> lines = new HashMap<>();
    private final Set<StandColumn> missed = EnumSet.noneOf(StandColumn.class);

    private EstateTable(EstateSettings settings, FileProblems problems) {
        this.settings = settings;
        this.problems = problems;
    }

    /**
     * The stands in the order of the table.
     *
     * @param problems takes everything wrong with the table
     * @throws IOException if the file is missing or cannot be read
     */
    public static List<EstateStand> read(Design design, EstateSettings settings, Consumer<Problem> problems)
            throws IOException {
        String name = String.valueOf(settings.stands().getFileName());
        FileProblems log = new FileProblems(design::policy, name, problems);
        EstateTable table = new EstateTable(settings, log);
        Map<ColumnRole, ColumnSpec> columns = new EnumMap<>(ColumnRole.class);
        String stand = settings.columns().getOrDefault(StandColumn.STAND, "stand");
        columns.put(ColumnRole.STAND, new ColumnSpec(stand, null, null));
        // one number is taken for a plain one, so that the decimal mark of the file shows
        String area = settings.columns().getOrDefault(StandColumn.AREA, "area");
        columns.put(ColumnRole.COUNT, new ColumnSpec(area, null, null));
        new CsvRows(new TallyFile(settings.stands(), name, TallyFormat.OPEN, columns), log).forEach(table::row);
        if (table.stands.isEmpty() && table.lines.isEmpty()) {
            log.add(Rule.STAND_TABLE, 0, stand, "", "the table has no stands that can be used");
        }
        return table.stands;
    }

    private void row(Row row) {
        checkColumns(row.names());
        if (row.position().isEmpty()) {
            String whole = String.join(String.valueOf(row.file().separator()), row.fields());
            problems.add(
                    Rule.ROW_LENGTH,
                    row.line(),
                    "",
                    whole,
                    "the row has " + row.fields().size() + " fields");
            return;
        }
        String code = row.text(ColumnRole.STAND);
        Long before = lines.putIfAbsent(code, row.line());
        if (code.isEmpty()) {
            add(row, ColumnRole.STAND, "the row names no stand");
        } else if (before != null) {
            add(row, ColumnRole.STAND, "stand " + code + " stands on line " + before + " already");
        } else {
            String written = row.text(ColumnRole.COUNT);
            OptionalDouble area = Numbers.plain(written, row.file().decimal());
            if (area.isEmpty() || !(area.getAsDouble() > 0)) {
                add(row, ColumnRole.COUNT, "\"" + written + "\" is no area above zero");
                return;
            }
            stands.add(new EstateStand(
                    code,
                    settings.areaUnit().convert(area.getAsDouble(), Unit.HECTARE),
                    text(row, StandColumn.REGION),
                    text(row, StandColumn.STRATUM)));
        }
    }

    private void add(Row row, ColumnRole role, String detail) {
        problems.add(Rule.STAND_TABLE, row.line(), row.column(role), row.text(role), detail);
    }

    private String text(Row row, StandColumn column) {
        String name = settings.columns().get(column);
        if (name == null) {
            return "";
        }
        int at = row.names().indexOf(name);
        return at < 0 ? "" : row.fields().get(at).strip();
    }

    /** Each column that may be left out, but is named, is there once. */
    private void checkColumns(List<String> header) {
        for (StandColumn column : List.of(StandColumn.REGION, StandColumn.STRATUM)) {
            String name = settings.columns().get(column);
            long times = header.stream().filter(h -> h.equals(name)).count();
            if (name != null && times != 1 && missed.add(column)) {
                String what = times == 0
                        ? "no column \"" + name + "\" for " + column.key() + "; the header has "
                                + String.join(", ", header)
                        : "the header has \"" + name + "\" twice";
                problems.add(Rule.COLUMN_MISSING, 1, name, "", what);
            }
        }
    }
}
