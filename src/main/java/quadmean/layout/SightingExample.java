package quadmean.layout;

import quadmean.measure.TreeHeight;
import quadmean.units.AngleScale;

/**
 * A height worked out, for the page on how to take one.
 *
 * @param topReading reading to the tip, with its sign
 * @param baseReading reading to the base, with its sign
 * @param distanceM horizontal distance (m)
 * @param topM tip above the eye (m)
 * @param baseM base above the eye (m), negative below
 * @param heightM height (m)
 */
public record SightingExample(
        double topReading, double baseReading, double distanceM, double topM, double baseM, double heightM) {
    static SightingExample of(AngleScale scale, double top, double base, double distanceM) {
        return new SightingExample(
                top,
                base,
                distanceM,
                TreeHeight.fromReadings(scale, top, 0, distanceM),
                TreeHeight.fromReadings(scale, base, 0, distanceM),
                TreeHeight.fromReadings(scale, top, base, distanceM));
    }
}
