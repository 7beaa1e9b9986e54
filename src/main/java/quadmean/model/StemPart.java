package quadmean.model;

/** The part of a stem that a limiting distance reaches; the two differ by half a diameter and are never mixed. */
public enum StemPart {
    CENTRE("centre"),
    FACE("face");

    private final String id;

    StemPart(String id) {
        this.id = id;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }
}
