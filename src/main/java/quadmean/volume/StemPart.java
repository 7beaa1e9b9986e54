package quadmean.volume;

import quadmean.model.CubicRule;

/**
 * Which part of a stem is wanted, and how its volume is worked out.
 *
 * @param stumpM height of the stump (m), zero or more
 * @param topCm diameter that the part ends at (cm), on the side of the bark that the stem is on; 0 for the tip
 * @param rule formula of the sections; Huber and Newton serve pairs of sections of equal length, Smalian the rest
 * @param tip solid above the highest measured point; it must taper
 */
public record StemPart(double stumpM, double topCm, CubicRule rule, Solid tip) {
    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if a size is out of its domain or the tip a cylinder
     */
    public StemPart {
        Sizes.notNegative(stumpM, "stump (m)");
        Sizes.notNegative(topCm, "top diameter (cm)");
        if (tip == Solid.CYLINDER) {
            throw new IllegalArgumentException("a tip must taper, got a cylinder");
        }
    }
}
