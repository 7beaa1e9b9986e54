package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
import quadmean.model.Measuring;
import quadmean.stats.MeanEstimate;
import quadmean.units.Attribute;

/**
 * One of the two estimates of 3P sampling for the whole stand, from the same trees.
 *
 * @param attribute what is estimated, per unit area
 * @param estimator which estimate
 * @param mean the estimate with its error (metric)
 */
public record OtherEstimate(Attribute attribute, Measuring.Estimator estimator, MeanEstimate mean) {

    /** Both estimates of each attribute that is known, the one in use first; empty without 3P sampling. */
    static List<OtherEstimate> of(Sample sample, EstimateSettings settings) {
        List<OtherEstimate> list = new ArrayList<>();
        if (!(sample instanceof ThreePSample threeP)
                || !(settings.plot().measuring() instanceof Measuring.ThreeP rules)) {
            return list;
        }
        Measuring.Estimator other = rules.estimator() == Measuring.Estimator.ADJUSTED
                ? Measuring.Estimator.UNADJUSTED
                : Measuring.Estimator.ADJUSTED;
        for (Attribute attribute : settings.attributes()) {
            for (Measuring.Estimator estimator : List.of(rules.estimator(), other)) {
                MeanEstimate e = threeP.mean(PlotValue.of(settings.plot(), attribute, s -> true), estimator);
                if (!Double.isNaN(e.mean())) {
                    list.add(new OtherEstimate(attribute, estimator, e));
                }
            }
        }
        return list;
    }
}
