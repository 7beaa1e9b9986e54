package quadmean.volume;

/** What came of fitting a form. */
public enum VolumeFitStatus {
    FITTED("fitted"),
    /** Fewer trees than {@link VolumeFitForm#treesNeeded}. */
    TOO_FEW_TREES("too few trees"),
    /** The trees do not tell the coefficients apart. */
    COLLINEAR("collinear"),
    /** No volume above zero for a tree of the data. */
    NO_VOLUME("no volume"),
    /** A coefficient hangs on a single tree, so that leaving it out leaves nothing to predict it with. */
    HANGS_ON_ONE_TREE("hangs on one tree");

    private final String label;

    VolumeFitStatus(String label) {
        this.label = label;
    }

    /** The words used in outputs. */
    public String label() {
        return label;
    }
}
