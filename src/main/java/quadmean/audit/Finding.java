package quadmean.audit;

/**
 * Something that the check found.
 *
 * @param kind what it is
 * @param where the crew, or plot and tree number
 * @param detail what was found, as a sentence without a full stop
 */
public record Finding(Kind kind, String where, String detail) {

    /** What can be found, the gravest first. */
    public enum Kind {
        CREW_BIAS("crew_bias", "A crew reads high or low"),
        SPECIES("species", "Species differ"),
        MISSED("missed", "Tree missed by the crew"),
        EXTRA("extra", "Tree that the checker did not find"),
        COUNT("count", "Counts differ"),
        OUTSIDE("outside", "Reading outside its limit"),
        PLOT("plot", "Plot that cannot be compared");

        private final String id;
        private final String label;

        Kind(String id, String label) {
            this.id = id;
            this.label = label;
        }

        /** The name used in JSON and CSV. */
        public String id() {
            return id;
        }

        /** The name used on pages. */
        public String label() {
            return label;
        }
    }
}
