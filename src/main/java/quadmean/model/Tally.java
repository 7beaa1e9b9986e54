package quadmean.model;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Tally files read and held to the rules.
 *
 * @param plots plots in the order in which the tally first names them
 * @param rows the account of rows
 * @param problems everything found, in the order of the rows
 */
public record Tally(List<Plot> plots, RowCount rows, List<Problem> problems) {
    public Tally {
        plots = List.copyOf(plots);
        problems = List.copyOf(problems);
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
