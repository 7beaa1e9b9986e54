package quadmean.model;

/** Whether a tree lives and is sound; a design says which count in which attribute. */
public enum TreeStatus {
    LIVE("live"),
    /** Dead, but standing and still sound. */
    DEAD("dead"),
    /** Living, but of no use for wood. */
    CULL("cull"),
    /** Dead and no longer sound. */
    SNAG("snag");

    private final String id;

    TreeStatus(String id) {
        this.id = id;
    }

    /** The name used in design files and outputs. */
    public String id() {
        return id;
    }
}
