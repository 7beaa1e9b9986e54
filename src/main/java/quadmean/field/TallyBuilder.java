package quadmean.field;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import quadmean.design.ColumnRole;
import quadmean.design.Design;
import quadmean.model.ListedPlot;
import quadmean.model.Plot;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.Stratum;
import quadmean.model.Tally;

/** Gathers plots, problems and the account of rows. */
final class TallyBuilder {
    private final Design design;
    private final StratumFinder strata;
    private final List<ListedPlot> listed;
    private final Map<String, PlotUnderway> plots = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private long used;
    private long dropped;
    private boolean wholeFiles = true;

    TallyBuilder(Design design, StratumFinder strata, List<ListedPlot> listed) {
        this.design = design;
        this.strata = strata;
        this.listed = listed;
    }

    /** A problem of a whole file; rows of it may have gone unread, unless it is kept. */
    void problem(Problem problem) {
        problems.add(problem);
        wholeFiles &= problem.policy() == Policy.KEEP;
    }

    /** Accounts for a row: out if a problem says so, else used. */
    void account(RowProblems row) {
        problems.addAll(row.list());
        if (row.isOut()) {
            dropped++;
        } else {
            used++;
        }
    }

    /** The plot of a row, begun if it is new; notes a row that puts it in another stratum. */
    PlotUnderway plot(Row row, String stratum, RowProblems problems) {
        String id = row.text(ColumnRole.PLOT);
        PlotUnderway plot = plots.computeIfAbsent(id, k -> new PlotUnderway(id, stratum));
        if (!plot.stratum().equals(stratum)) {
            problems.add(
                    Rule.STRATUM_CHANGES,
                    ColumnRole.STRATUM,
                    "plot " + id + " was in stratum " + plot.stratum() + " before");
        }
        return plot;
    }

    Tally build() {
        plots.values().forEach(this::checkEmptyRow);
        List<Plot> finished =
                new ArrayList<>(plots.values().stream().map(PlotUnderway::plot).toList());
        if (wholeFiles) {
            finished.addAll(listedButAbsent());
            listNotReached();
            checkStrata(finished);
            new MeasuringChecks(design).check(finished).forEach(problems::add);
            checkRoom(finished);
            PlotFactChecks.check(design, finished, listed, problems::add);
        }
        return Tally.of(finished, used, dropped, problems).withListed(listed);
    }

    private void checkEmptyRow(PlotUnderway plot) {
        if (!plot.hasTrees()) {
            return;
        }
        plot.emptyRowProblem(design).ifPresent(problem -> {
            problems.add(problem);
            if (problem.policy() != Policy.KEEP) {
                used--;
                dropped++;
            }
        });
    }

    private List<Plot> listedButAbsent() {
        List<Plot> added = new ArrayList<>();
        Policy policy = design.policy(Rule.PLOT_NOT_IN_TALLY);
        List<String> firstOnly = listed.stream()
                .filter(ListedPlot::isFirstPhaseOnly)
                .map(ListedPlot::id)
                .toList();
        for (String id : new TreeSet<>(strata.listedPlots())) {
            if (plots.containsKey(id)
                    || firstOnly.contains(id)
                    || design.tallies().isEmpty()
                    || design.exceptions().notReached().contains(id)) {
                continue;
            }
            String then = policy == Policy.KEEP ? "; it counts as a plot without trees" : "";
            problems.add(new Problem(
                    design.file().getFileName().toString(),
                    0,
                    "plots",
                    id,
                    Rule.PLOT_NOT_IN_TALLY,
                    policy,
                    "plot " + id + " is listed but has no row" + then));
            if (policy == Policy.KEEP) {
                added.add(new Plot(id, strata.stratumOf(id), List.of()));
            }
        }
        return added;
    }

    private void listNotReached() {
        for (String id : new TreeSet<>(design.exceptions().notReached())) {
            problems.add(new Problem(
                    design.file().getFileName().toString(),
                    0,
                    "not_reached",
                    id,
                    Rule.PLOT_NOT_REACHED,
                    design.policy(Rule.PLOT_NOT_REACHED),
                    "plot " + id + " was not reached"));
        }
    }

    private void checkRoom(List<Plot> finished) {
        for (Stratum stratum : design.stratumList()) {
            long run = finished.stream()
                    .filter(p -> p.stratum().equals(stratum.code()))
                    .count();
            PlotRoom.overfull(design, "stratum " + stratum.code(), run, stratum.areaHa())
                    .ifPresent(detail -> problems.add(new Problem(
                            design.file().getFileName().toString(),
                            0,
                            "finite_population",
                            stratum.code(),
                            Rule.DESIGN_VALUE,
                            Policy.REFUSE,
                            detail)));
        }
    }

    private void checkStrata(List<Plot> finished) {
        design.stratumList().stream()
                .filter(s -> finished.stream().noneMatch(p -> p.stratum().equals(s.code())))
                .forEach(s -> problems.add(new Problem(
                        design.file().getFileName().toString(),
                        0,
                        "stratum",
                        s.code(),
                        Rule.STRATUM_WITHOUT_PLOTS,
                        Policy.REFUSE,
                        finished.isEmpty()
                                ? "the tally has no rows that make a plot"
                                : "no plot of the tally lies in stratum " + s.code())));
    }
}
