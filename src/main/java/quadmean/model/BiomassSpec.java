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
 * @param library its name in the library; empty if the design states it
 */
public record BiomassSpec(
        String code,
        String component,
        Form form,
        List<Double> coefficients,
        ValidRange range,
        Provenance provenance,
        String library)
        implements EquationSpec {
    public BiomassSpec {
        coefficients = List.copyOf(coefficients);
        boolean pairs = !coefficients.isEmpty() && coefficients.size() % 2 == 0;
        if (!pairs || (form == Form.LOG && coefficients.size() != 2)) {
            throw new IllegalArgumentException("biomass needs pairs of coefficients, the log form one pair");
        }
    }

    /** The same equation for another species, group, or {@code *}. */
    public BiomassSpec forCode(String other) {
        return new BiomassSpec(other, component, form, coefficients, range, provenance, library);
    }

    /** The same equation with more said of where it comes from. */
    public BiomassSpec with(Provenance other) {
        return new BiomassSpec(code, component, form, coefficients, range, other, library);
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
