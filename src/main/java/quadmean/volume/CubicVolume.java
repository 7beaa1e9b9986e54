package quadmean.volume;

import quadmean.model.CubicRule;
import quadmean.units.BasalArea;

/**
 * Cubic volume of a log from its cross-sections. The formulas hold in any units that go together, such as m², m and
 * m³; sizes out of their domain give an {@link IllegalArgumentException}.
 */
public final class CubicVolume {
    private CubicVolume() {}

    /**
     * Huber's formula: middle section times length. Exact for cylinders and frusta of paraboloids.
     *
     * @param middle area of the middle section, zero or more
     * @param length length, above zero
     */
    public static double huber(double middle, double length) {
        return Sizes.notNegative(middle, "middle section") * Sizes.positive(length, "length");
    }

    /**
     * Smalian's formula: mean of the end sections times length. Exact as Huber's is; too large for butts with flare.
     *
     * @param large area of the large end, zero or more
     * @param small area of the small end, zero or more
     * @param length length, above zero
     */
    public static double smalian(double large, double small, double length) {
        return (Sizes.notNegative(large, "large-end section") + Sizes.notNegative(small, "small-end section"))
                / 2
                * Sizes.positive(length, "length");
    }

    /**
     * Newton's formula: the middle section counts four times. Exact for frusta of cylinder, paraboloid, cone and
     * neiloid.
     *
     * @param large area of the large end, zero or more
     * @param middle area of the middle section, zero or more
     * @param small area of the small end, zero or more
     * @param length length, above zero
     */
    public static double newton(double large, double middle, double small, double length) {
        return (smalian(large, small, length) + 2 * huber(middle, length)) / 3;
    }

    /** Volume by the rule named, from cross-sections; sections that the rule does not use are not looked at. */
    public static double ofSections(CubicRule rule, double large, double middle, double small, double length) {
        return switch (rule) {
            case HUBER -> huber(middle, length);
            case SMALIAN -> smalian(large, small, length);
            case NEWTON -> newton(large, middle, small, length);
        };
    }

    /**
     * Volume of a log by the rule named.
     *
     * @param largeCm diameter at the large end (cm), above zero
     * @param middleCm diameter in the middle (cm), above zero
     * @param smallCm diameter at the small end (cm), above zero
     * @param lengthM length (m), above zero
     * @return m³
     */
    public static double ofDiameters(CubicRule rule, double largeCm, double middleCm, double smallCm, double lengthM) {
        return ofSections(
                rule,
                section(Sizes.positive(largeCm, "large-end diameter (cm)")),
                section(Sizes.positive(middleCm, "middle diameter (cm)")),
                section(Sizes.positive(smallCm, "small-end diameter (cm)")),
                Sizes.positive(lengthM, "length (m)"));
    }

    /** Area (m²) of a round cross-section of this diameter (cm). */
    static double section(double diameterCm) {
        return BasalArea.ofTree(diameterCm);
    }
}
