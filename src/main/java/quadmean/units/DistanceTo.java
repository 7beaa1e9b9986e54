package quadmean.units;

/**
 * Which part of the stem a limiting distance reaches. The two differ by half a diameter and are never mixed in a cruise:
 * that would change the factor by 3 % at 10 ft²/ac and about 6 % at 40 ft²/ac.
 */
public enum DistanceTo {
    /** The centre of the stem, at breast height; taped to its side at right angles to the tape. */
    CENTRE("centre"),
    /** The face of the stem that looks at the point, at breast height. */
    FACE("face");

    private final String id;

    DistanceTo(String id) {
        this.id = id;
    }

    /** The name used in design files and options. */
    public String id() {
        return id;
    }
}
