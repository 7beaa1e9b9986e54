package quadmean.measure;

import quadmean.units.DistanceTo;

/**
 * A gauge or prism of a basal area factor. By definition a tree is in as far as the circle of its plot holds the factor:
 * factor = 2500·(d/R)² in m²/ha, with d and R in the same unit (10 890·(d/R)² in ft²/ac).
 *
 * @param factor basal area factor (m²/ha), above 0
 */
public record PointGauge(double factor) {
    private static final double M_PER_CM = 0.01;

    /** @throws IllegalArgumentException if the factor is not above zero */
    public PointGauge {
        Checks.positive(factor, "the basal area factor");
    }

    /**
     * Plot radius factor: horizontal limiting distance per dbh. To the centre 0.5/√factor, to the face half a diameter
     * less.
     *
     * @return metres of distance per centimetre of dbh
     */
    public double plotRadiusFactor(DistanceTo to) {
        double centre = 0.5 / Math.sqrt(factor);
        return to == DistanceTo.CENTRE ? centre : centre - M_PER_CM / 2;
    }

    /**
     * Horizontal limiting distance of a tree: plot radius factor times dbh.
     *
     * @param dbhCm dbh (cm), above 0
     * @return distance (m)
     */
    public double limitingDistance(double dbhCm, DistanceTo to) {
        return plotRadiusFactor(to) * Checks.positive(dbhCm, "the dbh");
    }

    /**
     * Limiting distance along the slope of the line to the tree: the horizontal one times √(1 + s²).
     *
     * @param dbhCm dbh (cm), above 0
     * @param toTree slope along the line from the point to the tree, not that of the hill
     * @return distance along the slope (m)
     */
    public double limitingDistance(double dbhCm, DistanceTo to, Slope toTree) {
        return toTree.along(limitingDistance(dbhCm, to));
    }

    /** The angle that the gauge subtends (radians): 2·arcsin(√factor/100), with the factor in m²/ha. */
    public double angle() {
        return 2 * Math.asin(Math.sqrt(factor) / 100);
    }
}
