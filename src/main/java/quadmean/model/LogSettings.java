package quadmean.model;

import java.util.List;

/**
 * How stems are cut into logs, and logs measured.
 *
 * @param method how cuts are chosen
 * @param scaling how logs are scaled in board feet
 * @param cubic how the cubic volume of a log is worked out
 * @param stumpM height of the stump (m)
 * @param trimM length added to each log for squaring its ends (m), not scaled
 * @param products what logs are cut for, the one preferred most first
 */
public record LogSettings(
        Method method, Scaling scaling, CubicRule cubic, double stumpM, double trimM, List<Product> products) {
    public LogSettings {
        products = List.copyOf(products);
    }

    /** How cuts are chosen. */
    public enum Method {
        /** From the stump up, each log the first product and length of the lists that fits. */
        LENGTHS("lengths"),
        /** So that the stem fetches most under the price list. */
        BEST_VALUE("best_value");

        private final String id;

        Method(String id) {
            this.id = id;
        }

        /** The word used in design files. */
        public String id() {
            return id;
        }
    }
}
