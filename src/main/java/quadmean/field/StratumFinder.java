package quadmean.field;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quadmean.design.ColumnRole;
import quadmean.design.Design;
import quadmean.design.Nearest;
import quadmean.design.PlotExceptions;
import quadmean.design.StratumEntry;
import quadmean.model.ListedPlot;
import quadmean.model.Rule;

/** Says in which stratum a plot lies: by the tally's column, by the design's lists of plots, or as the only one. */
final class StratumFinder {
    private final Set<String> codes = new LinkedHashSet<>();
    private final Map<String, String> listed = new HashMap<>();
    private final PlotExceptions exceptions;

    StratumFinder(Design design, Map<String, ListedPlot> plotList) {
        this.exceptions = design.exceptions();
        plotList.forEach((id, plot) -> listed.put(id, plot.stratum()));
        for (StratumEntry entry : design.strata()) {
            codes.add(entry.stratum().code());
            entry.plots().forEach(plot -> listed.put(plot, entry.stratum().code()));
        }
    }

    /** Plots that the design lists. */
    Set<String> listedPlots() {
        return listed.keySet();
    }

    String stratumOf(String listedPlot) {
        return listed.getOrDefault(listedPlot, "");
    }

    /** The stratum of a row; empty if there is none, which is then noted. */
    Optional<String> find(Row row, RowProblems problems) {
        String plot = row.text(ColumnRole.PLOT);
        String written = row.text(ColumnRole.STRATUM);
        String byList = stratumOf(plot);
        checkExceptions(plot, problems);
        if (!listed.isEmpty() && byList.isEmpty()) {
            problems.add(Rule.PLOT_NOT_LISTED, ColumnRole.PLOT, "plot " + plot + " is not on the design's list");
        }
        if (!written.isEmpty() && codes.contains(written)) {
            if (!byList.isEmpty() && !byList.equals(written)) {
                problems.add(
                        Rule.STRATUM_CHANGES,
                        ColumnRole.STRATUM,
                        "plot " + plot + " is in stratum " + byList + " by the design's list");
            }
            return Optional.of(written);
        }
        if (written.isEmpty() && !byList.isEmpty()) {
            return Optional.of(byList);
        }
        if (written.isEmpty() && codes.size() == 1) {
            return codes.stream().findFirst();
        }
        unknown(written, problems);
        return Optional.empty();
    }

    private void checkExceptions(String plot, RowProblems problems) {
        if (exceptions.notReached().contains(plot)) {
            problems.add(
                    Rule.PLOT_NOT_REACHED,
                    ColumnRole.PLOT,
                    "plot " + plot + " has a row, but the design says it was not reached");
        }
        if (exceptions.cut().containsKey(plot)) {
            problems.add(
                    Rule.PLOT_CUT,
                    ColumnRole.PLOT,
                    String.format(
                            Locale.ROOT,
                            "%.0f %% of plot %s lies inside its stratum",
                            100 * exceptions.inside(plot),
                            plot));
        }
    }

    private void unknown(String written, RowProblems problems) {
        String hint = Nearest.to(written, List.copyOf(codes))
                .map(c -> "did you mean " + c + "?")
                .orElse("the design has " + String.join(", ", codes));
        String what = written.isEmpty() ? "no stratum is given" : "there is no stratum \"" + written + "\"";
        problems.add(Rule.STRATUM_UNKNOWN, ColumnRole.STRATUM, what + "; " + hint);
    }
}
