package quadmean.measure;

/**
 * One way of sighting a tree that gives its height. The base may lie below the eye, above it, or the whole tree below.
 *
 * <p>Total height, merchantable height and height to a break differ in the mark only; see {@link Readings}.
 */
public sealed interface Sighting permits HorizontalSighting, GroundSlopeSighting, EyeToBaseSighting, LaserSighting {
    /** The readings to the upper mark and to the base. */
    Readings readings();

    /** Vertical height of the upper mark above the base (m), above 0. */
    double height();

    /** Horizontal distance from the eye to the base of the stem (m), above 0. */
    double distance();

    /** The formula of {@link #height} with its numbers, in metres and tangents. */
    default String working() {
        return distance() + " × (" + readings().topTangent() + " - ("
                + readings().baseTangent() + "))";
    }

    /** How the height answers to each thing read. */
    Sensitivity sensitivity();

    /** How far the eye is above the base of the tree (m); negative below it. */
    default double eyeAboveBase() {
        return -distance() * readings().baseTangent();
    }

    /**
     * What a constant error of the instrument's zero does to the height: it moves both angles the same way, and cancels
     * in part. By a horizontal distance this is D·e·(sec²α - sec²β), first order.
     *
     * @param indexError what the instrument reads too high (radians)
     * @return what the height comes out too high (m)
     */
    default double shiftByIndexError(double indexError) {
        return (sensitivity().topAngle() + sensitivity().baseAngle()) * indexError;
    }
}
