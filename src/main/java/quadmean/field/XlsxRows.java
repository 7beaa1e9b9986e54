package quadmean.field;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.xml.stream.XMLStreamException;
import org.jspecify.annotations.Nullable;
import quadmean.design.ColumnRole;
import quadmean.design.ColumnSpec;
import quadmean.design.Nearest;
import quadmean.design.TallyFile;
import quadmean.model.Rule;

/** Streams the rows of a workbook: one sheet, or a sheet of plots and one of trees. */
final class XlsxRows {
    private final TallyFile file;
    private final FileProblems problems;
    private final Map<String, String> stratumOfPlot = new HashMap<>();
    private boolean plotsHaveStrata;

    XlsxRows(TallyFile file, FileProblems problems) {
        this.file = file;
        this.problems = problems;
    }

    /** Hands each data row to a consumer: plots first, where they have a sheet, then trees. */
    void forEach(Consumer<Row> rows) {
        try (Workbook workbook = new Workbook(file.path())) {
            String plots = file.format().plotsSheet();
            String trees = file.format().sheet();
            if (trees.isEmpty()) {
                trees = workbook.sheets().stream()
                        .filter(s -> !s.equals(plots))
                        .findFirst()
                        .orElse("");
            }
            if (isThere(workbook, trees) && (plots.isEmpty() || isThere(workbook, plots))) {
                if (!plots.isEmpty()) {
                    plots(workbook, plots, rows);
                }
                trees(workbook, trees, rows);
            }
        } catch (WorkbookException e) {
            problems.unreadable(e.words());
        } catch (IOException | XMLStreamException e) {
            problems.unreadable(WorkbookException.explain(e));
        }
    }

    private boolean isThere(Workbook workbook, String sheet) {
        if (workbook.sheets().contains(sheet)) {
            return true;
        }
        String hint = Nearest.to(sheet, workbook.sheets())
                .map(s -> "did you mean \"" + s + "\"?")
                .orElse("it has " + String.join(", ", workbook.sheets()));
        problems.unreadable("the workbook has no sheet \"" + sheet + "\"; " + hint);
        return false;
    }

    private void plots(Workbook workbook, String sheet, Consumer<Row> rows) throws IOException, XMLStreamException {
        TallyFile plots = file.called(file.name() + " [" + sheet + "]");
        Sheet reading = new Sheet(new SheetReader(workbook, sheet, file.decimal()), problems.called(plots.name()));
        reading.header(names -> {
            plotsHaveStrata = has(names, ColumnRole.STRATUM);
            return plots.with(only(plotsHaveStrata, ColumnRole.PLOT, ColumnRole.STRATUM));
        });
        reading.forEach(row -> {
            stratumOfPlot.putIfAbsent(row.text(ColumnRole.PLOT), row.text(ColumnRole.STRATUM));
            rows.accept(row);
        });
    }

    private boolean has(List<String> names, ColumnRole role) {
        ColumnSpec spec = file.columns().get(role);
        return spec != null && names.contains(spec.name());
    }

    private Map<ColumnRole, ColumnSpec> only(boolean second, ColumnRole first, ColumnRole other) {
        Map<ColumnRole, ColumnSpec> columns = new EnumMap<>(file.columns());
        columns.keySet().removeIf(r -> r != first && !(second && r == other));
        return columns;
    }

    private void trees(Workbook workbook, String sheet, Consumer<Row> rows) throws IOException, XMLStreamException {
        boolean twoSheets = !file.format().plotsSheet().isEmpty();
        Sheet reading = new Sheet(new SheetReader(workbook, sheet, file.decimal()), problems);
        boolean[] stratumElsewhere = new boolean[1];
        reading.header(names -> {
            stratumElsewhere[0] = plotsHaveStrata && !has(names, ColumnRole.STRATUM);
            Map<ColumnRole, ColumnSpec> columns = new EnumMap<>(file.columns());
            if (stratumElsewhere[0]) {
                columns.remove(ColumnRole.STRATUM);
            }
            return file.with(columns);
        });
        reading.forEach(row -> rows.accept(twoSheets ? joined(row, stratumElsewhere[0]) : row));
    }

    /** A tree's row with what the sheet of plots says of its plot. */
    private Row joined(Row row, boolean withStratum) {
        String plot = row.text(ColumnRole.PLOT);
        List<CellRemark> remarks = new ArrayList<>(row.remarks());
        if (!plot.isEmpty() && !stratumOfPlot.containsKey(plot)) {
            String detail =
                    "plot " + plot + " has no row on the sheet " + file.format().plotsSheet();
            remarks.add(new CellRemark(row.position().getOrDefault(ColumnRole.PLOT, 0), Rule.PLOT_NOT_LISTED, detail));
        }
        List<String> fields = new ArrayList<>(row.fields());
        Map<ColumnRole, Integer> position = new EnumMap<>(row.position());
        if (withStratum) {
            position.put(ColumnRole.STRATUM, fields.size());
            fields.add(stratumOfPlot.getOrDefault(plot, ""));
        }
        return new Row(row.file(), row.line(), fields, position, remarks, row.names());
    }

    private interface Match {
        TallyFile columnsFor(List<String> names);
    }

    /** The reading of one sheet. */
    private static final class Sheet {
        private final SheetReader reader;
        private final FileProblems problems;
        private final SheetNotes notes;
        private @Nullable Header header;

        Sheet(SheetReader reader, FileProblems problems) {
            this.reader = reader;
            this.problems = problems;
            this.notes = new SheetNotes(problems);
        }

        void header(Match match) throws IOException {
            SheetRow first = next();
            if (first == null) {
                problems.unreadable("the sheet is empty");
                return;
            }
            List<String> names = first.texts();
            TallyFile wanted = match.columnsFor(names);
            Optional<Header> found = Header.match(wanted, names, first.number(), problems);
            header = found.orElse(null);
        }

        void forEach(Consumer<Row> rows) throws IOException {
            Header names = header;
            if (names == null) {
                return;
            }
            SheetRow row = next();
            while (row != null) {
                notes.see(row, names);
                rows.accept(new Row(
                        names.file(),
                        row.number(),
                        row.texts(names.size()),
                        names.position(),
                        row.remarks(),
                        names.names()));
                row = next();
            }
            notes.state(reader.merged(), names);
        }

        /** The next row. What the XML parser throws on damage of many kinds is all damage. */
        private @Nullable SheetRow next() throws IOException {
            try {
                return reader.next();
            } catch (XMLStreamException | RuntimeException e) {
                throw new WorkbookException(WorkbookException.explain(e));
            }
        }
    }
}
