package quadmean.measure;

/**
 * Readings at a known horizontal distance: H = D·(tan α - tan β), by definition of the tangent. On the percent scale
 * that is D·(t - b)/100, on the topographic scale D·(t - b)/66, on a scale made for 15 or 20 m D·(t - b)/15 or 20.
 *
 * @param readings the two readings
 * @param distance horizontal distance from eye to stem (m), above 0
 */
public record HorizontalSighting(Readings readings, double distance) implements Sighting {
    /** @throws IllegalArgumentException if the distance is not above zero */
    public HorizontalSighting {
        Checks.positive(distance, "the distance");
    }

    @Override
    public double height() {
        return TreeHeight.between(readings.topTangent(), readings.baseTangent(), distance);
    }

    @Override
    public Sensitivity sensitivity() {
        double top = readings.topTangent();
        double base = readings.baseTangent();
        return new Sensitivity(height() / distance, 0, distance * (1 + top * top), -distance * (1 + base * base), 0);
    }
}
