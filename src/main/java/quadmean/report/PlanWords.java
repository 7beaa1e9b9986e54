package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import quadmean.chart.Wording;
import quadmean.design.Design;
import quadmean.plan.CruisePlan;
import quadmean.plan.PilotEffect;
import quadmean.plan.PlanOption;
import quadmean.plan.PlanOption.Size;
import quadmean.plan.PlanOption.Spread;
import quadmean.plan.PlanOption.Surer;
import quadmean.plan.SampleKind;
import quadmean.plan.TargetOutlook;

/** A plan in sentences, for the console and the page. */
public final class PlanWords {
    static final String OUT_OF_REACH = "no number of plots reaches the target (looked up to "
            + Rounding.count(PlanOption.MOST_UNITS) + " or all there are); allow a larger error";
    private static final String TREES_OUT_OF_REACH = "not even all trees reach the target";

    private PlanWords() {}

    /** The plan in a few lines of plain text. */
    public static List<String> console(Design design, CruisePlan plan) {
        List<String> lines = new ArrayList<>();
        lines.add(design.name() + ": target "
                + plan.targets().stream().map(PlanWords::target).collect(Collectors.joining(" and "))
                + "; variation " + plan.variation());
        plan.options().forEach(o -> lines.addAll(option(plan, o)));
        plan.pilot().ifPresent(p -> lines.add("  " + pilot(p)));
        plan.notes().forEach(n -> lines.add("  " + n));
        return lines.stream().map(l -> l.replace('\u00a0', ' ')).toList();
    }

    private static String target(TargetOutlook t) {
        return "±" + Wording.percent(t.target().errorPercent()) + " of the "
                + t.target().attribute().label() + " at "
                + Wording.confidence(t.target().confidence()) + " confidence";
    }

    private static List<String> option(CruisePlan plan, PlanOption o) {
        List<String> lines = new ArrayList<>();
        if (!o.isReachable()) {
            lines.add("  " + o.name() + ": " + outOfReach(o));
        } else {
            Size size = o.atTarget().orElseThrow();
            lines.add("  " + o.name() + ": " + count(o, size) + ", expected error "
                    + String.format(Locale.ROOT, "%.2f", size.errorPercent()) + " %" + cost(plan, size) + sure(o));
        }
        if (plan.costs().budget().isPresent()) {
            lines.add("    "
                    + o.inBudget()
                            .map(s -> "for the budget: " + count(o, s) + ", expected error "
                                    + String.format(Locale.ROOT, "%.2f", s.errorPercent()) + " %")
                            .orElse("the budget does not pay for the smallest sample"));
        }
        return lines;
    }

    /** Why an option has no size. */
    static String outOfReach(PlanOption o) {
        return o.kind() == SampleKind.THREE_P ? TREES_OUT_OF_REACH : OUT_OF_REACH;
    }

    /** Plots with what they are made of, where that says more. */
    private static String count(PlanOption o, Size size) {
        String plots = Headline.count(size.plots(), "plot");
        return switch (o.kind()) {
            case SIMPLE -> plots;
            case STRATIFIED -> plots + " (" + parts(o, size) + ")";
            default -> parts(o, size);
        };
    }

    /** What a sample is made of. */
    static String parts(PlanOption o, Size size) {
        return o.kind() == SampleKind.SIMPLE ? Headline.count(size.plots(), "plot") : o.parts(size);
    }

    /** The same in a few words, for what the number of plots does not say. */
    static String shortParts(PlanOption o, Size size) {
        return switch (o.kind()) {
            case STRATIFIED -> o.parts(size);
            case SIMPLE, THREE_P -> "";
            case CLUSTER, TWO_STAGE -> size.units().get(0) + " " + o.partNames().get(0);
            case DOUBLE, COUNT, THREE_P_PLOTS ->
                size.units().get(1) + " " + o.partNames().get(1);
        };
    }

    static String cost(Size size) {
        return Rounding.significant(size.cost(), 3).text(size.cost());
    }

    private static String cost(CruisePlan plan, Size size) {
        return plan.costs().areStated() ? ", " + cost(size) + " " + plan.costs().unit() : "";
    }

    /** The numbers of plots for more assurance, by the pilot where there is one. */
    private static String sure(PlanOption o) {
        boolean pilot = o.surer().stream().anyMatch(s -> s.spread() == Spread.FROM_PILOT);
        return o.surer().stream()
                .filter(s -> (s.spread() == Spread.FROM_PILOT) == pilot)
                .map(s -> "; " + chance(s) + " sure with " + plots(s))
                .collect(Collectors.joining());
    }

    private static String chance(Surer s) {
        return Wording.percent(100 * s.probability());
    }

    private static String plots(Surer s) {
        return s.size().map(z -> Rounding.count(z.plots())).orElse("no number of them");
    }

    /** What the uncertainty of the pilot means. */
    static String pilot(PilotEffect pilot) {
        PilotEffect.Limit limit = pilot.limits().get(0);
        String plots = limit.plots().isPresent() ? limit.plots().getAsInt() + " plots" : "more plots than there can be";
        return "The variation is itself an estimate, on " + Math.round(pilot.df())
                + " degrees of freedom: with " + Wording.percent(100 * limit.confidence())
                + " confidence the true CV is below " + Rounding.percent(limit.cvPercent()) + " (seen: "
                + Rounding.percent(pilot.cvPercent()) + "), and at that it would take " + plots + ".";
    }
}
