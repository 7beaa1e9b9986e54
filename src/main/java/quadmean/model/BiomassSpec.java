package quadmean.model;

import java.util.List;

/**
 * Dry biomass of a tree, kg from dbh in cm.
 *
 * @param code species code, group, or {@code *} for all the rest
 * @param component what the equation gives, such as {@code aboveground}
 * @param form the form; sums add one power of each pair of coefficients
 * @param coefficients pairs b1, b2 (b0, b1 of a log form)
 * @param range diameters it holds for
 * @param provenance where the coefficients come from
 */
public record BiomassSpec(
        String code, String component, Form form, List<Double> coefficients, ValidRange range, Provenance provenance) {
    public BiomassSpec {
        coefficients = List.copyOf(coefficients);
    }

    /** Forms of biomass equation. */
    public enum Form {
        LOG("log", "kg = exp(b0 + b1·ln d)"),
        POWER_SUM("power_sum", "kg = Σ b1·d^b2");

        private final String id;
        private final String formula;

        Form(String id, String formula) {
            this.id = id;
            this.formula = formula;
        }

        /** The name used in design files. */
        public String id() {
            return id;
        }

        /** The formula. */
        public String formula() {
            return formula;
        }
    }
}
