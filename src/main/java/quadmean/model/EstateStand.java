package quadmean.model;

/**
 * A stand of an estate.
 *
 * @param code its name in the tally
 * @param areaHa area (ha), above zero
 * @param region stands of a region share height curves; empty if there is one region
 * @param stratum stands of a stratum are reported together; empty if there is one stratum
 */
public record EstateStand(String code, double areaHa, String region, String stratum) {
    public EstateStand {
        if (!(areaHa > 0)) {
            throw new IllegalArgumentException("area must be above zero, got " + areaHa);
        }
    }
}
