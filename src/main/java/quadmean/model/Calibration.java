package quadmean.model;

/** Whether height curves are moved to the level of a plot by its measured heights. */
public enum Calibration {
    /** Where trees held out are predicted better for it. */
    WHERE_IT_HELPS("auto"),
    NEVER("never");

    private final String id;

    Calibration(String id) {
        this.id = id;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }
}
