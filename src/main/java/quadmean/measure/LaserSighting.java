package quadmean.measure;

/**
 * Three-shot laser, sine method: straight distance and angle to the upper mark and to the base,
 * H = S_t·sin α - S_b·sin β. It needs no horizontal distance, and the vertical height is right whatever the lean.
 *
 * @param readings the two readings
 * @param topDistance straight distance from the eye to the upper mark (m), above 0
 * @param baseDistance straight distance from the eye to the base (m), above 0
 */
public record LaserSighting(Readings readings, double topDistance, double baseDistance) implements Sighting {
    /** @throws IllegalArgumentException if a distance is not above zero, or the upper mark comes out below the base */
    public LaserSighting {
        Checks.positive(topDistance, "the distance to the top");
        Checks.positive(baseDistance, "the distance to the base");
        if (!(sine(readings, topDistance, baseDistance) > 0)) {
            throw new IllegalArgumentException("the upper mark comes out below the base;"
                    + " check that the distance to the top comes first and that readings below the eye carry a minus");
        }
    }

    @Override
    public double height() {
        return sine(readings, topDistance, baseDistance);
    }

    @Override
    public String working() {
        return topDistance + " × " + Math.sin(readings.topAngle()) + " - " + baseDistance + " × ("
                + Math.sin(readings.baseAngle()) + ")";
    }

    @Override
    public double distance() {
        return baseDistance * Math.cos(readings.baseAngle());
    }

    @Override
    public Sensitivity sensitivity() {
        double top = readings.topAngle();
        double base = readings.baseAngle();
        return new Sensitivity(
                -Math.sin(base), Math.sin(top), topDistance * Math.cos(top), -baseDistance * Math.cos(base), 0);
    }

    private static double sine(Readings readings, double topDistance, double baseDistance) {
        return topDistance * Math.sin(readings.topAngle()) - baseDistance * Math.sin(readings.baseAngle());
    }
}
