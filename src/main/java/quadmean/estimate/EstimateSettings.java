package quadmean.estimate;

import quadmean.model.DegreesRule;
import quadmean.model.FinitePopulation;
import quadmean.model.PlotDesign;
import quadmean.units.Attribute;

/**
 * How to estimate.
 *
 * @param plot kind and size of the plots
 * @param finitePopulation whether standard errors shrink as plots cover the tract
 * @param degreesRule how degrees of freedom are counted over strata
 * @param confidence confidence level, in (0, 1)
 * @param targetErrorPercent allowed sampling error (percent)
 * @param target attribute that the target applies to
 * @param diameterClassCm width of diameter classes (cm)
 * @param volumeMissing why volumes are not known, empty if they are
 */
public record EstimateSettings(
        PlotDesign plot,
        FinitePopulation finitePopulation,
        DegreesRule degreesRule,
        double confidence,
        double targetErrorPercent,
        Attribute target,
        double diameterClassCm,
        String volumeMissing) {}
