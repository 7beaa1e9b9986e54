package quadmean.measure;

/**
 * Lean of a tree, and what it does to a height read at one horizontal distance. The height meant is the vertical one,
 * from the base to the level of the tip; the tip stands x = H·tan λ beside the plumb line over the base.
 *
 * @param angle lean from the vertical (radians), from 0 to below π/4
 */
public record Lean(double angle) {
    /** @throws IllegalArgumentException if the angle is not from 0 to below 45° */
    public Lean {
        if (!(angle >= 0 && angle < Math.PI / 4)) {
            throw new IllegalArgumentException(
                    "a lean must be from 0 to below 45 degrees, got " + Math.toDegrees(angle));
        }
    }

    /** How far the tip stands beside the base (same unit as the height). */
    public double tipOffset(double height) {
        return height * Math.tan(angle);
    }

    /**
     * What the part of a tree above the eye seems to measure: tan α = rise / (distance to the tip's plumb point), taken
     * at the distance to the stem. Toward: D/(D - x) times the rise; away: D/(D + x); across: D/√(D² + x²).
     *
     * @param rise height of the tip above the eye
     * @param offset x, the tip beside the point that the distance was measured to, same unit
     * @param distance horizontal distance, same unit, above 0
     * @throws IllegalArgumentException if the tip leans over the observer
     */
    public static double apparentRise(LeanDirection direction, double rise, double offset, double distance) {
        double toPlumbPoint = switch (direction) {
            case TOWARD -> distance - offset;
            case AWAY -> distance + offset;
            case ACROSS -> Math.hypot(distance, offset);
        };
        return rise * distance / Checks.positive(toPlumbPoint, "the distance to the point under the tip");
    }

    /**
     * How much too high a height comes out if the tree leans this way and the distance was measured to its base;
     * negative where it comes out low. Found by solving {@link #apparentRise} for the true height. The three-shot
     * method is not moved by lean.
     *
     * @return height read less true height (m)
     * @throws IllegalArgumentException if the sight is too steep for this lean: the tree would have no tip
     */
    public double misreading(LeanDirection direction, Sighting sighting) {
        if (sighting instanceof LaserSighting) {
            return 0;
        }
        double share = sighting.readings().topTangent() * Math.tan(angle);
        if (!(Math.abs(share) < 1)) {
            throw new IllegalArgumentException("the sight to the top is too steep for a lean of "
                    + Math.toDegrees(angle) + " degrees; sight from farther away, across the lean");
        }
        double read = sighting.height();
        return switch (direction) {
            case TOWARD -> read - read / (1 + share);
            case AWAY -> read - read / (1 - share);
            case ACROSS -> read - acrossTheLean(sighting, share);
        };
    }

    /** Solves (H - e)² = tan²α·(D² + H²·tan²λ), where e is the eye above the base. */
    private static double acrossTheLean(Sighting sighting, double share) {
        double rise = sighting.distance() * sighting.readings().topTangent();
        double eye = sighting.eyeAboveBase();
        double rest = 1 - share * share;
        return (eye + Math.signum(rise) * Math.sqrt(eye * eye + rest * (rise * rise - eye * eye))) / rest;
    }
}
