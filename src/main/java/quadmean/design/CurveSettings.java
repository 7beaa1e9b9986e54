package quadmean.design;

import quadmean.model.Calibration;
import quadmean.model.HeightFilling;
import quadmean.model.HeightWeights;

/**
 * How height curves are fitted and used.
 *
 * @param weights how much each tree counts in a fit
 * @param calibration whether curves may be moved to the level of a plot
 * @param filling what a tree without a height gets
 */
public record CurveSettings(HeightWeights weights, Calibration calibration, HeightFilling filling) {
    /** What a design gets that says nothing of this. */
    public static final CurveSettings USUAL =
            new CurveSettings(HeightWeights.EQUAL, Calibration.WHERE_IT_HELPS, HeightFilling.MEAN);
}
