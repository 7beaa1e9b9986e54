package quadmean.model;

/** When a cruise that is walked subset by subset may stop before its plan is done. */
public enum StoppingRule {
    /** Once half the width of the usual limits is at or below the target. */
    SEQUENTIAL("sequential"),
    /** Once there are as many plots as the first stage asked for. */
    TWO_STAGE("two_stage");

    private final String id;

    StoppingRule(String id) {
        this.id = id;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }
}
