package quadmean.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quadmean.model.Boundary;
import quadmean.model.FinitePopulation;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.model.Rule;
import quadmean.model.Sweep;
import quadmean.units.DistanceTo;
import quadmean.units.PlotOnSlope;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Reads {@code [plot]}. */
final class PlotParser {
    private static final List<Boundary> BOUNDARIES =
            List.of(Boundary.IGNORED, Boundary.MIRAGE, Boundary.WALKTHROUGH, Boundary.INWARD_SWEEP);

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
        POINT,
        STRIP,
        COMPLETE
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
            case POINT -> point(root, s, units);
            case STRIP ->
                new PlotDesign.Strip(
                        units.length().convert(s.requiredNumber("width", Range.POSITIVE), Unit.METRE),
                        units.length().convert(s.requiredNumber("length", Range.POSITIVE), Unit.METRE));
            case COMPLETE ->
                new PlotDesign.Complete(MeasuringParser.threeP(root).orElse(new Measuring.All()));
        };
        root.has("threep");
        s.knows("limiting_distance", "on_slope", "boundary");
        s.close();
        return plot;
    }

    private static PlotDesign point(Section root, Section s, UnitSystem units) {
        double factor = units.basalAreaFactor()
                .convert(s.requiredNumber("basal_area_factor", Range.POSITIVE), Unit.SQUARE_METRES_PER_HECTARE);
        Sweep sweep = s.choice("sweep", Options.of(Sweep.values(), Sweep::id)).orElse(Sweep.FULL);
        return new PlotDesign.Point(factor, sweep, MeasuringParser.ofPoints(root, s, units, factor));
    }

    /** How crews decide whether a tree is on the plot. */
    static PlotRules rules(Section s) {
        return new PlotRules(
                s.choice("limiting_distance", STEM_PARTS).orElse(null),
                s.choice("on_slope", Options.of(PlotOnSlope.values(), PlotOnSlope::id))
                        .orElse(PlotOnSlope.HORIZONTAL_DISTANCES),
                s.choice("boundary", Options.of(BOUNDARIES, Boundary::id)).orElse(Boundary.NOT_STATED));
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
        return Math.PI * metres * metres / PlotDesign.M2_PER_HA;
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
        boolean fixed = root.table("plot")
                .text("kind")
                .filter(k -> k.equals("fixed") || k.equals("strip"))
                .isPresent();
        if (finite == FinitePopulation.CORRECT && !fixed) {
            s.problem(
                    Rule.DESIGN_VALUE,
                    key,
                    "correct",
                    "only plots of one fixed area can tile a tract; write \"ignore\" for points, nested plots and complete tallies");
        }
        return finite;
    }
}
