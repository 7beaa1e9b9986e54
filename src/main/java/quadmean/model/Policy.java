package quadmean.model;

import java.util.EnumSet;
import java.util.Set;

/** What happens to a row that breaks a rule. */
public enum Policy {
    /** The run stops after all problems are listed. */
    REFUSE("refuse"),
    /** The row is left out of every estimate and listed. */
    DROP("drop"),
    /** The row is used as the rule says, and listed. */
    KEEP("keep");

    private final String id;

    Policy(String id) {
        this.id = id;
    }

    /** Refusal, which every rule allows, and others. */
    static Set<Policy> refuseOr(Policy... others) {
        Set<Policy> set = EnumSet.of(REFUSE);
        set.addAll(Set.of(others));
        return set;
    }

    /** The name used in design files and in {@code problems.csv}. */
    public String id() {
        return id;
    }
}
