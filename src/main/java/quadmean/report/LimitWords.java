package quadmean.report;

import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.design.Design;
import quadmean.model.SelectionMethod;

/** How the confidence limits were made, in words. */
final class LimitWords {
    private LimitWords() {}

    /** The rule in a few words. */
    static String rule(Design design) {
        return switch (design.estimation().interval()) {
            case STUDENT_T -> "estimate ± t × SE";
            case LOG_SCALE -> "on the log scale, estimate × exp(± t × SE / estimate)";
            case PERCENTILE ->
                "by the bootstrap, percentiles of " + design.estimation().replicates() + " resamples, seed "
                        + design.seed();
            case BCA ->
                "by the bootstrap, corrected for bias and skewness (BCa), "
                        + design.estimation().replicates() + " resamples, seed " + design.seed();
        };
    }

    static String of(CruiseResult result) {
        Design design = result.design();
        String level = " at " + Wording.confidence(result.estimate().confidence()) + " confidence, two-sided. ";
        String half =
                " The sampling error is half the width of the limits in percent of the estimate, though they do not lie"
                        + " evenly about it.";
        return switch (design.estimation().interval()) {
            case STUDENT_T ->
                "Estimate ± t·SE with Student's t" + level
                        + "They assume that means of plots vary about normally, which few"
                        + " plots or very uneven ones do not warrant.";
            case LOG_SCALE ->
                "Estimate·exp(±t·SE/estimate) with Student's t" + level
                        + "They lie above zero, and farther from the estimate"
                        + " above than below, as fits uneven plots." + half;
            case PERCENTILE -> "Bootstrap percentiles" + level + resamples(design) + half;
            case BCA ->
                "Bootstrap limits corrected for bias and skewness (BCa; Efron 1987, from memory)" + level
                        + resamples(design) + half;
        };
    }

    private static String resamples(Design design) {
        String words = design.estimation().replicates() + " resamples, seed " + design.seed()
                + ": of the n units that the design draws (the notes name them)"
                + (design.strata().size() > 1 ? " of each stratum" : "")
                + " n - 1 are drawn with replacement, and the estimate is made anew from each, so that resamples vary as it does."
                + " Few plots tell a bootstrap no more than they tell Student's t.";
        return isSystematic(design) ? words + " A systematic sample is drawn from as if its plots were random." : words;
    }

    private static boolean isSystematic(Design design) {
        return design.selection() == SelectionMethod.SYSTEMATIC
                || design.selection() == SelectionMethod.STRATIFIED_SYSTEMATIC;
    }
}
