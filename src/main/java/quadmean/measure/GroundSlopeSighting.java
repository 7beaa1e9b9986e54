package quadmean.measure;

/**
 * Readings at a distance taped along sloping ground: the horizontal distance is D = S·cos θ, then as in
 * {@link HorizontalSighting}.
 *
 * @param readings the two readings
 * @param slopeDistance distance along the ground from the eye's plumb point to the base (m), above 0
 * @param ground slope of the ground between the two
 */
public record GroundSlopeSighting(Readings readings, double slopeDistance, Slope ground) implements Sighting {
    /** @throws IllegalArgumentException if the distance is not above zero */
    public GroundSlopeSighting {
        Checks.positive(slopeDistance, "the distance");
    }

    @Override
    public double height() {
        return level().height();
    }

    @Override
    public double distance() {
        return ground.horizontal(slopeDistance);
    }

    @Override
    public Sensitivity sensitivity() {
        Sensitivity level = level().sensitivity();
        return new Sensitivity(
                height() / slopeDistance, 0, level.topAngle(), level.baseAngle(), -height() * Math.tan(ground.angle()));
    }

    private HorizontalSighting level() {
        return new HorizontalSighting(readings, distance());
    }
}
