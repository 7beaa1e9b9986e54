package quadmean.model;

/** How far coefficients can be trusted. */
public enum Standing {
    /** Checked against the printed source. */
    VERIFIED("verified"),
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
