package quadmean.field;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quadmean.design.ColumnRole;
import quadmean.design.ColumnSpec;
import quadmean.design.TallyFile;
import quadmean.design.TallyFormat;
import quadmean.model.ListedStand;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;

/** Reads a list of stands: a CSV file with a column {@code design} and, if wanted, stand, group, curves, equations and crew. */
public final class StandList {
    private static final Set<String> KNOWN = Set.of("stand", "design", "group", "curves", "equations", "crew");

    private StandList() {}

    /**
     * The stands of a list, in its order.
     *
     * @param problems takes everything wrong with the list
     * @throws IOException if the file is missing or cannot be read
     */
    public static List<ListedStand> read(Path path, List<Problem> problems) throws IOException {
        Map<ColumnRole, ColumnSpec> columns = new EnumMap<>(ColumnRole.class);
        columns.put(ColumnRole.PLOT, new ColumnSpec("design", null, null));
        String name = String.valueOf(path.getFileName());
        TallyFile file = new TallyFile(path, name, TallyFormat.OPEN, columns);
        FileProblems log = new FileProblems(Rule::defaultPolicy, name, problems::add);
        List<ListedStand> stands = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        Set<String> names = new HashSet<>();
        Set<String> strange = new LinkedHashSet<>();
        new CsvRows(file, log).forEach(row -> {
            String design = row.text(ColumnRole.PLOT);
            row.names().stream().filter(n -> !KNOWN.contains(n)).forEach(strange::add);
            if (row.position().isEmpty()) {
                String detail = "the row has " + row.fields().size() + " fields";
                log.add(Rule.ROW_LENGTH, row.line(), "", String.join(",", row.fields()), detail);
            } else if (design.isEmpty()) {
                log.add(Rule.STAND_LIST, row.line(), "design", "", "the row names no design");
            } else if (!seen.add(design)) {
                log.add(Rule.STAND_LIST, row.line(), "design", design, design + " is listed before");
            } else if (!text(row, "stand").isEmpty() && !names.add(text(row, "stand"))) {
                String stand = text(row, "stand");
                log.add(Rule.STAND_LIST, row.line(), "stand", stand, "another stand is called " + stand);
            } else {
                stands.add(new ListedStand(
                        row.line(),
                        text(row, "stand"),
                        design,
                        text(row, "group"),
                        text(row, "curves"),
                        text(row, "equations"),
                        text(row, "crew")));
            }
        });
        strange.forEach(column -> problems.add(new Problem(
                name, 1, column, "", Rule.STAND_LIST, Policy.KEEP, "the column \"" + column + "\" is not used")));
        if (stands.isEmpty() && problems.isEmpty()) {
            log.add(Rule.STAND_LIST, 0, "design", "", "the list has no stands");
        }
        return stands;
    }

    private static String text(Row row, String column) {
        int at = row.names().indexOf(column);
        return at < 0 || at >= row.fields().size() ? "" : row.fields().get(at).strip();
    }
}
