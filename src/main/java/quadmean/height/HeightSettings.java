package quadmean.height;

import java.util.Map;
import quadmean.model.CurveForm;
import quadmean.units.UnitSystem;

/**
 * How heights are fitted and filled.
 *
 * @param units unit system in which curves are fitted
 * @param breastHeight breast height in the length unit of that system
 * @param formBySpecies forms that the design asks for; a species without an entry gets the best by AICc
 * @param minHeights heights that a species needs for a curve of its own
 * @param offCurve a height this many robust standard deviations from the curve of its species is off the curve
 */
public record HeightSettings(
        UnitSystem units, double breastHeight, Map<String, CurveForm> formBySpecies, int minHeights, double offCurve) {
    public HeightSettings {
        formBySpecies = Map.copyOf(formBySpecies);
    }
}
