package quadmean.estimate;

import java.util.List;
import java.util.Map;
import quadmean.model.DegreesRule;
import quadmean.model.EstimateRules;
import quadmean.model.EstimatorRules;
import quadmean.model.FinitePopulation;
import quadmean.model.IntervalRule;
import quadmean.model.ListedPlot;
import quadmean.model.PlotDesign;
import quadmean.model.SizeRules;
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
 * @param sizes how trees are sorted by size
 * @param attributes what to estimate besides the quadratic mean diameter, in the order of the rows
 * @param products codes of the products that logs are cut for
 * @param missing for attributes that are not known, why
 * @param rules what the design says of how to estimate
 * @param listed the plots of the plan, visited or not, which are the first phase of double sampling
 */
public record EstimateSettings(
        PlotDesign plot,
        FinitePopulation finitePopulation,
        DegreesRule degreesRule,
        double confidence,
        double targetErrorPercent,
        Attribute target,
        SizeRules sizes,
        List<Attribute> attributes,
        List<String> products,
        Map<Attribute, String> missing,
        EstimateRules rules,
        List<ListedPlot> listed) {
    public EstimateSettings {
        listed = List.copyOf(listed);
        attributes = List.copyOf(attributes);
        products = List.copyOf(products);
        missing = Map.copyOf(missing);
    }

    /** Settings without a list of planned plots. */
    public EstimateSettings(
            PlotDesign plot,
            FinitePopulation finitePopulation,
            DegreesRule degreesRule,
            double confidence,
            double targetErrorPercent,
            Attribute target,
            SizeRules sizes,
            List<Attribute> attributes,
            List<String> products,
            Map<Attribute, String> missing,
            EstimateRules rules) {
        this(
                plot,
                finitePopulation,
                degreesRule,
                confidence,
                targetErrorPercent,
                target,
                sizes,
                attributes,
                products,
                missing,
                rules,
                List.of());
    }

    /** The same with other plots in the plan. */
    public EstimateSettings withListed(List<ListedPlot> plan) {
        return with(rules, plan);
    }

    /** The same with another way from plots to estimates. */
    public EstimateSettings with(EstimatorRules estimation) {
        return with(rules.with(estimation), listed);
    }

    /** The same with limits made in another way. */
    EstimateSettings with(IntervalRule interval) {
        return with(
                new EstimateRules(interval, rules.replicates(), rules.estimation(), rules.errors(), rules.product()),
                listed);
    }

    private EstimateSettings with(EstimateRules otherRules, List<ListedPlot> plan) {
        return new EstimateSettings(
                plot,
                finitePopulation,
                degreesRule,
                confidence,
                targetErrorPercent,
                target,
                sizes,
                attributes,
                products,
                missing,
                otherRules,
                plan);
    }

    /** Settings for trees, basal area and volume, and no logs; {@code volumeMissing} says why volumes are not known. */
    public EstimateSettings(
            PlotDesign plot,
            FinitePopulation finitePopulation,
            DegreesRule degreesRule,
            double confidence,
            double targetErrorPercent,
            Attribute target,
            double diameterClassCm,
            String volumeMissing) {
        this(
                plot,
                finitePopulation,
                degreesRule,
                confidence,
                targetErrorPercent,
                target,
                SizeRules.ofWidth(diameterClassCm),
                List.of(Attribute.TREES, Attribute.BASAL_AREA, Attribute.VOLUME),
                List.of(),
                volumeMissing.isEmpty() ? Map.of() : Map.of(Attribute.VOLUME, volumeMissing),
                EstimateRules.STANDARD);
    }

    /** Why an attribute is not known; empty if it is. */
    String whyMissing(Attribute attribute) {
        return missing.getOrDefault(attribute, "");
    }
}
