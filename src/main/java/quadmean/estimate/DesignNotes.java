package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
import quadmean.model.Estimator;
import quadmean.model.EstimatorRules;
import quadmean.model.VarianceForm;

/** What a reader should know of a sampling design, in sentences. */
final class DesignNotes {
    private DesignNotes() {}

    static List<String> of(EstimateSettings settings, List<String> single) {
        EstimatorRules rules = settings.rules().estimation();
        List<String> notes = new ArrayList<>();
        if (!single.isEmpty()) {
            String unit = rules.estimator().isClustered() ? "cluster" : "plot";
            notes.add("One " + unit + " only in " + String.join(", ", single) + ": one " + unit
                    + " shows no variation, so there is no standard error for it nor for the whole stand.");
        }
        switch (rules.estimator()) {
            case RATIO, DOUBLE_RATIO ->
                notes.add("An estimate by a ratio is biased by an amount that shrinks as one over the number of plots;"
                        + " with few plots it is not small.");
            case REGRESSION, DOUBLE_REGRESSION ->
                notes.add("An estimate by a regression is biased where the line is not straight, by an amount that"
                        + " shrinks as one over the number of plots. A diameter class or species that is rare may come"
                        + " out below zero; they are shown as they come out, so that the whole adds up.");
            case CLUSTER, TWO_STAGE ->
                notes.add("The units are clusters of plots: n and the degrees of freedom count clusters.");
            case HANSEN_HURWITZ -> notes.add("A plot drawn more than once counts as often: n counts draws.");
            default -> {}
        }
        if (rules.estimator().isDouble() || rules.estimator().isClustered()) {
            notes.add(moreOf(
                    rules.estimator().isDouble()
                            ? "goes by plots listed and plots visited"
                            : "goes by clusters and plots in them"));
        } else if (rules.estimator().needsChance()) {
            notes.add(moreOf("goes by the chances of all plots"));
        }
        return notes;
    }

    private static String moreOf(String error) {
        return "How many more plots the target takes is not worked out for this design: its error " + error + ".";
    }

    static String whyNoBootstrap(EstimatorRules rules) {
        return rules.estimator() == Estimator.HORVITZ_THOMPSON
                ? "no bootstrap limits: plots of which none is drawn twice were not drawn independently, and resamples of them would"
                        + " vary too much; take interval = \"t\" or \"log\""
                : "no bootstrap limits: too few plots to resample; take interval = \"t\" or \"log\"";
    }

    static String whyNoError(EstimatorRules rules) {
        if (rules.variance() == VarianceForm.COCHRAN) {
            return "no standard error: this variance came out below zero; the auxiliary foretells too little";
        }
        return rules.variance() != null && rules.variance().isOfGrid()
                ? "no standard error: no plots stand side by side on the grid, whose rows and columns count 1, 2, 3"
                : "no standard error: too few plots in a cluster, class or stratum";
    }
}
