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
import quadmean.field.FelledOptions.Measure;
import quadmean.model.FelledData;
import quadmean.model.FelledStem;
import quadmean.model.FelledTree;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.RowCount;
import quadmean.model.Rule;
import quadmean.units.Unit;

/** Reads a table of felled trees, CSV or workbook, one row a tree or a point of a stem, and holds each row to the rules. */
public final class FelledReader {
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
        Map<Measure, FelledColumns.Column> columns = FelledColumns.find(sketch.header(), options, log);
        if (!problems.isEmpty()) {
            return nothing(name, problems);
        }
        FelledCells cells = new FelledCells(columns, options.badRows(), problems);
        TallyFile file = new TallyFile(path, name, TallyFormat.OPEN, specs(columns));
        return options.isOfPoints() ? stems(file, cells, log, columns) : trees(file, cells, log, columns);
    }

    private static FelledData trees(
            TallyFile file, FelledCells cells, FileProblems log, Map<Measure, FelledColumns.Column> columns)
            throws IOException {
        FelledRows rows = new FelledRows(cells);
        TallyRows.forEach(file, log, rows::take);
        rows.judge(log);
        Unit volume = unit(columns, Measure.VOLUME);
        return data(file, columns, volume, List.of(), rows.trees(), rows.count(), cells.problems());
    }

    private static FelledData stems(
            TallyFile file, FelledCells cells, FileProblems log, Map<Measure, FelledColumns.Column> columns)
            throws IOException {
        StemRows rows = new StemRows(cells);
        TallyRows.forEach(file, log, rows::take);
        Unit volume = unit(columns, Measure.HEIGHT) == Unit.FOOT ? Unit.CUBIC_FOOT : Unit.CUBIC_METRE;
        return data(file, columns, volume, rows.stems(), List.of(), rows.count(), cells.problems());
    }

    private static FelledData data(
            TallyFile file,
            Map<Measure, FelledColumns.Column> columns,
            Unit volume,
            List<FelledStem> stems,
            List<FelledTree> trees,
            RowCount rows,
            List<Problem> problems) {
        return new FelledData(
                file.name(),
                FelledColumns.words(columns),
                unit(columns, Measure.DBH),
                unit(columns, Measure.HEIGHT),
                volume,
                "",
                stems,
                trees,
                rows,
                problems);
    }

    private static Map<ColumnRole, ColumnSpec> specs(Map<Measure, FelledColumns.Column> columns) {
        Map<ColumnRole, ColumnSpec> specs = new EnumMap<>(ColumnRole.class);
        columns.forEach((measure, c) -> {
            // a tally has no volumes: they are read as plain numbers, whose unit is known beforehand
            Unit unit = measure == Measure.VOLUME ? null : c.unit();
            specs.put(measure.role(), new ColumnSpec(c.name(), unit, null));
        });
        return specs;
    }

    private static Unit unit(Map<Measure, FelledColumns.Column> columns, Measure measure) {
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
                "",
                List.of(),
                List.of(),
                new RowCount(0, 0, 0, 0),
                all);
    }
}
