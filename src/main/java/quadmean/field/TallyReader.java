package quadmean.field;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quadmean.design.ColumnRole;
import quadmean.design.Design;
import quadmean.design.TallyFile;
import quadmean.model.CountedTrees;
import quadmean.model.ListedPlot;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.Tally;
import quadmean.model.Tree;

/** Reads the tally files of a design, row by row, and holds each row to the rules. */
public final class TallyReader {
    private final Design design;
    private final TreeReader trees;
    private final CountReader counts;
    private final StratumFinder strata;
    private final TallyBuilder builder;

    private TallyReader(Design design, Map<String, ListedPlot> plotList) {
        this.design = design;
        this.trees = new TreeReader(design);
        this.counts = new CountReader(design);
        this.strata = new StratumFinder(design, plotList);
        this.builder = new TallyBuilder(design, strata, List.copyOf(plotList.values()));
    }

    /**
     * Reads all tally files.
     *
     * @return plots, the account of rows, and every problem; {@link Tally#isRefused} says whether to go on
     * @throws IOException if a file is missing or cannot be read
     */
    public static Tally read(Design design) throws IOException {
        List<Problem> ofPlotList = new ArrayList<>();
        TallyReader reader = new TallyReader(design, PlotList.read(design, ofPlotList::add));
        ofPlotList.forEach(reader.builder::problem);
        for (TallyFile file : design.tallies()) {
            FileProblems problems = new FileProblems(design::policy, file.name(), reader.builder::problem);
            ClassNote classes = new ClassNote(problems);
            TallyRows.forEach(file, problems, row -> {
                reader.row(row);
                classes.see(row);
            });
        }
        return reader.builder.build();
    }

    /** Every problem of the row is noted, also where the first one puts it out already. */
    private void row(Row row) {
        RowProblems problems = new RowProblems(design, row);
        if (row.position().isEmpty()) {
            String text = String.join(String.valueOf(row.file().separator()), row.fields());
            problems.add(
                    Rule.ROW_LENGTH, "", text, "the row has " + row.fields().size() + " fields");
        } else if (row.isOneLine()) {
            remarks(row, problems);
            PlotUnderway plot = place(row, problems);
            if (row.isOfPlotsSheet()) {
                if (plot != null && !problems.isOut()) {
                    plot.announce(row, problems);
                }
            } else if (row.isEmptyPlot()) {
                if (plot != null && !problems.isOut()) {
                    plot.noteEmpty(row, problems);
                }
            } else {
                tree(row, plot, problems);
            }
        } else {
            row.brokenRoles()
                    .forEach(role -> problems.add(
                            Rule.ROW_LENGTH,
                            role,
                            "the field runs over several lines; a quote is missing or too many"));
        }
        builder.account(problems);
    }

    /** Notes what is wrong with spreadsheet cells in use. */
    private static void remarks(Row row, RowProblems problems) {
        for (CellRemark remark : row.remarks()) {
            row.position().forEach((role, at) -> {
                if (at == remark.column()) {
                    problems.add(remark.rule(), role, remark.detail());
                }
            });
        }
    }

    private @Nullable PlotUnderway place(Row row, RowProblems problems) {
        if (row.text(ColumnRole.PLOT).isEmpty()) {
            problems.add(Rule.PLOT_MISSING, ColumnRole.PLOT, "the row names no plot");
            return null;
        }
        String stratum = strata.find(row, problems).orElse("");
        return problems.isOut() ? null : builder.plot(row, stratum, problems);
    }

    private void tree(Row row, @Nullable PlotUnderway plot, RowProblems problems) {
        if (plot != null) {
            plot.checkRepeats(row, problems);
        }
        if (counts.isCounted(row)) {
            CountedTrees counted = trees.counted(row, problems);
            if (plot != null && counted != null) {
                plot.add(counted);
            }
            return;
        }
        Tree tree = trees.read(row, problems);
        if (plot != null && tree != null) {
            plot.add(tree);
        }
    }
}
