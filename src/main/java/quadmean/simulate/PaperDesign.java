package quadmean.simulate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import quadmean.design.Design;
import quadmean.design.FollowUp;
import quadmean.design.LayoutSettings;
import quadmean.design.LayoutSettings.Extent;
import quadmean.design.LayoutSettings.Pattern;
import quadmean.design.LayoutSettings.Walking;
import quadmean.design.PlotExceptions;
import quadmean.design.StratumEntry;
import quadmean.design.WoodSettings;
import quadmean.layout.FieldPlan;
import quadmean.model.EstimateRules;
import quadmean.model.Estimator;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.model.Stratum;
import quadmean.units.Attribute;

/**
 * A design made ready for cruises on paper: its own rules on the ground of a known forest, without what belongs to the real cruise alone,
 * such as tallies and lists of plots.
 *
 * @param design the design on that ground
 * @param layout how plots are laid out
 * @param plots plots (or clusters) by stratum; of double sampling those listed
 * @param visited plots visited in each stratum under double sampling; the same as {@code plots} otherwise
 */
record PaperDesign(Design design, LayoutSettings layout, Map<String, Integer> plots, Map<String, Integer> visited) {
    /** Points with measured trees are named up to this number. */
    private static final int MOST_PLOTS = 10_000;

    /** Common practice, no source: the defaults of {@code [layout]}. */
    private static final Walking USUAL =
            new Walking(List.of(), OptionalDouble.empty(), LayoutSettings.Slopes.NONE, 2000, 1 / 3.0, 8);

    /**
     * Makes a design ready.
     *
     * @param scale times as many plots as the design has
     * @throws IllegalArgumentException with a sentence for the user if the design does not say what is needed
     */
    static PaperDesign of(Design real, Forest forest, double scale) {
        LayoutSettings layout = layout(real, scale);
        Map<String, Integer> visited = plots(real, forest, layout, scale);
        Map<String, Integer> plots = visited;
        if (real.estimation().estimation().estimator().isDouble()) {
            int listed = real.simulation()
                    .listed()
                    .orElseThrow(() -> new IllegalArgumentException(
                            "double sampling takes simulate.listed, the number of plots of the first phase"));
            plots = FieldPlan.shared(forest.tract(), (int) Math.round(listed * scale));
        }
        return new PaperDesign(design(real, forest, layout), layout, plots, visited);
    }

