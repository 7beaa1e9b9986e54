package quadmean.plan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import quadmean.stats.SampleSize;

/**
 * One way to reach the targets.
 *
 * @param kind kind of sample
 * @param name how it is called in sentences
 * @param partNames what its parts are called: strata, stages or phases
 * @param atTarget the smallest sample expected to reach every target it serves; empty if out of reach
 * @param results what that sample does for each target; for one out of reach, the plots that the target alone takes
 * @param surer larger samples that reach the targets with a given probability
 * @param inBudget the largest sample that the budget pays for, if there is a budget and it pays for one
 * @param curve what samples of other sizes do for the first target
 * @param notes what a reader should know, in sentences
 */
public record PlanOption(
        SampleKind kind,
        String name,
        List<String> partNames,
        Optional<Size> atTarget,
        List<TargetResult> results,
        List<Surer> surer,
        Optional<Size> inBudget,
        List<CurvePoint> curve,
        List<String> notes) {
    /** Units of a part that a search goes up to. */
    public static final int MOST_UNITS = SampleSize.LARGEST;

    public PlanOption {
        partNames = List.copyOf(partNames);
        results = List.copyOf(results);
        surer = List.copyOf(surer);
        curve = List.copyOf(curve);
        notes = List.copyOf(notes);
    }

    /**
     * A sample of one size.
     *
     * @param units units of each part
     * @param plots plots to go to; for 3P on every tree, trees to measure
     * @param cost what it costs, in the unit of the design's costs
     * @param errorPercent half width to expect for the first target (percent)
     */
    public record Size(List<Integer> units, int plots, double cost, double errorPercent) {
        public Size {
            units = List.copyOf(units);
        }
    }

    /**
     * What the sample does for a target.
     *
     * @param target the target
     * @param plotsAlone plots that it would take by itself; empty if out of reach
     * @param expectedErrorPercent half width to expect (percent); NaN if the option is out of reach
     * @param chance probability of reaching it, the spread taken as known; NaN likewise
     * @param chanceAfterPilot the same with the spread as uncertain as its pilot leaves it; NaN without a pilot
     */
    public record TargetResult(
            PlanTarget target,
            OptionalInt plotsAlone,
            double expectedErrorPercent,
            double chance,
            double chanceAfterPilot) {}

    /** Whether a spread is taken as known. */
    public enum Spread {
        KNOWN("known"),
        FROM_PILOT("from_pilot");

        private final String id;

        Spread(String id) {
            this.id = id;
        }

        /** The name used in files. */
        public String id() {
            return id;
        }
    }

    /**
     * A sample that reaches each target with a probability.
     *
     * @param probability the probability, in (0, 1)
     * @param spread whether the spread is taken as known
     * @param size the sample; empty if out of reach
     */
    public record Surer(double probability, Spread spread, Optional<Size> size) {}

    /**
     * A point of the curve.
     *
     * @param plots plots
     * @param cost cost
     * @param errorPercent half width to expect (percent)
     */
    public record CurvePoint(int plots, double cost, double errorPercent) {}

    /** Units of each part, none if out of reach; for strata, plots in the order of the outlook. */
    public List<Integer> plots() {
        return atTarget.map(Size::units).orElse(List.of());
    }

    /** Plots in all. */
    public int total() {
        return atTarget.map(Size::plots).orElse(0);
    }

    /** Half width to expect for the first target (percent); NaN if out of reach. */
    public double expectedErrorPercent() {
        return atTarget.map(Size::errorPercent).orElse(Double.NaN);
    }

    /** Whether any sample reaches the targets. */
    public boolean isReachable() {
        return atTarget.isPresent();
    }

    /** Its parts and their units in words, such as {@code N 14, B 9}. */
    public String parts(Size size) {
        return String.join(
                ", ",
                IntStream.range(0, partNames.size())
                        .mapToObj(i -> kind == SampleKind.STRATIFIED
                                ? String.format(
                                        Locale.ROOT,
                                        "%s %,d",
                                        partNames.get(i),
                                        size.units().get(i))
                                : String.format(
                                        Locale.ROOT, "%,d %s", size.units().get(i), partNames.get(i)))
                        .toList());
    }
}
