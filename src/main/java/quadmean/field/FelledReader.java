package quadmean.field;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import quadmean.design.ColumnRole;
import quadmean.design.ColumnSpec;
import quadmean.design.TallyFile;
import quadmean.design.TallyFormat;
import quadmean.model.FelledData;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.RowCount;
import quadmean.model.Rule;
import quadmean.units.Unit;

/** Reads a table of felled trees, CSV or workbook, one row a tree, and holds each row to the rules. */
public final class FelledReader {
    /** A volume has no role in a tally; it is a plain number like a count, and its unit is known beforehand. */
    static final ColumnRole VOLUME = ColumnRole.COUNT;

    private static final Map<FelledOptions.Measure, ColumnRole> ROLES = Map.of(
            FelledOptions.Measure.TREE, ColumnRole.TREE,
            FelledOptions.Measure.SPECIES, ColumnRole.SPECIES,
            FelledOptions.Measure.DBH, ColumnRole.DBH,
            FelledOptions.Measure.HEIGHT, ColumnRole.HEIGHT,
            FelledOptions.Measure.VOLUME, VOLUME);

    private FelledReader() {}

    /**
     * Reads a table.
     *
     * @return the trees, the account of rows and every problem; {@link FelledData#isRefused} says whether to go on
     * @throws IOException if the file is missing or cannot be read
     */
    public static FelledData read(Path path, FelledOptions options) throws IOException {
        String name = String.valueOf(path.getFileName());
        List<Problem> problems = new ArrayList<>();
        FileProblems log = new FileProblems(Rule::defaultPolicy, name, problems::add);
        TallySketch sketch = TallySketch.of(path);
        if (sketch.header().isEmpty()) {
            return nothing(name, sketch.problems());
        }
        Map<FelledOptions.Measure, FelledColumns.Column> columns = FelledColumns.find(sketch.header(), options, log);
        if (!problems.isEmpty()) {
            return nothing(name, problems);
        }
        FelledRows rows = new FelledRows(options.badRows(), unit(columns, FelledOptions.Measure.VOLUME), problems);
        TallyFile file = new TallyFile(path, name, TallyFormat.OPEN, specs(columns));
        TallyRows.forEach(file, log, rows::take);
        rows.judge(log);
        return new FelledData(
                name,
                FelledColumns.words(columns),
                unit(columns, FelledOptions.Measure.DBH),
                unit(columns, FelledOptions.Measure.HEIGHT),
                unit(columns, FelledOptions.Measure.VOLUME),
                rows.trees(),
                rows.count(),
                problems);
    }

    private static Map<ColumnRole, ColumnSpec> specs(Map<FelledOptions.Measure, FelledColumns.Column> columns) {
        Map<ColumnRole, ColumnSpec> specs = new EnumMap<>(ColumnRole.class);
        columns.forEach((measure, c) -> {
            ColumnRole role = Objects.requireNonNull(ROLES.get(measure));
            specs.put(role, new ColumnSpec(c.name(), role == VOLUME ? null : c.unit(), null));
        });
        return specs;
    }

    private static Unit unit(Map<FelledOptions.Measure, FelledColumns.Column> columns, FelledOptions.Measure measure) {
        FelledColumns.Column column = Objects.requireNonNull(columns.get(measure));
        return Objects.requireNonNull(column.unit());
    }

    private static FelledData nothing(String name, List<Problem> problems) {
        List<Problem> all = new ArrayList<>(problems);
        if (all.stream().noneMatch(p -> p.policy() == Policy.REFUSE)) {
            FileProblems log = new FileProblems(Rule::defaultPolicy, name, all::add);
            log.unreadable("the file has no header row");
        }
        return new FelledData(
                name,
                List.of(),
                Unit.CENTIMETRE,
                Unit.METRE,
                Unit.CUBIC_METRE,
                List.of(),
                new RowCount(0, 0, 0, 0),
                all);
    }
}
