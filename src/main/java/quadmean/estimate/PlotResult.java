package quadmean.estimate;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import quadmean.units.Attribute;

/**
 * What a single plot says, before anything is estimated from it.
 *
 * @param id plot number
 * @param stratum stratum code
 * @param measured trees measured on it, each row as often as the tree counts
 * @param counted trees counted or predicted and not measured
 * @param inside share of the plot's area inside its stratum, in (0, 1]
 * @param perHa value per hectare of each attribute, in its metric unit; NaN where there is none
 * @param reasons why values are NaN
 */
public record PlotResult(
        String id,
        String stratum,
        int measured,
        int counted,
        double inside,
        Map<Attribute, Double> perHa,
        List<String> reasons) {
    public PlotResult {
        perHa = Collections.unmodifiableMap(perHa);
        reasons = List.copyOf(reasons);
    }
}
