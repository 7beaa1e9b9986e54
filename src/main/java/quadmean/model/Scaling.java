package quadmean.model;

/**
 * How logs are scaled in board feet.
 *
 * @param rule the log rule
 * @param diameters how small-end diameters are rounded
 * @param lengths how lengths are rounded, trim already taken off
 * @param figures whether the volume of a log is rounded as the rule's tables are
 * @param longestPieceM longest length scaled in one piece (m); longer logs are scaled in pieces
 */
public record Scaling(LogRule rule, Diameters diameters, Lengths lengths, Figures figures, double longestPieceM) {

    /** What becomes of a small-end diameter. */
    public enum Diameters {
        NEAREST_INCH("nearest_inch"),
        INCH_DOWN("inch_down"),
        AS_IS("as_is");

        private final String id;

        Diameters(String id) {
            this.id = id;
        }

        /** The word used in design files. */
        public String id() {
            return id;
        }
    }

    /** What becomes of a length. */
    public enum Lengths {
        EVEN_FOOT_DOWN("even_foot_down"),
        FOOT_DOWN("foot_down"),
        AS_IS("as_is");

        private final String id;

        Lengths(String id) {
            this.id = id;
        }

        /** The word used in design files. */
        public String id() {
            return id;
        }
    }

    /** What becomes of the volume of a log or piece. */
    public enum Figures {
        /** Whole board feet, fives or tens, as the tables of the rule are printed. */
        AS_TABLED("as_tabled"),
        UNROUNDED("unrounded");

        private final String id;

        Figures(String id) {
            this.id = id;
        }

        /** The word used in design files. */
        public String id() {
            return id;
        }
    }
}
