package quadmean.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import quadmean.design.Design;
import quadmean.design.LayoutSettings;
import quadmean.design.MapSystem;
import quadmean.model.PlotDesign;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.units.UnitSystem;

/**
 * Plots on the map and the walk to them, ready for the field sheets.
 *
 * @param set plots numbered as they are walked, and the walk; null if a problem refuses it
 * @param areas the ground, for the map
 * @param work how it came about; empty if a problem refuses it
 * @param notes what a reader should know, in sentences
 * @param problems what refuses it
 */
public record FieldPlan(
        @Nullable SheetSet set,
        List<SheetArea> areas,
        Optional<Work> work,
        List<String> notes,
        List<Problem> problems) {
    /** Farther from the tract a start is taken for a slip, such as swapped coordinates (m). Common practice, no source. */
    private static final double FARTHEST_START = 100_000;

    public FieldPlan {
        areas = List.copyOf(areas);
        notes = List.copyOf(notes);
        problems = List.copyOf(problems);
    }

    /**
     * How plots were laid out and put in order.
     *
     * @param layout the plots
     * @param route the walk
     */
    public record Work(Layout layout, Route route) {}

    /**
     * Lays out the plots of a design on its tract.
     *
     * @param planned plots by code of stratum, where the design names no number itself
     * @throws IllegalArgumentException if the design has no layout
     */
    public static FieldPlan of(Design design, Tract tract, Map<String, Integer> planned) {
        LayoutSettings settings =
                design.layout().orElseThrow(() -> new IllegalArgumentException("the design has no [layout]"));
        OptionalDouble reach = PlotReach.of(design.plot(), settings.largestDbhCm());
        if (reach.isEmpty()) {
            return refused(design, "layout", "", "a complete tally has no plots to lay out; leave [layout] out");
        }
        LengthText lengths = new LengthText(design.units());
        int size = settings.cluster().map(LayoutSettings.Cluster::plots).orElse(1);
        Map<String, Integer> asked =
                settings.plots().isPresent() ? shared(tract, settings.plots().getAsInt()) : inClusters(planned, size);
        Optional<String> trouble = LayoutChecks.before(settings, tract, asked, lengths);
        if (trouble.isPresent()) {
            return refused(design, "layout", "", trouble.get());
        }
        double near =
                PlotReach.ofTreatment(reach.getAsDouble(), design.plotRules().boundary());
        Layout layout = PlotLayout.lay(settings, tract, asked, near, design.seed());
        Coordinate start = start(design, tract);
        double away = tract.outline().distance(tract.outline().getFactory().createPoint(start));
        if (!(away <= FARTHEST_START)) {
            return refused(
                    design,
                    "layout.start",
                    settings.walking().start().toString(),
                    String.format(
                            Locale.ROOT,
                            "the start lies %.0f km from the tract; longitude comes first, west of Greenwich below zero",
                            away / 1000));
        }
        if (layout.plots().isEmpty()) {
            String buffer = settings.bufferM() > 0 ? ", or a smaller buffer" : "";
            return refused(
                    design,
                    "layout",
                    "",
                    "no plot fell on the tract; ask for more plots or a smaller spacing" + buffer);
        }
        boolean fixed = design.plot() instanceof PlotDesign.Fixed || design.plot() instanceof PlotDesign.Nested;
        if (fixed && layout.nearestM() < 2 * reach.getAsDouble()) {
            return refused(
                    design,
                    "layout",
                    "",
                    "plots would lie " + lengths.of(layout.nearestM(), 1) + " apart, and one is "
                            + lengths.of(2 * reach.getAsDouble(), 1)
                            + " across: they would overlap; ask for fewer plots, a larger spacing, or smaller plots");
        }
        Route route = route(layout, start, settings);
        OptionalInt number = layout.asked() > 0 ? OptionalInt.of(layout.asked() * size) : OptionalInt.empty();
        SheetSet set = new SheetMaker(tract, layout, settings.walking(), start).set(route, number);
        List<String> notes = new LayoutNotes(design, settings, lengths).of(layout, route, set);
        if (fixed) {
            LayoutChecks.overlaps(layout.plots(), reach.getAsDouble(), lengths).ifPresent(notes::add);
        }
        return new FieldPlan(
                set.with(notes), areas(design, tract), Optional.of(new Work(layout, route)), notes, List.of());
    }

    /** What keeps a layout from being drawn, in words; empty if nothing does. */
    public static Optional<String> trouble(
            LayoutSettings settings, Tract tract, Map<String, Integer> asked, UnitSystem units) {
        return LayoutChecks.before(settings, tract, asked, new LengthText(units));
    }

    /** One walk, or one for each subset, the first subset first. */
    private static Route route(Layout layout, Coordinate start, LayoutSettings settings) {
        List<Route> walks = new ArrayList<>();
        List<List<Integer>> places = new ArrayList<>();
        List<Integer> subsets = layout.plots().stream()
                .map(LaidPlot::subset)
                .distinct()
                .sorted()
                .toList();
        for (int subset : subsets) {
            List<Integer> own = IntStream.range(0, layout.plots().size())
                    .filter(i -> layout.plots().get(i).subset() == subset)
                    .boxed()
                    .toList();
            places.add(own);
            List<Coordinate> at =
                    own.stream().map(i -> layout.plots().get(i).at()).toList();
            walks.add(Route.of(at, start, settings.walking(), layout.rowSpacingM(), layout.linesDegrees()));
        }
        return Route.joined(walks, places);
    }

    /** As many clusters as hold the planned plots. */
    private static Map<String, Integer> inClusters(Map<String, Integer> planned, int size) {
        Map<String, Integer> clusters = new LinkedHashMap<>();
        planned.forEach((code, plots) -> clusters.put(code, (plots + size - 1) / size));
        return clusters;
    }

    private static FieldPlan refused(Design design, String key, String value, String detail) {
        String file = String.valueOf(design.file().getFileName());
        return new FieldPlan(
                null,
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(new Problem(file, 0, key, value, Rule.DESIGN_VALUE, Policy.REFUSE, detail)));
    }

    /** A number shared by area; what rounding leaves goes to the largest remainders, the first code among equals. */
    public static Map<String, Integer> shared(Tract tract, int plots) {
        double whole =
                tract.parts().stream().mapToDouble(p -> p.shape().getArea()).sum();
        Map<String, Double> rest = new LinkedHashMap<>();
        Map<String, Integer> shares = new LinkedHashMap<>();
        tract.parts().stream().map(TractPart::stratum).sorted().forEach(code -> {
            double exact = tract.parts().stream()
                            .filter(p -> p.stratum().equals(code))
                            .mapToDouble(p -> p.shape().getArea())
                            .sum()
                    * plots
                    / whole;
            shares.put(code, (int) Math.floor(exact));
            rest.put(code, exact - Math.floor(exact));
        });
        int left = plots - shares.values().stream().mapToInt(Integer::intValue).sum();
        rest.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .limit(left)
                .forEach(e -> shares.merge(e.getKey(), 1, Integer::sum));
        return shares;
    }

    private static Coordinate start(Design design, Tract tract) {
        List<Double> given = design.layout().orElseThrow().walking().start();
        if (given.isEmpty()) {
            Coordinate corner = tract.outline().getCoordinates()[0];
            for (Coordinate c : tract.outline().getCoordinates()) {
                if (c.x + c.y < corner.x + corner.y) {
                    corner = c;
                }
            }
            return new Coordinate(corner.x, corner.y);
        }
        Coordinate at = new Coordinate(given.get(0), given.get(1));
        if (tract.grid() instanceof UtmGrid utm) {
            return utm.toGrid(at);
        }
        return design.tract().orElseThrow().system() instanceof MapSystem.Local local
                ? new Coordinate(
                        local.unit().convert(at.x, quadmean.units.Unit.METRE),
                        local.unit().convert(at.y, quadmean.units.Unit.METRE))
                : at;
    }

    private static List<SheetArea> areas(Design design, Tract tract) {
        return tract.parts().stream()
                .map(p -> new SheetArea(name(design, p.stratum()), SheetMaker.rings(p.shape())))
                .toList();
    }

    private static String name(Design design, String code) {
        return design.strata().stream()
                .map(s -> s.stratum())
                .filter(s -> s.code().equals(code))
                .map(s -> s.name().isEmpty() ? code : s.name())
                .findFirst()
                .orElse(code);
    }
}
