package quadmean.measure;

/** With what the two observers of a two-way slope check sight. */
public enum InstrumentUse {
    /** Both with the same instrument: its index error cancels from the slope and shows by itself. */
    SAME_INSTRUMENT("same"),
    /**
     * Each with an own instrument: what shows is the mean of the two index errors, and the slope is off by half the
     * difference of the two, which nobody sees.
     */
    TWO_INSTRUMENTS("two");

    private final String id;

    InstrumentUse(String id) {
        this.id = id;
    }

    /** The name used in options. */
    public String id() {
        return id;
    }
}
