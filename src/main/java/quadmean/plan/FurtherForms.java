package quadmean.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.IntFunction;
import quadmean.design.Design;
import quadmean.design.LayoutSettings;
import quadmean.design.PlanCosts;
import quadmean.design.PlanSamples.Clusters;
import quadmean.design.PlanSamples.CountRatio;
import quadmean.design.PlanSamples.Doubled;
import quadmean.design.PlanSamples.Predicted;
import quadmean.plan.SampleForm.Scope;
import quadmean.stats.ClusterPlan;
import quadmean.stats.PlannedSample;
import quadmean.stats.ProductPlan;
import quadmean.stats.SampleSearch;
import quadmean.stats.SampleSize;
import quadmean.stats.SimplePlan;
import quadmean.stats.ThreeP;
import quadmean.stats.TwoPhasePlan;

/** Ways to sample with other than single plots; each for the stand as a whole. */
final class FurtherForms {
    private static final int LARGEST_CLUSTER = 100;
    private static final double INFINITE = Double.POSITIVE_INFINITY;
    /** Step by which fewer cheap readings are tried. */
    private static final double FEWER = 0.8;

    private final Design design;
    private final PlanCosts costs;

    FurtherForms(Design design) {
        this.design = design;
        this.costs = design.plan().costs();
    }

    List<SampleForm> forms(TargetOutlook first) {
        List<SampleForm> forms = new ArrayList<>();
        var samples = design.plan().samples();
        samples.cluster().ifPresent(c -> forms.add(clusters(c, first)));
        samples.twoStage().ifPresent(c -> forms.add(twoStage(c, first)));
        samples.doubled().ifPresent(d -> forms.add(doubled(d, first)));
        samples.count().ifPresent(c -> forms.add(counted(c, first)));
        samples.threeP()
                .ifPresent(p -> forms.add(p.where() == Predicted.Where.EVERY_TREE ? everyTree(p) : onPlots(p, first)));
        return forms;
    }

    private SampleForm form(
            SampleKind kind,
            String name,
            List<String> parts,
            double[] unitCosts,
            Scope scope,
            Function<TargetOutlook, PlannedSample> sample,
            List<String> notes) {
        List<String> all = new ArrayList<>(notes);
        if (design.strata().size() > 1 && kind != SampleKind.THREE_P) {
            all.add("Planned for the stand as a whole, with the variation between strata in it.");
        }
        if (scope == Scope.FIRST_TARGET && !design.plan().targets().isEmpty()) {
            all.add("Planned for the first target alone.");
        }
        return new SampleForm(kind, name, parts, costs.fixed(), unitCosts, scope, sample, all, SampleForm::none);
    }

    private SampleForm clusters(Clusters c, TargetOutlook first) {
        double[] unitCosts = {c.cost(), costs.perPlot()};
        IntFunction<Function<TargetOutlook, PlannedSample>> sample = m -> outlook -> new ClusterPlan(
                outlook.cvPercent(), c.correlation(), m, m, c.units().orElse(INFINITE));
        OptionalInt laid = c.plots().isPresent() ? c.plots() : layoutCluster();
        int m = laid.isPresent() ? laid.getAsInt() : perCluster(c, 2, LARGEST_CLUSTER, sample, unitCosts, first);
        return form(
                SampleKind.CLUSTER,
                "clusters of " + m + " plots",
                List.of("clusters", "plots"),
                unitCosts,
                Scope.ALL_TARGETS,
                sample.apply(m),
                List.of("Plots of a cluster are alike with a correlation of " + plain(c.correlation())
                        + (laid.isPresent() ? "." : "; " + m + " plots a cluster cost least.")));
    }

    /** Plots of the clusters that are laid out. */
    private OptionalInt layoutCluster() {
        return design.layout()
                .flatMap(LayoutSettings::cluster)
                .map(c -> OptionalInt.of(c.plots()))
                .orElse(OptionalInt.empty());
    }

    private SampleForm twoStage(Clusters c, TargetOutlook first) {
        double[] unitCosts = {c.cost(), costs.perPlot()};
        IntFunction<Function<TargetOutlook, PlannedSample>> sample = m -> outlook -> new ClusterPlan(
                outlook.cvPercent(),
                c.correlation(),
                m,
                c.unitPlots().orElse(INFINITE),
                c.units().orElse(INFINITE));
        int room = (int) Math.min(LARGEST_CLUSTER, c.unitPlots().orElse(LARGEST_CLUSTER));
        int m = perCluster(c, 1, room, sample, unitCosts, first);
        return form(
                SampleKind.TWO_STAGE,
                "two stages, " + m + (m == 1 ? " plot" : " plots") + " in each unit",
                List.of("units", "plots"),
                unitCosts,
                Scope.ALL_TARGETS,
                sample.apply(m),
                List.of("Plots of a unit are alike with a correlation of " + plain(c.correlation())
                        + (c.plots().isPresent()
                                ? "."
                                : "; " + m + (m == 1 ? " plot a unit costs least." : " plots a unit cost least."))));
    }

    /** As the design says, or the number that costs least at the target; where none reaches it, that of large samples. */
    private int perCluster(
            Clusters c,
            int least,
            int most,
            IntFunction<Function<TargetOutlook, PlannedSample>> sample,
            double[] unitCosts,
            TargetOutlook first) {
        if (c.plots().isPresent()) {
            return c.plots().getAsInt();
        }
        double large = ClusterPlan.bestPerCluster(Math.max(c.cost(), 1e-9), costs.perPlot(), c.correlation());
        int best = (int) Math.max(least, Math.min(most, Math.rint(large)));
        double lowest = costAt(sample.apply(best).apply(first), unitCosts, first);
        for (int m = least; m <= most; m++) {
            double cost = costAt(sample.apply(m).apply(first), unitCosts, first);
            if (cost < lowest) {
                best = m;
                lowest = cost;
            }
        }
        return best;
    }

