package quadmean.design;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import quadmean.design.KindsSettings.Density;
import quadmean.design.KindsSettings.Times;
import quadmean.model.Rule;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Reads {@code [plan.kinds]}. */
final class KindsParser {
    private static final int MOST = 12;

    private final Section s;
    private final Section root;
    private final UnitSystem units;

    private KindsParser(Section s, Section root, UnitSystem units) {
        this.s = s;
        this.root = root;
        this.units = units;
    }

    /**
     * The table.
     *
     * @param plan the table {@code [plan]}
     * @param heightEvery every how many trees a height is measured
     */
    static Optional<KindsSettings> parse(
            Section plan, Section root, Path designFile, UnitSystem units, int heightEvery) {
        if (!plan.has("kinds")) {
            return Optional.empty();
        }
        Section s = plan.table("kinds");
        KindsSettings settings = new KindsParser(s, root, units).settings(designFile, heightEvery);
        s.close();
        return Optional.of(settings);
    }

    private KindsSettings settings(Path designFile, int heightEvery) {
        List<Double> areas = s.numbers("plot_areas", Range.POSITIVE);
        List<Double> factors = s.numbers("basal_area_factors", Range.POSITIVE);
        checkCandidates(areas, factors);
        KindsSettings settings = new KindsSettings(
                areas.stream().map(a -> units.area().convert(a, Unit.HECTARE)).toList(),
                factors.stream()
                        .map(f -> units.basalAreaFactor().convert(f, Unit.SQUARE_METRES_PER_HECTARE))
                        .toList(),
                s.number("cv", Range.POSITIVE),
                in(units.area(), s.number("cv_area", Range.POSITIVE), Unit.HECTARE),
                density(),
                times(heightEvery),
                new StemMapParser(s).parse(designFile));
        checkKnown(settings);
        return settings;
    }

    private void checkCandidates(List<Double> areas, List<Double> factors) {
        int kinds = areas.size() + factors.size();
        boolean refusedAlready = (s.has("plot_areas") && areas.isEmpty() && !s.isEmptyList("plot_areas"))
                || (s.has("basal_area_factors") && factors.isEmpty() && !s.isEmptyList("basal_area_factors"));
        if ((kinds < 2 && !refusedAlready) || kinds > MOST) {
            s.problem(
                    kinds > MOST ? Rule.DESIGN_VALUE : Rule.DESIGN_MISSING,
                    "plot_areas",
                    "",
                    "a comparison has 2 to " + MOST + " kinds of plot, and here are " + kinds
                            + ": give plot_areas = [0.05, 0.1] in "
                            + units.area().symbol()
                            + " and basal_area_factors = [10, 20] in "
                            + units.basalAreaFactor().symbol());
        }
        checkTwice("plot_areas", areas);
        checkTwice("basal_area_factors", factors);
    }

    private void checkTwice(String key, List<Double> values) {
        Set<Double> before = new HashSet<>();
        values.stream()
                .filter(v -> !before.add(v))
                .forEach(v -> s.problem(
                        Rule.DESIGN_VALUE,
                        key,
                        Section.show(v),
                        s.path() + "." + key + " has " + Section.show(v) + " twice"));
    }

    private Optional<Density> density() {
        OptionalDouble basalArea =
                in(units.basalAreaFactor(), s.number("basal_area", Range.POSITIVE), Unit.SQUARE_METRES_PER_HECTARE);
        Unit perArea = units == UnitSystem.US ? Unit.TREES_PER_ACRE : Unit.TREES_PER_HECTARE;
        OptionalDouble trees = in(perArea, s.number("trees", Range.POSITIVE), Unit.TREES_PER_HECTARE);
        if (s.has("basal_area") != s.has("trees")) {
            s.problem(
                    Rule.DESIGN_MISSING,
                    s.has("trees") ? "basal_area" : "trees",
                    "",
                    "basal_area and trees go together: they give the mean tree");
        }
        return basalArea.isPresent() && trees.isPresent()
                ? Optional.of(new Density(basalArea.getAsDouble(), trees.getAsDouble()))
                : Optional.empty();
    }

    private Times times(int heightEvery) {
        Map<KindInput, Double> given = new TreeMap<>();
        Map<KindInput, Double> assumed = new TreeMap<>();
        for (KindInput input : KindInput.values()) {
            OptionalDouble value = s.number(input.key(), input.range());
            boolean walking = input == KindInput.WALKING;
            if (walking && value.isEmpty()) {
                value = root.table("layout").number(input.key(), Range.POSITIVE);
            }
            double stated = value.orElse(walking ? LayoutParser.usualPace(units) : usual(input, heightEvery));
            (value.isPresent() ? given : assumed)
                    .put(input, walking ? LayoutParser.metresPerHour(stated, units) : stated);
        }
        return new Times(given, assumed);
    }

    /** Defaults; where they come from stands with {@link KindInput}. */
    private static double usual(KindInput input, int heightEvery) {
        return switch (input) {
            case WALKING -> throw new IllegalArgumentException("the pace depends on the units");
            case SET_UP -> 5;
            case COUNT -> 0.1;
            case MEASURE -> 0.5;
            case HEIGHT -> 4;
            case MEASURED -> 100;
            case HEIGHTS -> 100.0 / heightEvery;
        };
    }

    /** Density and variation must come from somewhere. */
    private void checkKnown(KindsSettings settings) {
        if (s.has("stem_map")) {
            return;
        }
        if (settings.density().isEmpty() && !s.has("basal_area") && !s.has("trees")) {
            s.problem(
                    Rule.DESIGN_MISSING,
                    "basal_area",
                    "",
                    "how many trees a plot will have is not known: give basal_area ("
                            + units.basalAreaFactor().symbol() + ") and trees expected, or a stem_map");
        }
        boolean sized = root.table("plot")
                .text("kind")
                .filter(k -> !k.equals("nested") && !k.equals("complete"))
                .isPresent();
        if (!sized && !s.has("cv_area")) {
            s.problem(
                    Rule.DESIGN_MISSING,
                    "cv_area",
                    "",
                    "the plots of this design have no one size: give cv_area, the area of the plot that the coefficient of"
                            + " variation is for, or a stem_map");
        }
    }

    private static OptionalDouble in(Unit unit, OptionalDouble value, Unit inside) {
        return value.isPresent() ? OptionalDouble.of(unit.convert(value.getAsDouble(), inside)) : value;
    }
}
