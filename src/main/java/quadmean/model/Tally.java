package quadmean.model;

import java.util.List;

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

    /** Whether a problem stops the run. */
    public boolean isRefused() {
        return problems.stream().anyMatch(p -> p.policy() == Policy.REFUSE);
    }
}
