package quadmean.cruise;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import quadmean.cruise.ErrorPart.Kind;
import quadmean.cruise.ErrorPart.Source;
import quadmean.design.Design;
import quadmean.estimate.EstimateSettings;
import quadmean.estimate.Resampling;
import quadmean.estimate.SampledPlot;
import quadmean.estimate.StandMean;
import quadmean.estimate.Stem;
import quadmean.height.CurveTable;
import quadmean.height.HeightSettings;
import quadmean.height.HeightedTree;
import quadmean.model.BudgetRule;
import quadmean.model.ErrorRules;
import quadmean.model.Estimator;
import quadmean.model.FinitePopulation;
import quadmean.model.Measuring;
import quadmean.model.Progress;
import quadmean.model.Tally;
import quadmean.stats.BootstrapSample;
import quadmean.stats.MeanEstimate;
import quadmean.units.Attribute;

/**
 * Makes error budgets of the whole stand.
 *
 * @param design the design
 * @param tally the tally that was estimated from
 * @param heights how curves are fitted
 * @param curves the curves
 * @param books what the wood of trees is worked out with
 * @param settings how the stand was estimated
 * @param trees for each plot its trees with their heights
 * @param plots the plots, in the same order
 * @param progress told of long work
 */
record BudgetMaker(
        Design design,
        Tally tally,
        HeightSettings heights,
        CurveTable curves,
        WoodBooks books,
        EstimateSettings settings,
        List<List<HeightedTree>> trees,
        List<SampledPlot> plots,
        Progress progress) {

    /** What gets a budget beside the target. */
    private static final List<Attribute> FURTHER =
            List.of(Attribute.VOLUME, Attribute.NET_BOARD_FEET, Attribute.NET_LOG_VOLUME);

    private static final Set<Attribute> BY_EQUATION = Set.of(
            Attribute.VOLUME,
            Attribute.LOG_VOLUME,
            Attribute.NET_LOG_VOLUME,
            Attribute.BOARD_FEET,
            Attribute.NET_BOARD_FEET,
            Attribute.VALUE,
            Attribute.GREEN_WEIGHT,
            Attribute.BIOMASS,
            Attribute.CARBON);

    /**
     * A budget for the target and the volumes that are known with an error; none if the design asks for none, and none of 3P
     * sampling, where trees of a plot have weights of their own.
     */
    List<ErrorBudget> budgets() {
        if (rules().budget() == BudgetRule.NONE || design.plot().measuring() instanceof Measuring.ThreeP) {
            return List.of();
        }
        Set<Attribute> attributes = new LinkedHashSet<>(List.of(design.targetAttribute()));
        FURTHER.stream().filter(design.attributes()::contains).forEach(attributes::add);
        // every attribute asks for the same trees, a little larger or smaller, and cutting them into logs takes time
        Woods woods = new Woods(design, books, curves);
        Map<HeightedTree, Stem> known = new HashMap<>();
        Function<HeightedTree, Stem> stems = tree -> known.computeIfAbsent(tree, woods::stem);
        return attributes.stream()
                .map(a -> budget(a, stems))
                .flatMap(Optional::stream)
                .toList();
    }

    private ErrorRules rules() {
        return design.estimation().errors();
    }

    private Estimator estimator() {
        return design.estimation().estimation().estimator();
    }

    private String units() {
        return estimator().isClustered() ? "clusters" : "plots";
    }

    /** Where twice as many units do not take off just half. */
    private String halved() {
        String phases = estimator().isDouble() ? " Twice as many means listed and visited alike." : "";
        return design.finitePopulation() == FinitePopulation.CORRECT
                ? phases + " Twice as many take off half of it and more, as they cover more of the tract."
                : phases;
    }

    private Optional<ErrorBudget> budget(Attribute attribute, Function<HeightedTree, Stem> stems) {
        StandMean mean = StandMean.of(design.stratumList(), plots, settings, attribute);
        MeanEstimate estimate = mean.estimate();
        if (!estimate.hasError() || !(estimate.mean() > 0) || !(estimate.se() > 0)) {
            return Optional.empty();
        }
        List<TreeEffect> effects = effects(mean, stems);
        List<ErrorPart> parts = new ArrayList<>();
        parts.add(new ErrorPart(
                Source.PLOTS,
                Kind.SAMPLING,
                estimate.variance(),
                "The variation between " + estimate.n() + " " + units() + ", as in the standard error of the estimate."
                        + halved()));
        Measurement measurement = new Measurement(rules(), effects);
        Modelling modelling = new Modelling(effects, mean.areaHa());
        boolean needsHeights = effects.stream().anyMatch(e -> e.perMetre() != 0);
        if (needsHeights) {
            parts.add(measurement.heightReadings());
        }
        parts.add(measurement.dbhReadings());
        if (needsHeights) {
            parts.add(curveError(mean, effects));
            parts.add(modelling.heightScatter());
            parts.add(measurement.heightBias());
        }
        // basal area by a gauge and trees on a plot do not ask for the dbh
        if (effects.stream().anyMatch(e -> e.perCm() != 0)) {
            parts.add(measurement.dbhBias());
        }
        if (BY_EQUATION.contains(attribute)) {
            parts.add(modelling.equationScatter(attribute, books.volumes()));
            parts.add(Modelling.equations(estimate.mean(), rules().equationPercent()));
        }
        return Optional.of(new ErrorBudget(attribute, estimate, units(), design.confidence(), parts));
    }

    private List<TreeEffect> effects(StandMean mean, Function<HeightedTree, Stem> stems) {
        List<TreeEffect> effects = new ArrayList<>();
        for (int i = 0; i < plots.size(); i++) {
            SampledPlot plot = plots.get(i);
            double weight = mean.weight(plot);
            trees.get(i).forEach(t -> effects.add(TreeEffect.of(mean, plot, weight, t, stems, curves)));
        }
        return effects;
    }

    private ErrorPart curveError(StandMean mean, List<TreeEffect> effects) {
        CurveError error = new CurveError(mean, estimator(), curves, plots, trees, effects);
        ErrorPart byFormula = error.part();
        if (rules().budget() != BudgetRule.BOOTSTRAP || error.isNone()) {
            return byFormula;
        }
        Optional<Resampling> resampling = mean.resampling();
        if (resampling.isEmpty()) {
            return new ErrorPart(
                    Source.CURVES,
                    Kind.ADDED,
                    byFormula.variance(),
                    "The sampling design has no bootstrap, so by formula. " + byFormula.words());
        }
        BootstrapSample sample =
                RefitBootstrap.run(design, heights, curves, mean, resampling.get(), tally.plots(), progress);
        double held = sample.se(0) * sample.se(0);
        double refitted = sample.se(1) * sample.se(1);
        return new ErrorPart(
                Source.CURVES,
                Kind.ADDED,
                refitted - held,
                "What the mean varies more over " + design.estimation().replicates()
                        + " resamples of the " + resampling.get().unit() + " when the curves"
                        + " are fitted again to each, their forms held, than with the curves as they are; the tie between curves and"
                        + " plots is in it.");
    }
}
