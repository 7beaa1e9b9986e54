package quadmean.model;

/** The part of the circle about a point that is swept with the gauge. */
public enum Sweep {
    FULL("full", 1),
    /** Half of the circle, on a side fixed by rule or drawn: each tree in it stands for two. */
    HALF("half", 2),
    /** A quarter of the circle, as above: each tree in it stands for four. */
    QUARTER("quarter", 4);

    private final String id;
    private final int multiplier;

    Sweep(String id, int multiplier) {
        this.id = id;
        this.multiplier = multiplier;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }

    /** Times that a tree counts for those that were not swept: the circle over its part (by definition). */
    public int multiplier() {
        return multiplier;
    }
}
