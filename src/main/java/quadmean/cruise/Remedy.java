package quadmean.cruise;

/** What a forester can do about an error. */
public enum Remedy {
    MORE_PLOTS("more plots", "twice as many plots"),
    MORE_HEIGHTS("more heights", "twice as many heights"),
    BETTER_READINGS("better readings", "errors of reading, instrument and crew half as large");

    private final String label;
    private final String measure;

    Remedy(String label, String measure) {
        this.label = label;
        this.measure = measure;
    }

    /**
     * The remedy in words.
     *
     * @param units what the sampling error counts: plots, or clusters of them
     */
    public String label(String units) {
        return label.replace("plots", units);
    }

    /**
     * The step whose effect is worked out.
     *
     * @param units what the sampling error counts
     */
    public String measure(String units) {
        return measure.replace("plots", units);
    }

    /** The share of the variance of a part that the step takes away; a standard deviation halved takes three quarters. */
    double takes(ErrorPart part) {
        return switch (this) {
            case MORE_PLOTS -> part.source() == ErrorPart.Source.PLOTS ? 0.5 : 0;
            case MORE_HEIGHTS -> part.source() == ErrorPart.Source.CURVES ? 0.5 : 0;
            case BETTER_READINGS ->
                switch (part.source()) {
                    case HEIGHT_READINGS, DBH_READINGS, HEIGHT_BIAS, DBH_BIAS -> 0.75;
                    default -> 0;
                };
        };
    }
}
