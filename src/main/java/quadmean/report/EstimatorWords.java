package quadmean.report;

import quadmean.chart.Wording;
import quadmean.design.Design;
import quadmean.model.DegreesRule;
import quadmean.model.Estimator;
import quadmean.model.EstimatorRules;
import quadmean.model.FinitePopulation;
import quadmean.model.Measuring;
import quadmean.model.OnePlotRule;
import quadmean.model.PlotDesign;
import quadmean.model.SelectionMethod;
import quadmean.model.VarianceForm;

/** How plots become estimates, in words, with what that takes for granted. */
final class EstimatorWords {
    private static final String MEMORY = ", from memory)";

    private final Design design;
    private final EstimatorRules rules;

    private EstimatorWords(Design design) {
        this.design = design;
        this.rules = design.estimation().estimation();
    }

    /** How the plots were chosen, and what their error is taken to be. */
    static String selection(Design design) {
        EstimatorRules rules = design.estimation().estimation();
        VarianceForm variance = rules.variance();
        SelectionMethod method = design.selection();
        if (design.plot() instanceof PlotDesign.Complete) {
            return "every tree was visited";
        }
        if (rules.estimator().needsChance()) {
            return rules.estimator().label();
        }
        if (rules.estimator().isClustered()) {
            return "clusters of plots: " + method.label();
        }
        if (rules.estimator().isDouble()) {
            return method.label() + ", in two phases";
        }
        return method.isSystematic() && variance != null && variance.isOfGrid()
                ? method.label().replace("its error estimated as if it were random", "its error by " + variance.label())
                : method.label();
    }

    /** The estimator of the design. */
    static String estimator(Design design) {
        EstimatorWords words = new EstimatorWords(design);
        if (design.plot().measuring().hasCounts()) {
            return "Not every tree is measured: how counts, predictions and measured trees make the estimate stands with the"
                    + " estimates. A total is the mean times the area, which is taken as known.";
        }
        if (design.plot() instanceof PlotDesign.Complete) {
            return "A total is the sum over all trees, and the mean is the total over the area, which is taken as known.";
        }
        return "Each plot gives one value per unit area. " + words.what() + words.variance() + words.strata()
                + " A total is the mean times the area, which is taken as known.";
    }

    /** The way from plot values to the estimate in a few words. */
    static String way(Design design) {
        if (design.plot().measuring() instanceof Measuring.ThreeP threeP) {
            return "3P sampling, " + threeP.estimator().id();
        }
        if (design.plot().measuring().hasCounts()) {
            return "basal area by count times a ratio to it";
        }
        if (design.plot() instanceof PlotDesign.Complete) {
            return "the sum over the area, with no sampling error";
        }
        EstimatorRules rules = design.estimation().estimation();
        String variance = rules.variance() == null
                ? ""
                : ", variance: " + rules.variance().label();
        return rules.estimator().label() + variance;
    }

    private String what() {
        return switch (rules.estimator()) {
            case MEAN -> mean();
            case RATIO ->
                "The ratio of plot values to the auxiliary is multiplied by the auxiliary's mean over the whole stand, which is"
                        + " taken as known; best where plot values rise in proportion to it (Cochran 1977, chapter 6"
                        + MEMORY
                        + ".";
            case REGRESSION ->
                "A straight line of plot values on the auxiliary is read at the auxiliary's mean over the whole stand, which is"
                        + " taken as known; standard errors on n - 2 degrees of freedom (Cochran 1977, chapter 7"
                        + MEMORY + ".";
            case POST_STRATIFIED ->
                "Plots drawn over the whole stand are sorted into classes; class means are weighted by the areas of the"
                        + " classes, which are taken as known (Cochran 1977, section 5A.9" + MEMORY + ".";
            case DOUBLE_RATIO, DOUBLE_REGRESSION ->
                "The auxiliary is known of every plot of the plan, the trees of some, drawn from them at random. The "
                        + (rules.estimator() == Estimator.DOUBLE_RATIO ? "ratio" : "line")
                        + " of these is read at the mean auxiliary of all; the error counts both samples (Cochran 1977, chapter"
                        + " 12" + MEMORY + ".";
            case DOUBLE_STRATIFIED ->
                "The class is known of every plot of the plan, the trees of some in each class. Class means are weighted by the"
                        + " share of plots in the class; the error counts both samples (Rao 1973; Cochran 1977, section 12.2"
                        + MEMORY + ".";
            case CLUSTER ->
                "The units are clusters drawn at random and read whole; the mean per plot is the ratio of their totals to their"
                        + " sizes, on clusters minus one degrees of freedom (Cochran 1977, chapter 9" + MEMORY + ".";
            case TWO_STAGE ->
                "Clusters are drawn at random, and plots at random within each. Cluster means are weighted by cluster size, on"
                        + " clusters minus one degrees of freedom (Cochran 1977, chapters 10 and 11" + MEMORY + ".";
            case HANSEN_HURWITZ ->
                "Plots were drawn one after the other, with replacement and known chances. Each draw, its plot's total over its"
                        + " chance, is an estimate of the stand; their mean is the estimate and their spread the error (Hansen and"
                        + " Hurwitz 1943). Unbiased if the chances of all plots of the stand add up to one.";
            case HORVITZ_THOMPSON ->
                "Plots came into the sample with known chances, none twice: the sum of their totals over those chances (Horvitz"
                        + " and Thompson 1952), on n - 1 degrees of freedom (common practice, no source).";
        };
    }

