package quadmean.volume;

import java.util.List;
import quadmean.model.BiomassSpec;

/** An equation for dry biomass. It takes dbh in centimetres and knows no height. */
public final class BiomassEquation {
    private final BiomassSpec spec;

    private BiomassEquation(BiomassSpec spec) {
        this.spec = spec;
    }

    /** The equation that a design or the library states. */
    public static BiomassEquation of(BiomassSpec spec) {
        return new BiomassEquation(spec);
    }

    /** The statement of the equation. */
    public BiomassSpec spec() {
        return spec;
    }

    /**
     * Dry biomass of one tree.
     *
     * @param dbhCm dbh (cm), above 0
     * @return kg; NaN where the equation has no positive value
     */
    public double dryKg(double dbhCm) {
        List<Double> c = spec.coefficients();
        double kg = switch (spec.form()) {
            case LOG -> Math.exp(c.get(0) + c.get(1) * Math.log(dbhCm));
            case POWER_SUM -> powerSum(c, dbhCm);
        };
        return kg > 0 && kg < Double.POSITIVE_INFINITY ? kg : Double.NaN;
    }

    private static double powerSum(List<Double> c, double dbhCm) {
        double sum = 0;
        for (int i = 0; i < c.size(); i += 2) {
            sum += c.get(i) * Math.pow(dbhCm, c.get(i + 1));
        }
        return sum;
    }
}
