package quadmean.estimate;

/**
 * A diameter class.
 *
 * @param lowerCm lower limit (cm), which belongs to it
 * @param upperCm upper limit (cm), which belongs to the next
 */
public record DiameterClass(double lowerCm, double upperCm) {
    /** A diameter this close (in classes) below a limit is on it: inches turned into centimetres must not slip. */
    private static final double ON_LIMIT = 1e-9;

    /** The class of a number, the first from 0 up being number 0. */
    static DiameterClass of(int number, double widthCm) {
        return new DiameterClass(number * widthCm, (number + 1) * widthCm);
    }

    /** The number of the class that a dbh lies in. */
    static int number(double dbhCm, double widthCm) {
        return (int) Math.floor(dbhCm / widthCm + ON_LIMIT);
    }

    /** Whether a dbh (cm) lies in it. */
    boolean holds(double dbhCm) {
        double hair = ON_LIMIT * (upperCm - lowerCm);
        return dbhCm >= lowerCm - hair && dbhCm < upperCm - hair;
    }
}
