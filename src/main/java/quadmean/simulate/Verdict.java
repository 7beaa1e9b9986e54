package quadmean.simulate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import quadmean.model.Boundary;
import quadmean.model.IntervalRule;
import quadmean.model.PlotDesign;
import quadmean.stats.Interval;

/** What many cruises mean for the design, in plain words. */
final class Verdict {
    /** Monte Carlo errors beyond which a bias is one. */
    private static final double SURE = 3;
    /** A bias smaller than this share of the true standard error does no harm (common practice, no source). */
    private static final double HARMFUL = 0.25;
    /** A standard error off by more than this is worth a word (no source). */
    private static final double FAR_OFF = 0.05;
    /** Misses on one side at least so many times as often as on the other are lopsided (no source). */
    private static final double LOPSIDED = 2;

    /** Costs that differ by more are not the same. */
    private static final double SAME_TIME = 0.1;

    private final SimulationResult result;
    private final List<LadderStep> ladder;
    private final List<SimulationResult> beside;

    Verdict(SimulationResult result, List<LadderStep> ladder, List<SimulationResult> beside) {
        this.result = result;
        this.ladder = ladder;
        this.beside = beside;
    }

    /** The way of limits that is judged: that of the design where it was tried, else Student's t. */
    static IntervalRule rule(SimulationResult result) {
        IntervalRule own = result.design().estimation().interval();
        boolean isTried = result.target().flatMap(t -> t.coverage(own)).isPresent();
        return isTried ? own : IntervalRule.STUDENT_T;
    }

    private static boolean isTooSeldom(SimulationResult result, Coverage c) {
        return c.limits().upper() < result.design().confidence() - SimulationStudy.TOLERANCE;
    }

    /** Whether the limits held the truth less often than they may. */
    static boolean isTooSeldom(SimulationResult result) {
        return result.target()
                .flatMap(t -> t.coverage(rule(result)))
                .filter(c -> isTooSeldom(result, c))
                .isPresent();
    }

    /** Whether a bias is there for sure, and large enough to do harm. */
    static boolean isBiased(SimulationResult result) {
        return result.target()
                .filter(t -> Math.abs(t.bias()) > SURE * t.biasError() && Math.abs(t.bias()) > HARMFUL * t.sd())
                .isPresent();
    }

    List<String> sentences() {
        List<String> all = new ArrayList<>();
        if (result.target().isEmpty()) {
            return List.of("The true " + result.design().targetAttribute().label()
                    + " of the forest is not known, so that there is nothing to hold the estimates against.");
        }
        AttributeOutcome target = result.target().get();
        all.add(bias(target));
        target.coverage(rule(result)).ifPresent(c -> {
            if (c.intervals() > 0) {
                all.add(coverage(target, c));
                without(target, c).ifPresent(all::add);
                why(target, c).forEach(all::add);
                remedy(target, c).forEach(all::add);
            } else {
                all.add("No cruise had confidence limits: the design gives no standard error.");
            }
        });
        if (target.without() > 0) {
            all.add(target.without() + " of " + result.cruises()
                    + " cruises gave no estimate at all, for want of plots or trees.");
        }
        compare(target).ifPresent(all::add);
        return all;
    }

