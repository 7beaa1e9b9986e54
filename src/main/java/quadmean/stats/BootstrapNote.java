package quadmean.stats;

/** What to say beside a bootstrap interval. */
public enum BootstrapNote {
    /** Fewer than {@value BootstrapSample#FEW} units more than strata: the resamples know little (common practice, no source). */
    FEW_UNITS("few units: the limits tell little"),
    /** A stratum has one unit, which cannot vary: the limits are too narrow. */
    SINGLE_UNIT("a stratum with one unit: the limits are too narrow"),
    /** All resamples agree: there is nothing to learn from them. */
    NO_SPREAD("all resamples agree: no limits"),
    /** Some resamples gave no value, as a ratio to nothing; the limits rest on the others. */
    UNDEFINED("some resamples gave no value: the limits rest on the others"),
    /** Without one of the units there is no value, as of a class with a single plot: BCa does not know how the error grows. */
    NO_ACCELERATION(
            "without one of the units there is no value, which BCa limits need; take interval = \"percentile\""),
    /** A limit lies beyond the resamples: take more of them, or none. */
    BEYOND("a limit lies beyond the resamples");

    private final String sentence;

    BootstrapNote(String sentence) {
        this.sentence = sentence;
    }

    /** The words used in outputs. */
    public String sentence() {
        return sentence;
    }
}
