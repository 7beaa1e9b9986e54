package quadmean.height;

/** What came of a fit. Only {@link #CONVERGED} curves are used. */
public enum FitStatus {
    CONVERGED("converged"),
    /** The best parameters lie at infinity: there is no optimum, and so no parameters. */
    DEGENERATE("degenerate"),
    /** No start led to an optimum. */
    NOT_CONVERGED("did not converge"),
    /** An optimum, but the curve falls, explodes or dips below breast height in or near the data. */
    UNREASONABLE("unreasonable shape"),
    /** Too few heights for this form. */
    TOO_FEW("too few heights");

    private final String label;

    FitStatus(String label) {
        this.label = label;
    }

    /** The words used in outputs. */
    public String label() {
        return label;
    }
}
