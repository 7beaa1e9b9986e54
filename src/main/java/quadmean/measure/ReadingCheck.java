package quadmean.measure;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** Finds what is doubtful in the readings of a height. */
public final class ReadingCheck {
    private ReadingCheck() {}

    /**
     * Flags of a single sighting. The three-shot method needs no distance, keeps the error of steep angles small and
     * shows its angles in figures, so that it gets none of the flags about distance, angle and scale.
     *
     * @param eyeHeightM height of the eye above the ground (m), above 0; see {@link CommonPractice#EYE_HEIGHT}
     * @return flags in the order of the enum
     */
    public static Set<HeightFlag> flags(Sighting sighting, double eyeHeightM) {
        Checks.positive(eyeHeightM, "the eye height");
        EnumSet<HeightFlag> flags = EnumSet.noneOf(HeightFlag.class);
        if (!(sighting instanceof LaserSighting)) {
            if (sighting.distance() < sighting.height()) {
                flags.add(HeightFlag.DISTANCE_SHORT);
            }
            if (steepestTangent(sighting.readings()) > 1) {
                flags.add(HeightFlag.ANGLE_STEEP);
            }
            if (halfUnit(sighting) > CommonPractice.AGREEMENT * sighting.height()) {
                flags.add(HeightFlag.SCALE_COARSE);
            }
        }
        if (sighting instanceof HorizontalSighting level
                && Math.abs(groundSlope(level, eyeHeightM).ratio()) > CommonPractice.LEVEL_GROUND) {
            flags.add(HeightFlag.GROUND_NOT_LEVEL);
        }
        if (sighting.height() > CommonPractice.TALLEST_TREE) {
            flags.add(HeightFlag.TALLER_THAN_ANY);
        }
        return Collections.unmodifiableSet(flags);
    }

    /** Flags of all sightings of a tree together, and whether they disagree. */
    public static Set<HeightFlag> flags(TreeReadings readings, double eyeHeightM) {
        EnumSet<HeightFlag> flags = EnumSet.noneOf(HeightFlag.class);
        readings.sightings().forEach(s -> flags.addAll(flags(s, eyeHeightM)));
        if (readings.disagree()) {
            flags.add(HeightFlag.READINGS_DISAGREE);
        }
        return Collections.unmodifiableSet(flags);
    }

    /**
     * The slope of the ground that the base reading implies: on level ground the base is sighted at -eye height/D, so
     * what the base lies higher than that, over the distance, is the slope toward the tree: tan β + eye height/D.
     *
     * @param eyeHeightM height of the eye above the ground (m)
     */
    public static Slope groundSlope(HorizontalSighting sighting, double eyeHeightM) {
        return new Slope(sighting.readings().baseTangent() + eyeHeightM / sighting.distance());
    }

    /** How much half a unit of the scale moves the height (m), at the mark where that is more. */
    public static double halfUnit(Sighting sighting) {
        Readings r = sighting.readings();
        Sensitivity by = sighting.sensitivity();
        double top = Math.abs(by.topAngle()) * AngleError.anglePerUnit(r.scale(), r.top());
        double base = Math.abs(by.baseAngle()) * AngleError.anglePerUnit(r.scale(), r.base());
        return CommonPractice.HALF_A_UNIT * Math.max(top, base);
    }

    private static double steepestTangent(Readings readings) {
        return Math.max(Math.abs(readings.topTangent()), Math.abs(readings.baseTangent()));
    }
}
