package quadmean.measure;

/**
 * What one standard deviation of each thing read moves the height (m), with its sign.
 *
 * @param distance of the distance, in the three-shot method the one to the base
 * @param topDistance of the distance to the upper mark, in the three-shot method only
 * @param topAngle of the reading to the upper mark
 * @param baseAngle of the reading to the base
 * @param groundSlope of the slope of the ground
 */
public record ErrorShares(double distance, double topDistance, double topAngle, double baseAngle, double groundSlope) {
    /** Standard deviation of the height (m): root of the sum of squares. */
    public double total() {
        return Math.sqrt(shared() + own());
    }

    /** Variance (m²) that all readings from one spot share: distances and slope. */
    double shared() {
        return distance * distance + topDistance * topDistance + groundSlope * groundSlope;
    }

    /** Variance (m²) that belongs to one pair of readings. */
    double own() {
        return topAngle * topAngle + baseAngle * baseAngle;
    }
}