    /** Limits that could not be worked out are no limits that failed, but the cruise was paid for all the same. */
    private Optional<String> without(AttributeOutcome t, Coverage c) {
        long none = t.estimates() - c.intervals();
        return none == 0
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "%,d of %,d cruises had an estimate and no such limits, and are left out of that share; with them limits"
                                + " were there and held the truth in %s.",
                        none,
                        result.cruises(),
                        percent((double) c.covered() / result.cruises())));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }

    private String bias(AttributeOutcome t) {
        String size =
                String.format(Locale.ROOT, "%+.2f %% ± %.2f %%", t.biasPercent(), 100 * t.biasError() / t.truth());
        String what = t.attribute().label();
        if (Math.abs(t.bias()) <= SURE * t.biasError()) {
            return "No bias was found in the " + what + ": " + size + " (one Monte Carlo standard error).";
        }
        return "The estimate of the " + what + " is biased by " + size + " of the truth"
                + (isBiased(result)
                        ? ", and more plots do not mend that"
                        : ", which is small beside its standard error")
                + "." + boundary();
    }

    private String boundary() {
        Boundary boundary = result.design().plotRules().boundary();
        boolean hasPlots = !(result.design().plot() instanceof PlotDesign.Complete);
        if (hasPlots && (boundary == Boundary.IGNORED || boundary == Boundary.NOT_STATED)) {
            return " Plots reach over the line of the tract and nothing is done about it: write boundary = \"mirage\" or"
                    + " \"walkthrough\".";
        }
        return switch (boundary) {
            case INWARD_SWEEP -> " Half sweeps toward the inside are biased: run mirage or walkthrough.";
            case WALKTHROUGH ->
                " Walkthrough makes up for what lies outside by what lies opposite, which must lie inside: corners, inlets and"
                        + " plots that reach far across the tract leave a bias.";
            default -> "";
        };
    }

    /** "12 points", or how many there were on average. */
    private String plots(int number) {
        String kind = result.design().layout().flatMap(l -> l.cluster()).isPresent()
                ? "clusters"
                : result.design().plot() instanceof PlotDesign.Point ? "points" : "plots";
        return result.design().plot() instanceof PlotDesign.Complete ? "a complete tally" : number + " " + kind;
    }

    private int number() {
        return result.plots() > 0
                ? result.plots()
                : (int) Math.round(result.cost().plots());
    }

    private String coverage(AttributeOutcome target, Coverage c) {
        Interval limits = c.limits();
        double nominal = result.design().confidence();
        String promise = isTooSeldom(result, c)
                ? "less often than it promises"
                : limits.upper() - limits.lower() > 2 * SimulationStudy.TOLERANCE
                        ? "which leaves open whether it is as often as it promises: run more --cruises"
                        : limits.lower() > nominal + SimulationStudy.TOLERANCE
                                ? "more often than it promises: its limits are wider than they need be"
                                : "about as often as it promises";
        return String.format(
                Locale.ROOT,
                "With %s the %s %% interval of the %s (%s) covers the truth in %.1f to %.1f %% of cruises, %s.",
                plots(number()),
                Plain.of(100 * nominal, 8),
                target.attribute().label(),
                c.rule().label(),
                100 * limits.lower(),
                100 * limits.upper(),
                promise);
    }

    private List<String> why(AttributeOutcome t, Coverage c) {
        List<String> why = new ArrayList<>();
        double ratio = Math.sqrt(t.meanVariance()) / t.sd();
        if (Math.abs(ratio - 1) > FAR_OFF) {
            why.add(String.format(
                    Locale.ROOT,
                    "Cruises put their standard error (root mean square) at %.0f %% of what it truly is%s.",
                    100 * ratio,
                    ratio > 1 && result.design().selection().isSystematic()
                            ? ": the grid does better than the random plots that its error is worked out for"
                            : ""));
        }
        double low = Math.max(1, c.below());
        double high = Math.max(1, c.above());
        if (c.below() + c.above() > 0.01 * c.intervals() && Math.max(low / high, high / low) > LOPSIDED) {
            why.add(String.format(
                    Locale.ROOT,
                    "Misses are lopsided: limits lie below the truth in %s of cruises and above it in %s; estimate and"
                            + " standard error rise and fall together (correlation %.2f).",
                    percent((double) c.below() / c.intervals()),
                    percent((double) c.above() / c.intervals()),
                    t.correlation()));
        }
        return why;
    }

    private List<String> remedy(AttributeOutcome t, Coverage c) {
        List<String> advice = new ArrayList<>();
        if (!isTooSeldom(result, c) || isBiased(result)) {
            return advice;
        }
        double good = result.design().confidence() - SimulationStudy.TOLERANCE;
        t.coverages().stream()
                // limits that are given in easy cases alone are no remedy
                .filter(o -> o.rule() != c.rule() && o.intervals() >= c.intervals() && o.share() >= good)
                .findFirst()
                .ifPresent(o -> advice.add(
                        "With the same plots interval = \"" + o.rule().id() + "\" covers " + percent(o.share()) + "."));
        if (!ladder.isEmpty()) {
            LadderStep last = ladder.get(ladder.size() - 1);
            advice.add(
                    last.coverage().share() >= good
                            ? "Use " + last.plots() + ": with so many it covers " + range(last.coverage()) + "."
                            : "Even " + last.plots() + " cover only " + range(last.coverage())
                                    + ": choose another kind of plot or estimator.");
        }
        return advice;
    }

    private static String range(Coverage c) {
        return String.format(
                Locale.ROOT,
                "%.1f to %.1f %%",
                100 * c.limits().lower(),
                100 * c.limits().upper());
    }

    private Optional<String> compare(AttributeOutcome t) {
        if (beside.isEmpty()) {
            return Optional.empty();
        }
        List<SimulationResult> all = new ArrayList<>(List.of(result));
        all.addAll(beside);
        List<String> errors = all.stream()
                .filter(r -> r.outcome(t.attribute()).isPresent())
                .sorted(Comparator.comparingDouble(
                        r -> error(r.outcome(t.attribute()).orElseThrow())))
                .map(r -> name(r, all) + " by "
                        + percent(error(r.outcome(t.attribute()).orElseThrow())) + ofOtherTime(r))
                .toList();
        return Optional.of(String.format(
                Locale.ROOT,
                "For the same time, %s h, estimates of the %s are off (root mean square): %s.",
                Plain.of(result.cost().hours(), 3),
                t.attribute().label(),
                String.join(", ", errors)));
    }

    /** The name of a design, with its file where another has the same. */
    private static String name(SimulationResult r, List<SimulationResult> all) {
        String name = r.design().name();
        long same = all.stream().filter(o -> o.design().name().equals(name)).count();
        return "\"" + name + "\"" + (same > 1 ? " (" + r.design().file().getFileName() + ")" : "");
    }

    /** Where no number of plots brought the times together. */
    private String ofOtherTime(SimulationResult other) {
        double hours = other.cost().hours();
        return Math.abs(hours - result.cost().hours())
                        > SAME_TIME * result.cost().hours()
                ? " (in " + Plain.of(hours, 3) + " h)"
                : "";
    }

    /** Root mean square error as a share of the truth. */
    private static double error(AttributeOutcome t) {
        return t.rootMeanSquareError() / t.truth();
    }
}
