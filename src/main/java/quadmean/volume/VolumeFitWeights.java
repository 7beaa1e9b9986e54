package quadmean.volume;

/** How much a tree counts in the fit of a form whose residuals are in volume. */
public enum VolumeFitWeights {
    /** All alike: fits the largest trees best. */
    EQUAL("equal", "equal weights"),
    /** 1/(D²H)²: the scatter of volumes grows in proportion to D²H. */
    INVERSE_SQUARE("inverse_square", "weights 1/(D²H)²");

    private final String id;
    private final String label;

    VolumeFitWeights(String id, String label) {
        this.id = id;
        this.label = label;
    }

    /** The name used on the command line. */
    public String id() {
        return id;
    }

    /** The words used in outputs. */
    public String label() {
        return label;
    }

    /**
     * The weight of a tree.
     *
     * @param size D²·H in the units of the fit
     */
    double of(double size) {
        return this == EQUAL ? 1 : 1 / (size * size);
    }
}
