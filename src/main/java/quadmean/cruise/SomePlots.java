package quadmean.cruise;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import quadmean.design.Design;
import quadmean.design.StratumEntry;
import quadmean.design.TallyFile;
import quadmean.estimate.SampledPlot;
import quadmean.field.TallyReader;
import quadmean.model.Plot;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Progress;
import quadmean.model.Rule;
import quadmean.model.Tally;

/** Tallies that hold some of the plots of a design: those of a cruise under way, or of a checker. */
public final class SomePlots {
    /** What is no mistake of a tally of some plots. */
    private static final Set<Rule> OF_ALL_PLOTS =
            EnumSet.of(Rule.PLOT_NOT_IN_TALLY, Rule.STRATUM_WITHOUT_PLOTS, Rule.STRATUM_ONE_PLOT);

    private SomePlots() {}

    /**
     * Reads a tally of some plots and finds what is wrong with it; plots and strata that are not in it are nothing wrong.
     *
     * @param files the tally files, in place of the design's
     * @throws IOException if a file is missing or cannot be read
     */
    public static Tally check(Design design, List<TallyFile> files) throws IOException {
        Design part = design.onSomePlots(files);
        return Cruise.check(part, WoodBooks.of(part), lenient(TallyReader.read(part), part.tallies()));
    }

    /**
     * Works through the plots that a cruise has so far. Strata without any are left out of the estimate, as the design of the result
     * shows.
     *
     * @throws IOException if a tally file is missing or cannot be read
     */
    public static CruiseRun run(Design design) throws IOException {
        return run(design, design.tallies());
    }

    /**
     * The same with other tally files.
     *
     * @throws IOException if a tally file is missing or cannot be read
     */
    public static CruiseRun run(Design design, List<TallyFile> files) throws IOException {
        Design part = design.onSomePlots(files);
        WoodBooks books = WoodBooks.of(part);
        Tally tally = Cruise.check(part, books, lenient(TallyReader.read(part), part.tallies()));
        List<StratumEntry> begun = part.strata().stream()
                .filter(s -> tally.plots().stream()
                        .anyMatch(p -> p.stratum().equals(s.stratum().code())))
                .toList();
        return Cruise.run(part.onStrata(begun), books, tally, Progress.SILENT);
    }

    /** Without a single plot there is nothing to work with, which is said once. */
    private static Tally lenient(Tally tally, List<TallyFile> files) {
        List<Problem> problems = new ArrayList<>(tally.problems());
        problems.removeIf(p -> OF_ALL_PLOTS.contains(p.rule()));
        if (tally.plots().isEmpty() && problems.stream().noneMatch(p -> p.policy() == Policy.REFUSE)) {
            problems.add(new Problem(
                    files.get(0).name(),
                    0,
                    "",
                    "",
                    Rule.STRATUM_WITHOUT_PLOTS,
                    Policy.REFUSE,
                    "the tally has no rows that make a plot"));
        }
        return new Tally(tally.plots(), tally.rows(), problems, tally.listed());
    }

    /**
     * Plots of another tally of the same stand, their heights filled and their wood worked out with the curves and equations of a
     * cruise, so that plots differ by their readings alone.
     */
    public static List<SampledPlot> plots(CruiseResult cruise, List<Plot> plots) {
        Design design = cruise.design();
        Tally tally = new Tally(
                plots, cruise.tally().rows(), List.of(), cruise.tally().listed());
        return WorkedTally.of(design, WoodBooks.of(design), tally, cruise.curves())
                .plots();
    }
}
