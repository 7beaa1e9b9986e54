package quadmean.design;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import quadmean.design.PlanSamples.Clusters;
import quadmean.design.PlanSamples.CountRatio;
import quadmean.design.PlanSamples.Doubled;
import quadmean.design.PlanSamples.Predicted;
import quadmean.model.Rule;

/** Reads the tables of {@code [plan]} that describe other ways of sampling than single plots. */
final class PlanSamplesParser {
    private PlanSamplesParser() {}

    static PlanSamples parse(Section plan) {
        return new PlanSamples(
                table(plan, "cluster").map(PlanSamplesParser::cluster),
                table(plan, "two_stage").map(PlanSamplesParser::twoStage),
                table(plan, "double").map(PlanSamplesParser::doubled),
                table(plan, "count").map(PlanSamplesParser::count),
                table(plan, "threep").map(PlanSamplesParser::threeP));
    }

    private static Optional<Section> table(Section plan, String key) {
        return plan.has(key) ? Optional.of(plan.table(key)) : Optional.empty();
    }

    private static Clusters cluster(Section s) {
        Clusters clusters = new Clusters(
                PlanParser.whole(s, "plots", Range.TWO_OR_MORE),
                s.requiredNumber("correlation", Range.ZERO_TO_BELOW_ONE),
                s.requiredNumber("cost", Range.NOT_NEGATIVE),
                s.number("clusters", Range.TWO_OR_MORE_WHOLE),
                OptionalDouble.empty());
        checkSize(s, clusters);
        s.close();
        return clusters;
    }

    private static Clusters twoStage(Section s) {
        Clusters units = new Clusters(
                PlanParser.whole(s, "plots", Range.WHOLE_TO_HUNDRED),
                s.requiredNumber("correlation", Range.ZERO_TO_BELOW_ONE),
                s.requiredNumber("cost", Range.NOT_NEGATIVE),
                s.number("units", Range.TWO_OR_MORE_WHOLE),
                s.number("unit_plots", Range.TWO_OR_MORE_WHOLE));
        OptionalInt plots = units.plots();
        OptionalDouble room = units.unitPlots();
        if (plots.isPresent() && room.isPresent() && plots.getAsInt() > room.getAsDouble()) {
            s.problem(
                    Rule.DESIGN_VALUE,
                    "plots",
                    Integer.toString(plots.getAsInt()),
                    "a unit has room for " + Section.show(room.getAsDouble()) + " plots (unit_plots)");
        }
        checkSize(s, units);
        s.close();
        return units;
    }

    /** The cheapest number of plots is without end where plots of a cluster are not alike. */
    private static void checkSize(Section s, Clusters clusters) {
        if (clusters.plots().isEmpty() && clusters.correlation() == 0) {
            s.problem(
                    Rule.DESIGN_VALUE,
                    "correlation",
                    "0",
                    "with a correlation of 0 the more plots in a cluster the better; say how many with plots");
        }
    }

    private static Doubled doubled(Section s) {
        Doubled doubled = new Doubled(
                s.requiredNumber("correlation", Range.SHARE), s.requiredNumber("count_cost", Range.POSITIVE));
        s.close();
        return doubled;
    }

    private static CountRatio count(Section s) {
        CountRatio count = new CountRatio(
                s.number("count_cv", Range.POSITIVE),
                s.requiredNumber("ratio_cv", Range.POSITIVE),
                s.requiredNumber("count_cost", Range.POSITIVE),
                s.requiredNumber("tree_cost", Range.POSITIVE));
        s.close();
        return count;
    }

    private static Predicted threeP(Section s) {
        Predicted predicted = new Predicted(
                s.choice("where", Options.of(Predicted.Where.values(), Predicted.Where::id))
                        .orElse(Predicted.Where.EVERY_TREE),
                s.requiredNumber("trees", Range.POSITIVE),
                s.number("mean_prediction", Range.POSITIVE),
                s.requiredNumber("ratio_cv", Range.POSITIVE),
                s.number("visit_cost", Range.NOT_NEGATIVE, 0),
                s.requiredNumber("tree_cost", Range.POSITIVE));
        s.close();
        return predicted;
    }
}
