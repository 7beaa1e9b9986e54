package quadmean.model;

/** How far coefficients can be trusted. */
public enum Standing {
    /** Checked against the printed source. */
    VERIFIED("verified"),
    /** Estimated from data that the source names; as good as those data. */
    FITTED("fitted"),
    /** Written down from memory; nobody looked them up. */
    FROM_MEMORY("from memory"),
    /** Made up, for demonstrations alone. */
    INVENTED("invented");

    private final String label;

    Standing(String label) {
        this.label = label;
    }

    /** The words used in outputs. */
    public String label() {
        return label;
    }
}
