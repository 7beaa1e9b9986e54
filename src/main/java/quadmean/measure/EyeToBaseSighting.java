package quadmean.measure;

/**
 * Readings at a distance taped straight from the eye to the base of the stem: the base reading gives the slope of the
 * tape, D = S·cos β, then as in {@link HorizontalSighting}. The base angle counts twice, in the distance and in the
 * height; {@link #sensitivity()} allows for that.
 *
 * @param readings the two readings
 * @param tapeDistance distance from the eye straight to the base (m), above 0
 */
public record EyeToBaseSighting(Readings readings, double tapeDistance) implements Sighting {
    /** @throws IllegalArgumentException if the distance is not above zero */
    public EyeToBaseSighting {
        Checks.positive(tapeDistance, "the distance");
    }

    @Override
    public double height() {
        return TreeHeight.between(readings.topTangent(), readings.baseTangent(), distance());
    }

    @Override
    public double distance() {
        return tapeDistance * Math.cos(readings.baseAngle());
    }

    @Override
    public Sensitivity sensitivity() {
        double top = readings.topTangent();
        double base = readings.baseAngle();
        return new Sensitivity(
                height() / tapeDistance,
                0,
                distance() * (1 + top * top),
                -tapeDistance * (top * Math.sin(base) + Math.cos(base)),
                0);
    }
}
