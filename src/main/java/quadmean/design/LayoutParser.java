package quadmean.design;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import quadmean.design.LayoutSettings.Cluster;
import quadmean.design.LayoutSettings.Extent;
import quadmean.design.LayoutSettings.Pattern;
import quadmean.design.LayoutSettings.Shape;
import quadmean.design.LayoutSettings.Slopes;
import quadmean.design.LayoutSettings.Walking;
import quadmean.model.Rule;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Reads {@code [layout]}. Its defaults of pace and times are common practice, without a source. */
final class LayoutParser {
    private static final Map<String, Pattern> PATTERNS = Options.of(Pattern.values(), Pattern::id);
    private static final Map<String, Extent> EXTENTS = Options.of(Extent.values(), Extent::id);
    private static final Map<String, Shape> SHAPES = Options.of(Shape.values(), Shape::id);
    private static final double MINUTES = 60;
    /** Chains in a mile, by definition. */
    private static final double CHAINS = 80;

    private final Section s;
    private final UnitSystem units;
    private final List<StratumEntry> strata;

    private LayoutParser(Section s, List<StratumEntry> strata, UnitSystem units) {
        this.s = s;
        this.strata = strata;
        this.units = units;
    }

    static Optional<LayoutSettings> parse(Section root, List<StratumEntry> strata, UnitSystem units) {
        if (!root.has("layout")) {
            return Optional.empty();
        }
        Section s = root.table("layout");
        LayoutSettings settings = new LayoutParser(s, strata, units).settings();
        s.close();
        if (!root.has("tract") && !root.has("simulate")) {
            root.problem(
                    Rule.DESIGN_MISSING,
                    "layout",
                    "",
                    "plots are laid out on a map: name the file of the boundary in [tract], or leave [layout] out");
        }
        return Optional.of(settings);
    }

    private LayoutSettings settings() {
        Pattern pattern = s.choice("pattern", PATTERNS).orElse(Pattern.SQUARE);
        LayoutSettings settings = new LayoutSettings(
                pattern,
                s.choice("over", EXTENTS).orElse(Extent.STRATUM),
                whole("plots"),
                metres("spacing"),
                metres("row_spacing"),
                s.number("bearing", Range.BEARING, 0),
                units.length().convert(s.number("buffer", Range.NOT_NEGATIVE, 0), Unit.METRE),
                cluster(),
                walking(),
                units.diameter()
                        .convert(
                                s.number("largest_dbh", Range.POSITIVE, units == UnitSystem.US ? 40 : 100),
                                Unit.CENTIMETRE),
                (int) s.number("subsets", Range.WHOLE_TO_HUNDRED, 1));
        check(settings);
        return settings;
    }

    private Optional<Cluster> cluster() {
        OptionalInt plots = whole("cluster");
        OptionalDouble spacing = metres("cluster_spacing");
        Optional<Shape> shape = s.choice("cluster_shape", SHAPES);
        if (plots.isEmpty()) {
            if (spacing.isPresent() || shape.isPresent()) {
                s.problem(
                        Rule.DESIGN_MISSING,
                        "cluster",
                        "",
                        "cluster_spacing and cluster_shape go with cluster, the plots of a cluster");
            }
            return Optional.empty();
        }
        if (plots.getAsInt() < 2) {
            s.problem(
                    Rule.DESIGN_VALUE,
                    "cluster",
                    "" + plots.getAsInt(),
                    "a cluster has 2 plots or more; leave cluster out for single plots");
        }
        if (spacing.isEmpty()) {
            s.problem(
                    Rule.DESIGN_MISSING,
                    "cluster_spacing",
                    "",
                    "clusters need cluster_spacing, the distance between their plots in "
                            + units.length().symbol());
            return Optional.empty();
        }
        return Optional.of(new Cluster(plots.getAsInt(), spacing.getAsDouble(), shape.orElse(Shape.RING)));
    }

    /** Pace between plots (mi/h or km/h): common practice, no source. */
    static double usualPace(UnitSystem units) {
        return units == UnitSystem.US ? 1.25 : 2;
    }

    /** A pace in mi/h or km/h as m/h. */
    static double metresPerHour(double pace, UnitSystem units) {
        return units == UnitSystem.US ? Unit.CHAIN.convert(CHAINS * pace, Unit.METRE) : 1000 * pace;
    }

    private Walking walking() {
        double pace = s.number("walking", Range.POSITIVE, usualPace(units));
        List<Double> start = s.has("start") ? s.requiredNumbers("start", Range.FINITE) : List.of();
        if (!start.isEmpty() && start.size() != 2) {
            s.problem(
                    Rule.DESIGN_VALUE,
                    "start",
                    start.toString(),
                    "a start has two numbers, longitude first: [-122.31, 44.05]");
        }
        return new Walking(
                start,
                s.number("declination", Range.DECLINATION),
                slopes(),
                metresPerHour(pace, units),
                s.number("per_plot", Range.NOT_NEGATIVE, 20) / MINUTES,
                s.number("day", Range.DAY_HOURS, 8));
    }

    /** One slope for the tract, or a table with one for each stratum. */
    private Slopes slopes() {
        return s.isTable("slope")
                ? new Slopes(OptionalDouble.empty(), EstimatorParser.byStratum(s, "slope", strata, Range.NOT_NEGATIVE))
                : new Slopes(s.number("slope", Range.NOT_NEGATIVE), Map.of());
    }

    private void check(LayoutSettings l) {
        boolean rectangular = l.pattern() == Pattern.RECTANGULAR;
        if (rectangular && l.rowSpacingM().isEmpty()) {
            s.problem(
                    Rule.DESIGN_MISSING,
                    "row_spacing",
                    "",
                    "a rectangular grid needs row_spacing, the distance between its lines");
        }
        if (!rectangular && s.has("row_spacing")) {
            conflict("row_spacing", "goes with pattern = \"rectangular\" only");
        }
        if (!l.pattern().isGrid() && s.has("spacing")) {
            conflict("spacing", "goes with a grid; give plots instead");
        }
        if (l.subsets() > 1 && (s.has("spacing") || s.has("cluster"))) {
            conflict("subsets", "share out a number of single plots; leave spacing and cluster out");
        }
        if (s.has("spacing") && s.has("plots")) {
            conflict("plots", "follows from spacing; leave one of the two out");
        }
    }

    private void conflict(String key, String why) {
        s.problem(Rule.DESIGN_VALUE, key, "", "layout." + key + " " + why);
    }

    private OptionalInt whole(String key) {
        OptionalDouble number = s.number(key, Range.PLOT_COUNT);
        return number.isPresent() ? OptionalInt.of((int) number.getAsDouble()) : OptionalInt.empty();
    }

    private OptionalDouble metres(String key) {
        OptionalDouble number = s.number(key, Range.POSITIVE);
        return number.isPresent()
                ? OptionalDouble.of(units.length().convert(number.getAsDouble(), Unit.METRE))
                : number;
    }
}
