package quadmean.volume;

/** Whether a log rule has a figure of its own for a log. */
public enum Coverage {
    FORMULA("by the formula of the rule"),
    TABLE("in the table"),
    UNDER_SMALLEST_DIAMETER("thinner than the smallest diameter of the table"),
    OVER_LARGEST_DIAMETER("thicker than the largest diameter of the table"),
    UNDER_SHORTEST_LENGTH("shorter than the shortest length of the table"),
    OVER_LONGEST_LENGTH("longer than the longest length of the table"),
    BETWEEN_LENGTHS("of a length between two of the table");

    private final String label;

    Coverage(String label) {
        this.label = label;
    }

    /** The words used in outputs. */
    public String label() {
        return label;
    }

    /** Whether another rule had to stand in. */
    public boolean besideTable() {
        return this != FORMULA && this != TABLE;
    }
}
