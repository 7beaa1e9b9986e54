package quadmean.volume;

/**
 * Solids of revolution that parts of stems are likened to: the squared radius grows with the distance x from the tip
 * as y² = k·x^r. Formulas by definition; they hold in any units that go together.
 */
public enum Solid {
    CYLINDER("cylinder", 0),
    PARABOLOID("paraboloid", 1),
    CONE("cone", 2),
    NEILOID("neiloid", 3);

    private static final double SAME_ENDS = 1e-9;

    private final String label;
    private final int exponent;

    Solid(String label, int exponent) {
        this.label = label;
        this.exponent = exponent;
    }

    /** The word used in outputs. */
    public String label() {
        return label;
    }

    /** The exponent r. */
    public int exponent() {
        return exponent;
    }

    /**
     * Volume of the whole solid: base·length/(r + 1).
     *
     * @param base area of the base, zero or more
     * @param length length, above zero
     * @throws IllegalArgumentException if a size is out of its domain
     */
    public double whole(double base, double length) {
        return Sizes.notNegative(base, "base") * Sizes.positive(length, "length") / (exponent + 1);
    }

    /**
     * Volume of a frustum.
     *
     * @param large area of the large end, zero or more
     * @param small area of the small end, from zero to that of the large end
     * @param length length, above zero
     * @throws IllegalArgumentException if a size is out of its domain, or the ends of a cylinder differ
     */
    public double frustum(double large, double small, double length) {
        checkEnds(large, small);
        double sum = switch (this) {
            case CYLINDER -> large;
            case PARABOLOID -> large + small;
            case CONE -> large + Math.sqrt(large) * Math.sqrt(small) + small;
            case NEILOID -> neiloidSum(Math.cbrt(large), Math.cbrt(small));
        };
        return sum * Sizes.positive(length, "length") / (exponent + 1);
    }

    /**
     * Area of the section at a share of the way from the tip to the base.
     *
     * @param base area of the base, zero or more
     * @param share distance from the tip over the length, in [0, 1]
     * @throws IllegalArgumentException if a value is out of its domain
     */
    public double section(double base, double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("share of the length must lie in [0, 1], got " + share);
        }
        return Sizes.notNegative(base, "base") * Math.pow(share, exponent);
    }

    private void checkEnds(double large, double small) {
        Sizes.notNegative(large, "large end");
        Sizes.notNegative(small, "small end");
        if (small > large) {
            throw new IllegalArgumentException("the small end, " + small + ", must not exceed the large, " + large);
        }
        if (this == CYLINDER && large - small > SAME_ENDS * large) {
            throw new IllegalArgumentException("the ends of a cylinder are equal, got " + large + " and " + small);
        }
    }

    private static double neiloidSum(double large, double small) {
        return large * large * large + large * large * small + large * small * small + small * small * small;
    }
}