    /** Number of plots (or clusters) asked for in all; of double sampling those visited. */
    int total() {
        return visited.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** What estimates are whole multiples of: basal area of so many points is a number of trees; 0 for what may be anything. */
    double step(Attribute attribute) {
        boolean isCount = attribute == Attribute.BASAL_AREA
                && design.plot() instanceof PlotDesign.Point
                && design.strata().size() == 1
                && design.estimation().estimation().estimator() == Estimator.MEAN
                && !layout.pattern().isGrid()
                && layout.cluster().isEmpty()
                && !(design.plot().measuring() instanceof Measuring.ThreeP);
        return isCount ? ((PlotDesign.Point) design.plot()).perTree() / total() : 0;
    }

    private static LayoutSettings layout(Design real, double scale) {
        LayoutSettings given = real.layout().orElseGet(() -> usual(real));
        double closer = 1 / Math.sqrt(scale);
        return new LayoutSettings(
                given.pattern(),
                given.extent(),
                given.plots(),
                times(given.spacingM(), closer),
                times(given.rowSpacingM(), closer),
                given.bearingDegrees(),
                given.bufferM(),
                given.cluster(),
                given.walking(),
                given.largestDbhCm());
    }

    private static OptionalDouble times(OptionalDouble length, double k) {
        return length.isPresent() ? OptionalDouble.of(k * length.getAsDouble()) : length;
    }

    /** Where the design has no layout: a grid for systematic samples, else places at random. */
    private static LayoutSettings usual(Design real) {
        return new LayoutSettings(
                real.selection().isSystematic() ? Pattern.SQUARE : Pattern.RANDOM,
                real.selection().isStratified() ? Extent.STRATUM : Extent.TRACT,
                OptionalInt.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                0,
                Optional.empty(),
                USUAL,
                100);
    }

    private static Map<String, Integer> plots(Design real, Forest forest, LayoutSettings layout, double scale) {
        if (real.plot() instanceof PlotDesign.Complete || layout.spacingM().isPresent()) {
            return Map.of();
        }
        OptionalInt asked = real.simulation().plots(layout.plots());
        if (asked.isPresent()) {
            int n = (int) Math.max(1, Math.round(asked.getAsInt() * scale));
            return FieldPlan.shared(forest.tract(), n);
        }
        Map<String, Integer> listed = new LinkedHashMap<>();
        for (StratumEntry s : real.strata()) {
            if (s.plots().isEmpty()) {
                throw new IllegalArgumentException(
                        "the number of plots is not known: write simulate.plots or layout.plots, or list the plots");
            }
            listed.put(
                    s.stratum().code(), (int) Math.max(1, Math.round(s.plots().size() * scale)));
        }
        return listed;
    }

    private static Design design(Design real, Forest forest, LayoutSettings layout) {
        Map<String, Ground> grounds = forest.strata();
        List<StratumEntry> strata = new ArrayList<>();
        for (StratumEntry s : real.strata()) {
            Stratum own = s.stratum();
            double areaHa = Objects.requireNonNull(grounds.get(own.code())).areaHa();
            strata.add(new StratumEntry(
                    new Stratum(own.code(), own.name(), areaHa),
                    List.of(),
                    s.expectedMean(),
                    s.expectedCvPercent(),
                    s.plotCost(),
                    s.fewestPlots()));
        }
        return with(real, strata, plot(real), estimation(real, forest), Optional.of(layout));
    }

    /** The mean of the auxiliary that a ratio or a regression needs is that of the forest. */
    private static EstimateRules estimation(Design real, Forest forest) {
        EstimateRules rules = real.estimation();
        return rules.estimation().estimator().needsAuxiliaryMean()
                ? rules.with(rules.estimation().withAuxiliaryMeans(Auxiliary.means(real, forest)))
                : rules;
    }

    /** Where the design says every so many-th point, these points are named. */
    private static PlotDesign plot(Design real) {
        OptionalInt every = real.simulation().measureEvery();
        if (real.plot() instanceof PlotDesign.Point p
                && p.measuring() instanceof Measuring.SomePoints some
                && some.points().isEmpty()
                && every.isPresent()) {
            Set<String> points = new TreeSet<>();
            for (int i = every.getAsInt(); i <= MOST_PLOTS; i += every.getAsInt()) {
                points.add(String.valueOf(i));
            }
            return new PlotDesign.Point(p.basalAreaFactor(), p.sweep(), new Measuring.SomePoints(points));
        }
        return real.plot();
    }

    /** The same design with every tree of each stratum tallied, which tells the truth. */
    static Design census(Design paper) {
        return with(
                paper,
                paper.strata(),
                new PlotDesign.Complete(new Measuring.All()),
                EstimateRules.STANDARD,
                paper.layout());
    }

    /** Logs, prices and weights are left out unless the target is one of them: cutting stems takes most of the time. */
    private static WoodSettings wood(Design real) {
        Attribute target = real.targetAttribute();
        boolean plain = target == Attribute.TREES || target == Attribute.BASAL_AREA || target == Attribute.VOLUME;
        return plain ? WoodSettings.NONE : real.wood();
    }

    /** The same design with another seed. */
    private static Design with(
            Design d,
            List<StratumEntry> strata,
            PlotDesign plot,
            EstimateRules estimation,
            Optional<LayoutSettings> layout) {
        return new Design(
                d.file(),
                d.text(),
                d.sha256(),
                d.name(),
                d.date(),
                d.units(),
                d.confidence(),
                d.targetErrorPercent(),
                d.targetAttribute(),
                d.seed(),
                strata,
                plot,
                d.selection(),
                d.finitePopulation(),
                d.degreesRule(),
                List.of(),
                d.species(),
                d.height(),
                d.volumes(),
                d.policies(),
                d.plan(),
                d.sizes(),
                d.notes(),
                d.sheets(),
                d.counting(),
                PlotExceptions.NONE,
                d.plotRules(),
                wood(d),
                estimation,
                d.tract(),
                layout,
                d.simulation(),
                FollowUp.NONE,
                Optional.empty());
    }
}
