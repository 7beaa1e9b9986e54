package quadmean.measure;

/**
 * The rules of the trade that this room starts from, in one place. Each is common practice without a source, unless a
 * source stands with it; callers change the errors through {@link HeightErrors} and {@link BorderlineErrors}.
 */
public final class CommonPractice {
    /** Standard deviation of one clinometer reading (radians): 0.25°. Common practice, no source. */
    public static final double ANGLE_SD = Math.toRadians(0.25);

    /** Standard deviation of the distance that a height is read at (m). Common practice, no source. */
    public static final double DISTANCE_SD = 0.10;

    /** Standard deviation of a ground slope (radians): 0.5°. Common practice, no source. */
    public static final double SLOPE_SD = Math.toRadians(0.5);

    /** Standard deviation of the taped distance to a borderline tree (m): about 0.1 ft. Common practice, no source. */
    public static final double BORDERLINE_DISTANCE_SD = 0.03;

    /** Standard deviation of one dbh (cm): 0.1 in. Common practice, no source. */
    public static final double DBH_SD = 0.254;

    /** Height of the eye above the ground (m). Common practice, no source. */
    public static final double EYE_HEIGHT = 1.5;

    /** Part of a unit to which a scale is read. Common practice, no source. */
    public static final double HALF_A_UNIT = 0.5;

    /**
     * Agreement asked of two readings, as a share of their mean: 1 m on a 40 m tree (Brack and Wood, Forest Mensuration
     * notes, Australian National University).
     */
    public static final double AGREEMENT = 0.025;

    /** Slope up to which ground passes for level (ratio): at 10 % a slope distance is 0.5 % long. No source. */
    public static final double LEVEL_GROUND = 0.10;

    /** No tree is taller (m): the tallest known is near 116 m. From memory. */
    public static final double TALLEST_TREE = 130;

    private CommonPractice() {}
}
