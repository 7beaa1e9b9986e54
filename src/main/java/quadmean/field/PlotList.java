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
import quadmean.model.ListedPlot;
import quadmean.model.Problem;
import quadmean.model.Rule;

/** The plots of the plan, from the file that the design names. */
final class PlotList {
    private PlotList() {}

    /**
     * Each plot of the plan by its number; empty if the design names no file.
     *
     * @throws IOException if the file is missing or cannot be read
     */
    static Map<String, ListedPlot> read(Design design, Consumer<Problem> problems) throws IOException {
        Map<String, ListedPlot> plots = new LinkedHashMap<>();
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
        FileProblems ofFile = new FileProblems(design::policy, file.name(), problems);
        PlotFactReader facts = new PlotFactReader(design, ofFile);
        new CsvRows(file, ofFile).forEach(row -> {
            String plot = row.text(ColumnRole.PLOT);
            if (row.position().isEmpty()) {
                String detail = "the row has " + row.fields().size() + " fields";
                ofFile.add(Rule.ROW_LENGTH, row.line(), "", String.join(",", row.fields()), detail);
            } else if (plot.isEmpty()) {
                ofFile.add(Rule.PLOT_MISSING, row.line(), "plot", "", "the row names no plot");
            } else if (plots.containsKey(plot)) {
                ofFile.add(Rule.ROW_REPEATED, row.line(), "plot", plot, "plot " + plot + " is listed before");
            } else {
                String stratum = strata ? row.text(ColumnRole.STRATUM) : only;
                plots.put(
                        plot,
                        new ListedPlot(
                                plot, stratum, facts.read(plot, stratum, row), facts.position(row), facts.subset(row)));
            }
        });
        return plots;
    }
}
