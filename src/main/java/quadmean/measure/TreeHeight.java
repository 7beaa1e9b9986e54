package quadmean.measure;

import quadmean.units.AngleScale;

/** Tree heights from clinometer readings. */
public final class TreeHeight {
    private TreeHeight() {}

    /**
     * Height from one reading to the tip and one to the base: H = D·(tan top - tan base), by definition of the tangent.
     * Signs take care of a base above the eye.
     *
     * @param scale scale of both readings
     * @param top reading to the tip, with its sign
     * @param base reading to the base, with its sign; negative below the eye
     * @param distanceM horizontal distance from eye to stem (m), above 0
     * @return height (m); not above zero if the readings are the wrong way round
     * @throws IllegalArgumentException if a reading lies outside its scale or the distance is not above zero
     */
    public static double fromReadings(AngleScale scale, double top, double base, double distanceM) {
        Checks.positive(distanceM, "the distance");
        return between(scale.tangent(top), scale.tangent(base), distanceM);
    }

    static double between(double topTangent, double baseTangent, double distanceM) {
        return distanceM * (topTangent - baseTangent);
    }
}
