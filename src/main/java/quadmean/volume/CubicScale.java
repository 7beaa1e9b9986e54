package quadmean.volume;

import quadmean.model.CubicRule;

/**
 * Logs measured by a cubic formula alone: they have no board feet.
 *
 * @param rule the formula
 */
public record CubicScale(CubicRule rule) implements LogMeasure {
    @Override
    public double cubicMetres(double largeEndCm, double middleCm, double smallEndCm, double lengthM) {
        return CubicVolume.ofDiameters(rule, largeEndCm, middleCm, smallEndCm, lengthM);
    }

    @Override
    public double boardFeet(double smallEndCm, double largeEndCm, double lengthM) {
        return Double.NaN;
    }
}
