package quadmean.design;

import java.util.Optional;
import quadmean.design.Tolerances.Limit;
import quadmean.design.Tolerances.Scale;

/** Limits that others work with. None of these values was looked up again. */
public enum TolerancePreset {
    NONE("none", Tolerances.NONE),
    /**
     * US national inventory field guide, from memory: dbh ± 0.1 in for each 20 in begun on 95 % of the trees, height ± 10 % on 90 %,
     * species on 95 %, tree count on 90 % of the plots; the edition is not verified.
     */
    NATIONAL_INVENTORY(
            "national_inventory",
            new Tolerances(
                    "US national inventory field guide, from memory",
                    Optional.of(new Limit(0.254, Scale.STEPS, 50.8, 0.95)),
                    Optional.of(new Limit(10, Scale.PERCENT, Double.NaN, 0.90)),
                    Optional.of(Limit.agreement(0.95)),
                    Optional.of(Limit.agreement(0.90)),
                    Optional.empty()));

    private final String id;

    @SuppressWarnings("ImmutableEnumChecker") // a record of records
    private final Tolerances limits;

    TolerancePreset(String id, Tolerances limits) {
        this.id = id;
        this.limits = limits;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }

    /** Its limits. */
    public Tolerances limits() {
        return limits;
    }
}
