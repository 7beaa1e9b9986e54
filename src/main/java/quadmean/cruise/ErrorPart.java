package quadmean.cruise;

/**
 * A part of the error of an estimate.
 *
 * @param source where it comes from
 * @param kind how it stands to the variation between plots
 * @param variance its variance, per hectare, in squared metric units of the attribute; NaN if it is not known. The bootstrap may
 *     find a negative one where the errors of curves offset those of sampling
 * @param words what it is and what it rests on, in a sentence
 */
public record ErrorPart(Source source, Kind kind, double variance, String words) {

    /** Where errors come from. */
    public enum Source {
        PLOTS("between plots"),
        HEIGHT_READINGS("readings of heights"),
        DBH_READINGS("readings of dbh"),
        CURVES("height curves"),
        HEIGHT_SCATTER("scatter of heights about the curves"),
        EQUATION_SCATTER("scatter of trees about the volume equations"),
        EQUATIONS("coefficients of the volume equations"),
        HEIGHT_BIAS("instrument and crew: heights"),
        DBH_BIAS("instrument and crew: dbh");

        private final String label;

        Source(String label) {
            this.label = label;
        }

        /** The name used in outputs. */
        public String label() {
            return label;
        }
    }

    /** How a part stands to the variation between plots. */
    public enum Kind {
        /** The variation between plots itself. */
        SAMPLING("limits"),
        /** Already in the variation between plots, and counted there. */
        INSIDE("inside"),
        /** Common to plots, so that they do not show it: added. */
        ADDED("added"),
        /** Not known, and so not in the total. */
        UNKNOWN("not known");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /** The name used in outputs. */
        public String label() {
            return label;
        }
    }

    /** Whether it counts in the total. */
    public boolean isCounted() {
        return kind == Kind.SAMPLING || kind == Kind.ADDED;
    }

    /** Standard error, per hectare; NaN if it is not known or the variance is negative. */
    public double se() {
        return Math.sqrt(variance);
    }
}
