package quadmean.design;

import quadmean.model.Estimator;
import quadmean.model.EstimatorRules;
import quadmean.model.FinitePopulation;
import quadmean.model.OnePlotRule;
import quadmean.model.PlotDesign;
import quadmean.model.Rule;

/** Whether an estimator, and what goes with it, makes sense with the rest of a design. */
final class EstimatorChecks {
    /** Areas that differ by less than this (relative) agree. */
    private static final double AREA_AGREES = 1e-3;

    private final Section root;
    private final Section estimate;
    private final Section selection;
    private final Design design;
    private final EstimatorRules rules;
    private final Estimator estimator;

    private EstimatorChecks(Section root, Section selection, Design design) {
        this.root = root;
        this.estimate = root.table("estimate");
        this.selection = selection;
        this.design = design;
        this.rules = design.estimation().estimation();
        this.estimator = rules.estimator();
    }

    static void check(Section root, Section selection, Design design) {
        EstimatorChecks checks = new EstimatorChecks(root, selection, design);
        checks.list();
        checks.knownNumbers();
        checks.clusters();
        checks.postStrata();
        checks.chances();
        checks.grid();
        checks.singlePlots();
    }

    /** What plots are is said in the list of plots. */
    private void list() {
        boolean needed = estimator != Estimator.MEAN || isOfGrid();
        boolean isOnPaper = root.has("simulate") && design.tallies().isEmpty();
        if (needed && !isOnPaper && design.exceptions().plotList() == null) {
            selection.problem(
                    Rule.DESIGN_MISSING,
                    "plot_list",
                    "",
                    "estimator = \"" + estimator.id() + "\""
                            + (isOfGrid() ? " with a variance by neighbours" : "")
                            + " takes a plot_list that says what each plot is, in columns such as auxiliary, cluster, class,"
                            + " chance, or row and column");
        }
    }

    private void knownNumbers() {
        boolean given = !rules.auxiliaryMeans().isEmpty();
        if (estimator.needsAuxiliaryMean() && !estimate.has("auxiliary_mean")) {
            estimate.problem(
                    Rule.DESIGN_MISSING,
                    "auxiliary_mean",
                    "",
                    "estimator = \"" + estimator.id()
                            + "\" takes auxiliary_mean, the mean of the auxiliary over the whole"
                            + " stand; if you know it from more plots only, use double sampling");
        } else if (given && !estimator.needsAuxiliaryMean()) {
            useless("auxiliary_mean", "\"ratio\" or \"regression\"");
        } else if (estimator == Estimator.RATIO
                && rules.auxiliaryMeans().values().stream().anyMatch(m -> !(m > 0))) {
            estimate.problem(Rule.DESIGN_VALUE, "auxiliary_mean", "", "a ratio needs a mean of the auxiliary above 0");
        }
    }

    private void useless(String key, String of) {
        estimate.problem(
                Rule.DESIGN_VALUE,
                key,
                "",
                key + " is of use with estimator = " + of + " only; take it out, or change the estimator");
    }

    private void clusters() {
        boolean given = estimate.has("clusters_in_stand");
        boolean corrected = design.finitePopulation() == FinitePopulation.CORRECT;
        if (given && !estimator.isClustered()) {
            useless("clusters_in_stand", "\"cluster\" or \"two_stage\"");
        } else if (given && !corrected) {
            estimate.problem(
                    Rule.DESIGN_VALUE,
                    "clusters_in_stand",
                    "",
                    "clusters_in_stand serves the correction for a finite population: write finite_population ="
                            + " \"correct\", or take it out");
        } else if (!given && corrected && estimator.isClustered()) {
            estimate.problem(
                    Rule.DESIGN_MISSING,
                    "clusters_in_stand",
                    "",
                    "finite_population = \"correct\" takes clusters_in_stand, the number of clusters there are");
        }
    }

    private void postStrata() {
        boolean given = !rules.groupAreas().isEmpty();
        if (estimator != Estimator.POST_STRATIFIED) {
            if (given) {
                useless("post_stratum", "\"post_stratified\"");
            }
            return;
        }
        if (!given) {
            estimate.problem(
                    Rule.DESIGN_MISSING,
                    "post_stratum",
                    "",
                    "estimator = \"post_stratified\" takes a table [[estimate.post_stratum]] with code and area for each"
                            + " class");
        } else if (design.strata().size() > 1) {
            estimate.problem(
                    Rule.DESIGN_VALUE,
                    "estimator",
                    estimator.id(),
                    "plots that were drawn in strata are not sorted again: leave [[stratum]] out, or post-stratification");
        } else {
            double sum = rules.groupAreas().values().stream()
                    .mapToDouble(Double::doubleValue)
                    .sum();
            if (Math.abs(sum - design.areaHa()) > AREA_AGREES * design.areaHa()) {
                estimate.problem(
                        Rule.DESIGN_VALUE,
                        "post_stratum",
                        "",
                        "the areas of the post-strata must add up to the area of the stand");
            }
        }
    }

    private void chances() {
        if (!estimator.needsChance()) {
            return;
        }
        if (!(design.plot() instanceof PlotDesign.Fixed)) {
            estimate.problem(
                    Rule.DESIGN_VALUE,
                    "estimator",
                    estimator.id(),
                    "chances belong to plots that tile the tract: they need kind = \"fixed\"");
        }
        if (design.finitePopulation() == FinitePopulation.CORRECT) {
            selection.problem(
                    Rule.DESIGN_VALUE,
                    "finite_population",
                    "correct",
                    "with unequal chances there is no correction besides: take it out");
        }
    }

    private boolean isOfGrid() {
        return rules.variance() != null && rules.variance().isOfGrid();
    }

    private void grid() {
        if (isOfGrid() && !design.selection().isSystematic()) {
            estimate.problem(
                    Rule.DESIGN_VALUE,
                    "variance",
                    estimate.text("variance").orElse(""),
                    "a variance by neighbours is for a grid of plots: write method = \"systematic\", or take it out");
        }
    }

    private void singlePlots() {
        if (rules.onePlot() != OnePlotRule.COLLAPSE) {
            return;
        }
        if (design.strata().size() < 2) {
            estimate.problem(
                    Rule.DESIGN_VALUE,
                    "one_plot",
                    "collapse",
                    "there is no other stratum to share the variation of: write \"no_error\" or \"refuse\"");
        } else if (estimator != Estimator.MEAN || isOfGrid()) {
            estimate.problem(
                    Rule.DESIGN_VALUE,
                    "one_plot",
                    "collapse",
                    "strata are joined for estimator = \"mean\" with variance = \"simple_random\" only; write \"no_error\" or"
                            + " \"refuse\"");
        }
    }
}
