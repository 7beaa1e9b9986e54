package quadmean.model;

import java.util.List;
import java.util.Optional;

/**
 * How stems are cut into logs, and logs measured.
 *
 * @param method how cuts are chosen
 * @param scaling how logs are scaled in board feet; empty if they are not
 * @param cubic how the cubic volume of a log is worked out
 * @param stumpM height of the stump (m)
 * @param trimM length added to each log for squaring its ends (m), not scaled
 * @param wasteStepM shortest piece (m) that may be left between logs when they are cut to the best value, others being
 *     its multiples
 * @param products what logs are cut for, the one preferred most first
 */
public record LogSettings(
        Method method,
        Optional<Scaling> scaling,
        CubicRule cubic,
        double stumpM,
        double trimM,
        double wasteStepM,
        List<Product> products) {
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
