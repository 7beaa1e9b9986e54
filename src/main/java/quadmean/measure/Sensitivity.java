package quadmean.measure;

/**
 * Partial derivatives of the height of a sighting: metres of height per unit of each thing read. What a way of sighting
 * does not use is zero.
 *
 * @param distance to the distance, in the three-shot method the one to the base (m per m)
 * @param topDistance to the distance to the upper mark, in the three-shot method only (m per m)
 * @param topAngle to the angle to the upper mark (m per radian)
 * @param baseAngle to the angle to the base (m per radian)
 * @param groundSlope to the angle of the ground (m per radian)
 */
public record Sensitivity(double distance, double topDistance, double topAngle, double baseAngle, double groundSlope) {}
