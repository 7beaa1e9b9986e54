package quadmean.model;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Tally files read and held to the rules.
 *
 * @param plots plots in the order in which the tally first names them
 * @param rows the account of rows
 * @param problems everything found, in the order of the rows
 * @param listed the plots of the plan, from the file that the design names
 */
public record Tally(List<Plot> plots, RowCount rows, List<Problem> problems, List<ListedPlot> listed) {
    public Tally {
        plots = List.copyOf(plots);
        listed = List.copyOf(listed);
        problems = List.copyOf(problems);
    }

    /** A tally without a file of planned plots. */
    public Tally(List<Plot> plots, RowCount rows, List<Problem> problems) {
        this(plots, rows, problems, List.of());
    }

    /** The same with the plots of the plan. */
    public Tally withListed(List<ListedPlot> plan) {
        return new Tally(plots, rows, problems, plan);
    }

    /** What the plan says of each plot, by plot number. */
    public Map<String, PlotFacts> facts() {
        return listed.stream().collect(Collectors.toMap(ListedPlot::id, ListedPlot::facts));
    }

    /**
     * A tally with its account of rows: a row counts as kept if it has problems and all of them are kept.
     *
     * @param used rows used
     * @param dropped rows left out
     */
    public static Tally of(List<Plot> plots, long used, long dropped, List<Problem> problems) {
        Set<String> kept = new HashSet<>();
        Set<String> out = new HashSet<>();
        problems.stream()
                .filter(p -> p.row() > 0)
                .forEach(p -> (p.policy() == Policy.KEEP ? kept : out).add(p.file() + ":" + p.row()));
        kept.removeAll(out);
        return new Tally(plots, new RowCount(used + dropped, used, dropped, kept.size()), problems);
    }

    /** Whether a problem stops the run. */
    public boolean isRefused() {
        return problems.stream().anyMatch(p -> p.policy() == Policy.REFUSE);
    }
}
