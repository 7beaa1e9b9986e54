package quadmean.volume;

import quadmean.model.CubicRule;

/**
 * How the volumes of measured stems are summed.
 *
 * @param rule formula of the sections
 * @param stumpM height of the stump (m); NaN for the lowest point of each stem
 * @param topCm diameter that the volume ends at (cm), 0 for the tip; inside bark where bark is taken off
 * @param tip solid above the highest point
 */
public record SectionSettings(CubicRule rule, double stumpM, double topCm, Solid tip) {
    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if a size is below zero or the tip a cylinder
     */
    public SectionSettings {
        new StemPart(Double.isNaN(stumpM) ? 0 : stumpM, topCm, rule, tip);
    }

    /** The part of a stem whose lowest point is given (m). */
    StemPart part(double lowestM) {
        return new StemPart(Double.isNaN(stumpM) ? lowestM : stumpM, topCm, rule, tip);
    }
}
