package quadmean.model;

/**
 * What a unit of a product fetches.
 *
 * @param product product code
 * @param species species code, group, or {@code *} for all the rest
 * @param amount money per unit
 * @param unit the unit
 */
public record Price(String product, String species, double amount, PriceUnit unit) {

    /** What a price is for one of; always of net volume. */
    public enum PriceUnit {
        THOUSAND_BOARD_FEET("mbf", "thousand board feet"),
        CUBIC_METRE("m3", "cubic metre"),
        CUBIC_FOOT("ft3", "cubic foot"),
        HUNDRED_CUBIC_FEET("100ft3", "hundred cubic feet"),
        /** 1000 kg of green weight. */
        TONNE("t", "tonne, green"),
        /** 2000 lb of green weight. */
        SHORT_TON("ton", "short ton, green");

        private final String id;
        private final String label;

        PriceUnit(String id, String label) {
            this.id = id;
            this.label = label;
        }

        /** The word used in design files. */
        public String id() {
            return id;
        }

        /** The words used in outputs. */
        public String label() {
            return label;
        }
    }
}
