package quadmean.audit;

/**
 * What became of a tree in an attribute.
 *
 * @param plot plot number
 * @param label plot and tree number
 * @param fate what became of it
 * @param before value per hectare at the earlier date; 0 if it did not count
 * @param after value per hectare at the later date; 0 if it does not count
 * @param growth of a survivor the growth of one tree times its weight of the earlier date; else 0
 */
public record GrowthTree(String plot, String label, Fate fate, double before, double after, double growth) {

    /** What became of a tree. */
    public enum Fate {
        SURVIVOR("survivor"),
        INGROWTH("ingrowth"),
        ONGROWTH("ongrowth"),
        MORTALITY("mortality"),
        REMOVAL("removal"),
        /** It counts at neither date. */
        NONE("none");

        private final String id;

        Fate(String id) {
            this.id = id;
        }

        /** The name used in CSV. */
        public String id() {
            return id;
        }
    }
}
