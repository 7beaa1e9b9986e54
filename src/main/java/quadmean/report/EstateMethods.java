package quadmean.report;

import quadmean.chart.Wording;
import quadmean.cruise.EstateResult;
import quadmean.design.Design;
import quadmean.model.DegreesRule;
import quadmean.model.EstateOnePlot;
import quadmean.model.PlotDesign;

/** How the numbers of an estate were worked out, what is not in their errors, and what an estate does not offer. */
final class EstateMethods {
    private EstateMethods() {}

    static String markup(EstateResult result) {
        Design design = result.design();
        Html html = new Html().section("methods", "Methods").raw("<dl>\n");
        item(
                html,
                "Stands",
                "Each stand is taken as a simple random sample of its own plots: mean, standard error and limits of a stand come"
                        + " from its plots alone. Plots on a grid are taken as if they were random.");
        item(
                html,
                "Strata and estate",
                "Sums over stands, each weighted by its area, which is taken as known: a stratified sample whose strata"
                        + " are the stands (Cochran 1977, chapter 5, from memory).");
        item(html, "Stands with one plot", onePlot(design));
        item(html, "Plots", MethodSection.plots(design));
        item(
                html,
                "Expansion",
                design.plot() instanceof PlotDesign.Point
                        ? "Each tallied tree stands for the basal area factor over its own basal area, in trees per unit area."
                        : "Each tallied tree stands for one over the area of the plot it counts on, in trees per unit area.");
        FieldworkItems.of(design).forEach(i -> item(html, i.term(), i.words()));
        item(html, "Finite population", EstimatorWords.finitePopulation(design));
        item(html, "Degrees of freedom", degrees(design));
        item(
                html,
                "Limits",
                "Estimate ± t·SE with Student's t at "
                        + Wording.confidence(result.estimate().confidence())
                        + " confidence, two-sided. They assume that means of plots vary about normally, which the few plots of a stand do not"
                        + " warrant; over many stands that matters less.");
        item(
                html,
                "Quadratic mean diameter",
                "The dbh of the tree of mean basal area; its error by linearisation of basal area over trees (Cochran"
                        + " 1977, section 2.11, from memory), where there are three plots or more.");
        item(
                html,
                "Heights off the curve",
                "A height more than " + Wording.plain(design.height().offCurve())
                        + " robust standard deviations from the curve of its species and region is listed as a problem; "
                        + MethodSection.offCurve(design) + ".");
        item(
                html,
                "Not in the errors",
                "Errors of height curves and of equations, which stands share and which do not average out; mistakes in"
                        + " measuring; errors of the areas in the table of stands; stands without plots.");
        item(
                html,
                "Not for an estate",
                "Error budgets, limits by the bootstrap, other sampling designs, curves moved to the level of a plot, logs and"
                        + " prices, tables by diameter class, maps, plots still needed, check cruises, and the look for a dbh unlike those of its species. They need the plots of a stand side by side: work"
                        + " the stand by itself, with a design of its own.");
        item(
                html,
                "Rounding",
                "Numbers are cut at the second digit of their standard error; estimate.json and the CSV files have all digits.");
        html.raw("</dl>\n");
        MethodSection.design(html, design);
        return html.endSection().toString();
    }

    private static String degrees(Design design) {
        return design.degreesRule() == DegreesRule.SATTERTHWAITE
                ? EstimatorWords.degrees(design)
                : "Plots minus stands; of a stand, its plots minus one. A stand with one plot brings none.";
    }

    private static String onePlot(Design design) {
        EstateOnePlot rule = design.estate().orElseThrow().onePlot();
        return switch (rule) {
            case POOL ->
                "Such a stand has no error of its own. In the errors of its stratum and of the estate its plot is taken to vary as"
                        + " plots do within the other stands of the stratum (common practice, no source).";
            case NO_ERROR ->
                "Such a stand has no error, and neither has what it is part of: its stratum and the estate.";
        };
    }

    private static void item(Html html, String term, String words) {
        html.element("dt", term).element("dd", words);
    }
}
