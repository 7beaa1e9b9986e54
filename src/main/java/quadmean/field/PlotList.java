package quadmean.field;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import quadmean.design.ColumnRole;
import quadmean.design.ColumnSpec;
import quadmean.design.Design;
import quadmean.design.TallyFile;
import quadmean.design.TallyFormat;
import quadmean.model.Problem;

/** The plots of the plan, from the file that the design names. */
final class PlotList {
    private PlotList() {}

    /**
     * Stratum of each plot of the plan; empty if the design names no file.
     *
     * @throws IOException if the file is missing or cannot be read
     */
    static Map<String, String> read(Design design, Consumer<Problem> problems) throws IOException {
        Map<String, String> plots = new LinkedHashMap<>();
        Path path = design.exceptions().plotList();
        if (path == null) {
            return plots;
        }
        Map<ColumnRole, ColumnSpec> columns = new EnumMap<>(ColumnRole.class);
        columns.put(ColumnRole.PLOT, new ColumnSpec("plot", null, null));
        boolean strata = design.strata().size() > 1;
        if (strata) {
            columns.put(ColumnRole.STRATUM, new ColumnSpec("stratum", null, null));
        }
        String only = design.strata().get(0).stratum().code();
        TallyFile file = new TallyFile(path, path.getFileName().toString(), TallyFormat.OPEN, columns);
        new CsvRows(file, new FileProblems(design::policy, file.name(), problems))
                .forEach(row -> plots.put(row.text(ColumnRole.PLOT), strata ? row.text(ColumnRole.STRATUM) : only));
        plots.remove("");
        return plots;
    }
}