    private String mean() {
        boolean grid = rules.variance() != null && rules.variance().isOfGrid();
        if (grid) {
            return "The estimate is their mean; its variance goes by differences between plots that stand side by side, so that"
                    + " what changes slowly over the ground does not count as error. It is not unbiased: one random start tells"
                    + " nothing of other starts (Cochran 1977, section 8.9" + MEMORY + ".";
        }
        return design.strata().size() == 1
                ? "The stand's estimate is their mean, its variance s\u00b2/n (simple random sampling; Cochran 1977,"
                        + " chapter 2, from memory)."
                : "Stratum means are weighted by area: mean = \u03a3 W\u00b7y\u0304, variance = \u03a3 W\u00b2\u00b7s\u00b2/n (stratified sampling;"
                        + " Cochran 1977, chapter 5, from memory).";
    }

    private String variance() {
        VarianceForm form = rules.variance();
        return form == null || form == VarianceForm.SIMPLE_RANDOM
                ? ""
                : " Variance: " + form.label() + ". " + assumption(form);
    }

    /** What a variance takes for granted, as a sentence. */
    static String assumption(VarianceForm form) {
        return switch (form) {
            case SIMPLE_RANDOM -> "Too large where neighbours resemble each other.";
            case SUCCESSIVE_DIFFERENCES ->
                "From the differences of plots that follow each other, row by row to and fro.";
            case NEIGHBOUR_DIFFERENCES -> "From the differences of all neighbours in rows and columns.";
            case OVERLAPPING_BLOCKS ->
                "From all squares of four neighbours, so that an even slope of the ground in any direction falls out"
                        + " (Mat\u00e9rn 1947, from memory).";
            case V0 -> "The linearised variance as it stands.";
            case V2 -> "v0 times the square of the auxiliary's known mean over its mean in the sample.";
            case EXACT ->
                "Counts how far the known mean lies from the sample's; exact where a line with even scatter holds.";
            case LARGE_SAMPLE -> "For many plots; takes the line as known.";
            case LINEARISED -> "Follows the numbers of plots that happened to fall into the classes.";
            case TEXTBOOK -> "An average over all samples of this size.";
            case COCHRAN ->
                "Its second part may be negative, where the auxiliary foretells little, and is not cut off.";
            case HANDBOOK -> "Counts how far the two samples' mean auxiliaries lie apart (Freese 1962, from memory).";
            case HAJEK -> "An approximation for a fixed number of plots (H\u00e1jek 1964).";
            case POISSON -> "For plots drawn each by itself, so that their number is left to chance.";
        };
    }

    private String strata() {
        boolean several = design.strata().size() > 1;
        String separate = several && rules.estimator() != Estimator.MEAN
                ? " Each stratum is estimated for itself, and strata are weighted by area."
                : "";
        return rules.onePlot() == OnePlotRule.COLLAPSE
                ? separate
                        + " A stratum with a single plot shares the variation of the one that the design lists after it (the"
                        + " last: before it)."
                : separate;
    }

    /** What the size of the stand does to the error. */
    static String finitePopulation(Design design) {
        Estimator estimator = design.estimation().estimation().estimator();
        if (estimator.needsChance()) {
            return estimator == Estimator.HANSEN_HURWITZ
                    ? "None: plots were drawn with replacement."
                    : "The chances themselves say how much of the stand is unseen.";
        }
        if (design.finitePopulation() == FinitePopulation.IGNORE) {
            return "No correction: standard errors do not shrink with the share of the tract that plots cover.";
        }
        return "Variances are corrected by 1 - n/N, "
                + (estimator.isClustered()
                        ? "N the number of clusters in the stand"
                        : "N the number of plots that would tile the tract")
                + (estimator == Estimator.TWO_STAGE ? ", and within each cluster by its size." : ".");
    }

    /** How degrees of freedom are counted. */
    static String degrees(Design design) {
        EstimatorRules rules = design.estimation().estimation();
        boolean isPlain = rules.estimator() == Estimator.MEAN
                && (rules.variance() == null || !rules.variance().isOfGrid());
        if (isPlain) {
            return Wording.capital(design.degreesRule().label()) + ".";
        }
        String own = switch (rules.estimator()) {
            case MEAN -> "By the moments of the differences that the variance is made of";
            case REGRESSION, DOUBLE_REGRESSION -> "Plots minus two";
            case CLUSTER, TWO_STAGE -> "Clusters minus one";
            case POST_STRATIFIED, DOUBLE_STRATIFIED -> "Plots minus classes";
            case HANSEN_HURWITZ -> "Draws minus one";
            case RATIO, DOUBLE_RATIO, HORVITZ_THOMPSON -> "Plots minus one";
        };
        if (design.strata().size() == 1) {
            return own + ".";
        }
        return own + " in each stratum; over strata "
                + (design.degreesRule() == DegreesRule.SATTERTHWAITE ? "by Satterthwaite 1946." : "their sum.");
    }

    /** Whether the number of plots for the target follows from the spread between plots. */
    static boolean hasPlotsNeeded(Design design) {
        Estimator estimator = design.estimation().estimation().estimator();
        if (design.plot() instanceof PlotDesign.Point
                && design.plot().measuring() instanceof Measuring.ThreeP threeP
                && threeP.estimator() == Measuring.Estimator.UNADJUSTED) {
            return true;
        }
        boolean allMeasured = !design.plot().measuring().hasCounts() && !(design.plot() instanceof PlotDesign.Complete);
        return allMeasured && !estimator.isDouble() && !estimator.isClustered() && !estimator.needsChance();
    }

    /** The heading of the table of variances. */
    static String heading(Design design) {
        return Wording.capital(design.estimation().estimation().estimator().label());
    }
}