    private static double costAt(PlannedSample sample, double[] unitCosts, TargetOutlook first) {
        var n = SampleSearch.smallest(sample, first.target().goal());
        return n.isPresent() ? SampleSearch.cost(sample.parts(n.getAsInt()), 0, unitCosts) : INFINITE;
    }

    private SampleForm doubled(Doubled d, TargetOutlook first) {
        double[] unitCosts = {d.countCost(), costs.perPlot()};
        double ratio = readings(d, unitCosts, first);
        return form(
                SampleKind.DOUBLE,
                "double sampling",
                List.of("plots with the cheap reading", "of them measured"),
                unitCosts,
                Scope.FIRST_TARGET,
                outlook -> new TwoPhasePlan(outlook.cvPercent(), d.correlation(), ratio),
                List.of("A correlation of " + plain(d.correlation()) + " and these costs make "
                        + plain(ratio) + " cheap readings for each measured plot the least dear"
                        + (ratio == 1 ? ": it does not pay." : ".")));
    }

    /**
     * Cheap readings for each measured plot: the best of large samples, or fewer where that costs less at the target, for a small
     * sample has few degrees of freedom and needs its measured plots anyway.
     */
    private static double readings(Doubled d, double[] unitCosts, TargetOutlook first) {
        double best = TwoPhasePlan.bestRatio(d.correlation(), unitCosts[0], unitCosts[1]);
        double lowest = INFINITE;
        for (double ratio = best; ratio >= 1; ratio *= FEWER) {
            double cost = costAt(new TwoPhasePlan(first.cvPercent(), d.correlation(), ratio), unitCosts, first);
            if (cost < lowest) {
                best = ratio;
                lowest = cost;
            }
        }
        return best;
    }

    private SampleForm counted(CountRatio c, TargetOutlook first) {
        double countCv = c.countCvPercent().orElse(first.cvPercent());
        double perPoint = ProductPlan.bestTreesPerUnit(countCv, c.ratioCvPercent(), c.countCost(), c.treeCost());
        return form(
                SampleKind.COUNT,
                "counts and measured trees",
                List.of("points counted", "trees measured"),
                new double[] {c.countCost(), c.treeCost()},
                Scope.FIRST_TARGET,
                outlook -> new ProductPlan(countCv, c.ratioCvPercent(), perPoint),
                List.of(
                        "Counts vary by " + plain(countCv) + " % between points"
                                + (c.countCvPercent().isPresent() ? "" : " (taken from the target, no count_cv)")
                                + " and volume per basal area by " + plain(c.ratioCvPercent())
                                + " % between trees; measure trees spread over all points, the two errors taken as independent."));
    }

    private SampleForm onPlots(Predicted p, TargetOutlook first) {
        double perPlot = costs.perPlot() + p.trees() * p.visitCost();
        double best = Math.min(
                p.trees(), ProductPlan.bestTreesPerUnit(first.cvPercent(), p.ratioCvPercent(), perPlot, p.treeCost()));
        SampleForm form = form(
                SampleKind.THREE_P_PLOTS,
                "3P on plots",
                List.of("plots with predictions", "trees measured"),
                new double[] {perPlot, p.treeCost()},
                Scope.FIRST_TARGET,
                outlook -> new ProductPlan(outlook.cvPercent(), p.ratioCvPercent(), best),
                List.of("Sums of predictions are taken to vary between plots as the target does."));
        return predicted(form, 0, parts -> draw(p, parts[0] * p.trees(), parts[1]));
    }

    private SampleForm everyTree(Predicted p) {
        SampleForm form = form(
                SampleKind.THREE_P,
                "3P on every tree",
                List.of("trees measured"),
                new double[] {p.treeCost()},
                Scope.FIRST_TARGET,
                outlook -> new SimplePlan(p.ratioCvPercent(), INFINITE, (int) Math.min(SampleSize.LARGEST, p.trees())),
                List.of("Every one of " + plain(p.trees()) + " trees is visited and its volume predicted."));
        return predicted(form, p.trees() * p.visitCost(), parts -> draw(p, p.trees(), parts[0]));
    }

    private static SampleForm predicted(SampleForm form, double visits, Function<int[], List<String>> remarks) {
        return new SampleForm(
                form.kind(),
                form.name(),
                form.partNames(),
                form.fixedCost() + visits,
                form.costs(),
                form.scope(),
                form.sample(),
                form.notes(),
                remarks);
    }

    /** How so many of the trees come to be measured: the number is left to chance, about as Poisson's. */
    private static List<String> draw(Predicted p, double trees, int measured) {
        if (measured >= trees) {
            return List.of("That is every tree.");
        }
        List<String> notes = new ArrayList<>();
        p.meanPrediction()
                .ifPresent(mean -> notes.add("Limit of the random numbers: "
                        + plain(ThreeP.limit(trees * mean, measured)) + ", the sum of " + plain(trees)
                        + " predictions of " + plain(mean) + " over " + measured + " trees to measure."));
        long spread = Math.round(2 * Math.sqrt(measured));
        notes.add("The draw decides how many trees are measured: about " + Math.max(0, measured - spread) + " to "
                + (measured + spread) + " in 19 of 20 draws.");
        return notes;
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(3))
                .stripTrailingZeros()
                .toPlainString();
    }
}
