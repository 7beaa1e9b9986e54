package quadmean.height;

import java.util.Map;
import quadmean.model.Calibration;
import quadmean.model.CurveForm;
import quadmean.model.HeightWeights;
import quadmean.units.UnitSystem;

/**
 * How heights are fitted and filled.
 *
 * @param units unit system in which curves are fitted
 * @param breastHeight breast height in the length unit of that system
 * @param formBySpecies forms that the design asks for; a species without an entry gets one chosen
 * @param groupBySpecies groups that lend a curve to species with too few heights; a species without an entry has none
 * @param minHeights heights that a species or group needs for a curve of its own
 * @param offCurve a height this many robust standard deviations from the curve of its species is off the curve
 * @param weights how much each tree counts in a fit
 * @param calibration whether curves may be moved to the level of a plot
 */
public record HeightSettings(
        UnitSystem units,
        double breastHeight,
        Map<String, CurveForm> formBySpecies,
        Map<String, String> groupBySpecies,
        int minHeights,
        double offCurve,
        HeightWeights weights,
        Calibration calibration) {
    public HeightSettings {
        formBySpecies = Map.copyOf(formBySpecies);
        groupBySpecies = Map.copyOf(groupBySpecies);
    }

    /** Settings without groups, with equal weights, calibrating where that helps. */
    public HeightSettings(
            UnitSystem units,
            double breastHeight,
            Map<String, CurveForm> formBySpecies,
            int minHeights,
            double offCurve) {
        this(
                units,
                breastHeight,
                formBySpecies,
                Map.of(),
                minHeights,
                offCurve,
                HeightWeights.EQUAL,
                Calibration.WHERE_IT_HELPS);
    }

    /** No species or group gets a curve of its own. */
    HeightSettings pooledOnly() {
        return new HeightSettings(
                units, breastHeight, Map.of(), Map.of(), Integer.MAX_VALUE, offCurve, weights, Calibration.NEVER);
    }

    /** No curve is moved to the level of a plot, and all trees count alike. */
    HeightSettings uncalibrated() {
        return new HeightSettings(
                units,
                breastHeight,
                formBySpecies,
                groupBySpecies,
                minHeights,
                offCurve,
                HeightWeights.EQUAL,
                Calibration.NEVER);
    }
}
