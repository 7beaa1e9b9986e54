package quadmean.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quadmean.model.FinitePopulation;
import quadmean.model.PlotDesign;
import quadmean.model.Rule;
import quadmean.units.DistanceTo;
import quadmean.units.PlotOnSlope;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Reads {@code [plot]} and {@code [plan]}. */
final class PlotParser {
    private static final double M2_PER_HA = 10_000;

    /** Both spellings of the word are in use. */
    private static final Map<String, DistanceTo> STEM_PARTS = stemParts();

    private static Map<String, DistanceTo> stemParts() {
        Map<String, DistanceTo> parts = new LinkedHashMap<>(Options.of(DistanceTo.values(), DistanceTo::id));
        parts.put("center", DistanceTo.CENTRE);
        return parts;
    }

    private enum Kind {
        FIXED,
        NESTED,
        POINT
    }

    private PlotParser() {}

    static PlotDesign parse(Section root, UnitSystem units) {
        Section s = root.requiredTable("plot");
        Optional<Kind> kind =
                s.requiredChoice("kind", Options.of(Kind.values(), k -> k.name().toLowerCase(Locale.ROOT)));
        if (kind.isEmpty()) {
            return new PlotDesign.Point(1); // a stand-in: which keys belong here is not known
        }
        PlotDesign plot = switch (kind.get()) {
            case FIXED -> new PlotDesign.Fixed(areaHa(s, units));
            case NESTED -> new PlotDesign.Nested(rings(s, units));
            case POINT ->
                new PlotDesign.Point(units.basalAreaFactor()
                        .convert(
                                s.requiredNumber("basal_area_factor", Range.POSITIVE), Unit.SQUARE_METRES_PER_HECTARE));
        };
        s.knows("limiting_distance", "on_slope");
        s.close();
        return plot;
    }

    /** How crews decide whether a tree is on the plot. */
    static PlotRules rules(Section s) {
        return new PlotRules(
                s.choice("limiting_distance", STEM_PARTS).orElse(null),
                s.choice("on_slope", Options.of(PlotOnSlope.values(), PlotOnSlope::id))
                        .orElse(PlotOnSlope.HORIZONTAL_DISTANCES));
    }

    private static double areaHa(Section s, UnitSystem units) {
        OptionalDouble radius = s.number("radius", Range.POSITIVE);
        OptionalDouble area = s.number("area", Range.POSITIVE);
        if (s.has("radius") == s.has("area")) {
            s.problem(
                    Rule.DESIGN_VALUE,
                    "radius",
                    "",
                    "give the plot either a radius (" + units.length().symbol() + ") or an area ("
                            + units.area().symbol() + ")");
            return 1;
        }
        if (s.has("area")) {
            return units.area().convert(area.orElse(1), Unit.HECTARE);
        }
        double metres = units.length().convert(radius.orElse(1), Unit.METRE);
        return Math.PI * metres * metres / M2_PER_HA;
    }

    private static List<PlotDesign.Ring> rings(Section s, UnitSystem units) {
        List<PlotDesign.Ring> rings = new ArrayList<>();
        List<Section> sections = s.tableList("ring");
        if (sections.size() < 2) {
            s.problem(Rule.DESIGN_MISSING, "ring", "", "a nested plot needs two [[plot.ring]] tables or more");
        }
        for (Section ring : sections) {
            double min = units.diameter().convert(ring.number("min_dbh", Range.NOT_NEGATIVE, 0), Unit.CENTIMETRE);
            double area = areaHa(ring, units);
            if (!rings.isEmpty() && !(min > rings.get(rings.size() - 1).minDbhCm())) {
                ring.problem(
                        Rule.DESIGN_VALUE, "min_dbh", "", "rings stand in ascending order of min_dbh, smallest first");
            } else {
                rings.add(new PlotDesign.Ring(min, area));
            }
            ring.close();
        }
        return rings;
    }

    static FinitePopulation finitePopulation(Section s, String key, Section root) {
        FinitePopulation finite = s.choice(key, Options.of(FinitePopulation.values(), FinitePopulation::id))
                .orElse(FinitePopulation.IGNORE);
        boolean fixed = root.table("plot").text("kind").filter("fixed"::equals).isPresent();
        if (finite == FinitePopulation.CORRECT && !fixed) {
            s.problem(
                    Rule.DESIGN_VALUE,
                    key,
                    "correct",
                    "only plots of one fixed area can tile a tract; write \"ignore\" for points and nested plots");
        }
        return finite;
    }

    static PlanSettings plan(Section root) {
        Section s = root.table("plan");
        PlanSettings plan = new PlanSettings(
                s.number("cv", Range.POSITIVE),
                s.choice("pilot", Options.of(PlanSettings.Pilot.values(), PlanSettings.Pilot::id))
                        .orElse(PlanSettings.Pilot.NONE),
                finitePopulation(s, "finite_population", root));
        s.close();
        return plan;
    }
}
