package quadmean.model;

import java.util.List;

/** What crews do where a plot reaches over the line of the tract. A tree that counts more than once has that number in the tally. */
public enum Boundary {
    /** The design says nothing. */
    NOT_STATED("", List.of(1), ""),
    IGNORED(
            "ignored",
            List.of(1),
            "What plots reach beyond the boundary was ignored: trees near an edge are chosen too seldom and counted as if they were"
                    + " not, so that the estimate is biased low wherever plots lie near an edge (by 5 to 19 % on three mapped"
                    + " stands of 0.2 to 4 ha; less on larger tracts)."),
    /** The plot is laid out again from the centre reflected in the edge; about a corner from its images as well. */
    MIRAGE(
            "mirage",
            List.of(1, 2, 3, 4),
            "Mirage at the boundary: a tree reached again from the reflected centre counts once more. Without systematic error"
                    + " along straight edges; at corners only where the images of the corner are run as well."),
    /** As far again beyond the tree on the same line; where that ends outside, the tree counts twice. */
    WALKTHROUGH(
            "walkthrough",
            List.of(1, 2),
            "Walkthrough at the boundary: a tree counts twice where a walk from the centre through it and as far again ends"
                    + " outside (Ducey, Gove and Valentine 2004, from memory). A small negative bias stays near corners and"
                    + " narrow necks (0.1 to 1.3 % on three mapped stands)."),
    /** Half or a quarter of the plot toward the inside, and what is on it twice or four times. */
    INWARD_SWEEP(
            "inward_sweep",
            List.of(1, 2, 4),
            "Half and quarter plots swept inward at the boundary: BIASED, for the strip along the edge is seen too seldom or too"
                    + " often, by as much as it differs from the interior (up to 6 % on three mapped stands). Run mirage or"
                    + " walkthrough in its place.");

    private final String id;

    @SuppressWarnings("ImmutableEnumChecker") // a list that nothing changes
    private final List<Integer> times;

    private final String note;

    Boundary(String id, List<Integer> times, String note) {
        this.id = id;
        this.times = times;
        this.note = note;
    }

    /** The name used in design files; empty for {@link #NOT_STATED}. */
    public String id() {
        return id;
    }

    /** The numbers of times that a tree may count. */
    public List<Integer> times() {
        return times;
    }

    /** What it means for the estimate, in sentences; empty if nothing was said. */
    public String note() {
        return note;
    }
}
