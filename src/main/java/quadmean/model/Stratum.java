package quadmean.model;

/**
 * A part of the stand that is sampled for itself.
 *
 * @param code short code used in the tally
 * @param name name for people
 * @param areaHa area (ha), above zero
 */
public record Stratum(String code, String name, double areaHa) {
    public Stratum {
        if (!(areaHa > 0)) {
            throw new IllegalArgumentException("area must be above zero, got " + areaHa);
        }
    }
}
