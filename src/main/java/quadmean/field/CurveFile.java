package quadmean.field;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import quadmean.design.ColumnRole;
import quadmean.design.ColumnSpec;
import quadmean.design.Design;
import quadmean.design.TallyFile;
import quadmean.design.TallyFormat;
import quadmean.model.CurveForm;
import quadmean.model.FillingCurve;
import quadmean.model.HeightSource;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.units.UnitSystem;

/** Reads the height curves of an estate from the file that a run over an estate writes. */
public final class CurveFile {
    private static final List<String> COLUMNS = FillingCurve.COLUMNS;

    private final FileProblems problems;
    private final ToIntFunction<CurveForm> parametersOf;
    private final Map<String, List<FillingCurve>> curves = new HashMap<>();
    private long rows;

    private CurveFile(FileProblems problems, ToIntFunction<CurveForm> parametersOf) {
        this.problems = problems;
        this.parametersOf = parametersOf;
    }

    /**
     * The curves by region.
     *
     * @param parametersOf how many parameters a form has
     * @param problems takes everything wrong with the file
     * @throws IOException if the file is missing or cannot be read
     */
    public static Map<String, List<FillingCurve>> read(
            Design design, Path path, ToIntFunction<CurveForm> parametersOf, Consumer<Problem> problems)
            throws IOException {
        String name = String.valueOf(path.getFileName());
        FileProblems log = new FileProblems(design::policy, name, problems);
        CurveFile file = new CurveFile(log, parametersOf);
        Map<ColumnRole, ColumnSpec> columns = new EnumMap<>(ColumnRole.class);
        columns.put(ColumnRole.SPECIES, new ColumnSpec("species", null, null));
        new CsvRows(new TallyFile(path, name, TallyFormat.OPEN.with(',', '.'), columns), log).forEach(file::row);
        if (file.rows == 0) {
            log.add(Rule.CURVE_FILE, 0, "", "", "the file has no curves");
        }
        return file.curves;
    }

    private void row(Row row) {
        rows++;
        if (!row.names().equals(COLUMNS) || row.fields().size() != COLUMNS.size()) {
            String whole = String.join(",", row.fields());
            problems.add(Rule.CURVE_FILE, row.line(), "", whole, "the columns are " + String.join(",", COLUMNS));
            return;
        }
        try {
            FillingCurve curve = curve(row);
            List<FillingCurve> ofRegion = curves.computeIfAbsent(text(row, "region"), r -> new ArrayList<>());
            if (ofRegion.stream().anyMatch(c -> c.species().equals(curve.species()))) {
                throw new IllegalArgumentException(
                        "region \"" + text(row, "region") + "\" has a curve of " + curve.species() + " further up");
            }
            ofRegion.add(curve);
        } catch (IllegalArgumentException e) {
            problems.add(
                    Rule.CURVE_FILE, row.line(), "", String.join(",", row.fields()), String.valueOf(e.getMessage()));
        }
    }

    private FillingCurve curve(Row row) {
        CurveForm form = choice(row, "form", CurveForm.values(), CurveForm::id);
        double[] parameters = Stream.of("a", "b", "c")
                .limit(parametersOf.applyAsInt(form))
                .mapToDouble(p -> number(row, p))
                .toArray();
        return new FillingCurve(
                text(row, "species"),
                choice(row, "source", HeightSource.values(), HeightSource::id),
                form,
                parameters,
                number(row, "ratio"),
                choice(row, "units", UnitSystem.values(), UnitSystem::id),
                number(row, "breast_height"),
                (int) number(row, "heights"),
                orUnknown(row, "scatter_m"),
                orUnknown(row, "min_dbh_cm"),
                orUnknown(row, "max_dbh_cm"));
    }

    private static String text(Row row, String column) {
        return row.fields().get(COLUMNS.indexOf(column)).strip();
    }

    private static <T> T choice(Row row, String column, T[] of, Function<T, String> id) {
        return Stream.of(of)
                .filter(v -> id.apply(v).equals(text(row, column)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("\"" + text(row, column) + "\" is no " + column));
    }

    private static double orUnknown(Row row, String column) {
        return text(row, column).isEmpty() ? Double.NaN : number(row, column);
    }

    private static double number(Row row, String column) {
        try {
            double value = Double.parseDouble(text(row, column));
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            // said below
        }
        throw new IllegalArgumentException("\"" + text(row, column) + "\" is no number for " + column);
    }
}
