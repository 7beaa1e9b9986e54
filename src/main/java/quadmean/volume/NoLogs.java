package quadmean.volume;

/** Why no log is cut from a tree. */
public enum NoLogs {
    /** Nothing gives the profile of its species, or the form has none for a tree of its size. */
    NO_PROFILE("no stem profile for its species or size"),
    NO_PRODUCT("no product takes its species and grade"),
    TOO_SHORT("less than the shortest log and its trim between stump and top"),
    TOO_SMALL("thinner than every product takes"),
    TOO_LARGE("thicker than every product takes"),
    NO_VALUE("no log from it would fetch anything");

    private final String label;

    NoLogs(String label) {
        this.label = label;
    }

    /** The words used in outputs. */
    public String label() {
        return label;
    }
}
