package quadmean.simulate;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import quadmean.design.Design;
import quadmean.design.MapSystem;
import quadmean.layout.BoundaryReader;
import quadmean.layout.LocalGrid;
import quadmean.layout.StratumArea;
import quadmean.layout.Tract;
import quadmean.layout.TractPart;
import quadmean.layout.TractReading;
import quadmean.model.ForestData;
import quadmean.model.MappedTree;
import quadmean.model.Problem;
import quadmean.model.StandClass;
import quadmean.model.Stratum;

/** Makes the forest that a design is tried in, from a map of trees or from a stand table. */
public final class ForestMaker {
    private static final GeometryFactory SHAPES = new GeometryFactory();
    private static final double M2_PER_HA = 10_000;
    /** Grounds whose areas differ by less are the same. */
    private static final double SAME = 1e-6;

    /** Ground wider than this (m) is a slip of a digit, not a forest that anybody knows tree by tree. */
    private static final double WIDEST = 100_000;

    private ForestMaker() {}

    /**
     * What came of it.
     *
     * @param forest the forest; null if a problem refuses it
     * @param problems what is against it
     */
    public record Making(@org.jspecify.annotations.Nullable Forest forest, List<Problem> problems) {
        public Making {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Makes a forest.
     *
     * @param design the design, whose boundary is the ground where it has one that fits: any for a stand table, one in local
     *     coordinates for a map of trees
     * @param data map of trees or stand table, without problems
     * @param heights table of heights for trees that have none
     * @param rules how to make what the file does not say
     * @throws IOException if the boundary cannot be read
     * @throws IllegalArgumentException with a sentence for the user if the data do not make a forest
     */
    public static Making make(Design design, ForestData data, Optional<ForestData> heights, ForestRules rules)
            throws IOException {
        boolean isMap = data.kind() == ForestData.Kind.MAP;
        if (data.kind() == ForestData.Kind.HEIGHTS) {
            throw new IllegalArgumentException(data.file()
                    + " has neither the places of trees (x, y) nor their number (trees_per_ha or trees_per_ac)");
        }
        List<String> notes = new ArrayList<>();
        Tract tract;
        if (design.tract().isPresent() && (!isMap || design.tract().get().system() instanceof MapSystem.Local)) {
            TractReading reading = BoundaryReader.read(design);
            if (reading.tract() == null) {
                return new Making(null, reading.problems());
            }
            tract = reading.tract();
        } else {
            tract = bands(design, isMap ? window(data.trees(), rules) : square(design), notes);
        }
        HeightLine line = HeightLine.of(heights.map(ForestData::classes).orElse(data.classes()), rules);
        List<MappedTree> trees = isMap
                ? onTract(named(data.trees(), design), tract, notes)
                : new StandGrower(design, tract, rules).trees(named(data.classes(), design, tract));
        if (!isMap) {
            notes.add(rules.words(trees.size()));
        }
        if (!line.isEmpty()) {
            trees = line.fill(trees, rules.seed());
            notes.add(line.words());
        }
        return new Making(new Forest(data.file(), tract, trees, notes), List.of());
    }

    /**
     * The same trees on the same ground for another design, divided into its own strata.
     *
     * @throws IOException if the boundary cannot be read
     * @throws IllegalArgumentException with a sentence for the user if the ground is not the same
     */
    public static Making again(Design design, Forest forest) throws IOException {
        Envelope box = forest.box();
        Window window = new Window(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
        ForestRules rules =
                new ForestRules(ForestRules.USUAL.pattern(), 1, 1, 0, ForestRules.USUAL.seed(), Optional.of(window));
        List<String> notes = new ArrayList<>();
        Tract tract;
        if (design.tract().isPresent()) {
            TractReading reading = BoundaryReader.read(design);
            if (reading.tract() == null) {
                return new Making(null, reading.problems());
            }
            tract = reading.tract();
        } else {
            tract = bands(design, window(List.of(), rules), notes);
        }
        if (!(Math.abs(areaHa(tract) - forest.areaHa()) <= SAME * forest.areaHa())) {
            throw new IllegalArgumentException("designs are compared on the same ground, and \"" + design.name()
                    + "\" has another; give both the same [tract], or leave it out of both");
        }
        return new Making(new Forest(forest.name(), tract, onTract(forest.trees(), tract, notes), notes), List.of());
    }

    private static double areaHa(Tract tract) {
        return tract.parts().stream()
                .mapToDouble(p -> new Ground(p.shape()).areaHa())
                .sum();
    }

    private static String species(String code, Design design) {
        if (!code.isEmpty()) {
            return code;
        }
        return design.species().size() == 1
                ? design.species().keySet().iterator().next()
                : "tree";
    }

    private static List<MappedTree> named(List<MappedTree> trees, Design design) {
        return trees.stream()
                .map(t -> new MappedTree(t.row(), t.x(), t.y(), species(t.species(), design), t.dbhCm(), t.heightM()))
                .toList();
    }

    private static List<StandClass> named(List<StandClass> classes, Design design, Tract tract) {
        List<String> codes = tract.parts().stream().map(TractPart::stratum).toList();
        classes.stream()
                .filter(c -> !c.stratum().isEmpty() && !codes.contains(c.stratum()))
                .findFirst()
                .ifPresent(c -> {
                    throw new IllegalArgumentException(
                            "the stand table names a stratum \"" + c.stratum() + "\" that the design does not have");
                });
        return classes.stream()
                .map(c -> new StandClass(
                        c.stratum(), species(c.species(), design), c.dbhCm(), c.treesPerHa(), c.heightM()))
                .toList();
    }

    private static List<MappedTree> onTract(List<MappedTree> trees, Tract tract, List<String> notes) {
        List<Ground> grounds =
                tract.parts().stream().map(p -> new Ground(p.shape())).toList();
        List<MappedTree> inside = trees.stream()
                .filter(t -> grounds.stream().anyMatch(g -> g.holds(t.x(), t.y())))
                .toList();
        if (inside.size() < trees.size()) {
            notes.add(trees.size() - inside.size() + " trees of the map stand outside of the tract and are left out.");
        }
        return inside;
    }

    /** The window of a map: as given, else the box around the trees, widened to whole metres. */
    private static Envelope window(List<MappedTree> trees, ForestRules rules) {
        if (rules.window().isPresent()) {
            return rules.window().get().envelope();
        }
        Envelope box = new Envelope();
        trees.forEach(t -> box.expandToInclude(t.x(), t.y()));
        return new Envelope(
                Math.floor(box.getMinX()),
                Math.ceil(box.getMaxX()),
                Math.floor(box.getMinY()),
                Math.ceil(box.getMaxY()));
    }

    private static Envelope square(Design design) {
        double side = Math.sqrt(design.areaHa() * M2_PER_HA);
        return new Envelope(0, side, 0, side);
    }

    /** The strata of a design as bands from west to east, as wide as their areas ask for. */
    private static Tract bands(Design design, Envelope window, List<String> notes) {
        if (!(window.getArea() > 0)) {
            throw new IllegalArgumentException("the map of trees covers no area; state the ground with --window");
        }
        if (!(Math.max(window.getWidth(), window.getHeight()) <= WIDEST)) {
            throw new IllegalArgumentException(
                    "the ground is " + Plain.of(window.getWidth(), 5) + " m by " + Plain.of(window.getHeight(), 5)
                            + " m, and 100 km are the most; look for a place far from all others, or try the design on a part of it");
        }
        List<TractPart> parts = new ArrayList<>();
        List<StratumArea> areas = new ArrayList<>();
        double west = window.getMinX();
        double done = 0;
        List<Stratum> strata = design.stratumList();
        for (Stratum s : strata) {
            done += s.areaHa();
            double east = window.getMinX() + window.getWidth() * Math.min(1, done / design.areaHa());
            Geometry band = SHAPES.toGeometry(new Envelope(west, east, window.getMinY(), window.getMaxY()));
            parts.add(new TractPart(s.code(), band));
            areas.add(new StratumArea(s.code(), band.getArea() / M2_PER_HA, s.areaHa()));
            west = east;
        }
        if (strata.size() > 1) {
            notes.add("The strata are bands from west to east, as wide as their areas in the design ask for.");
        }
        double ha = window.getArea() / M2_PER_HA;
        notes.add("The ground is " + Plain.of(window.getWidth(), 5) + " m by " + Plain.of(window.getHeight(), 5)
                + " m, " + Plain.of(ha, 4) + " ha; the design speaks of " + Plain.of(design.areaHa(), 4) + " ha.");
        Geometry all = SHAPES.toGeometry(window);
        return new Tract(new LocalGrid(), parts, all, areas, new StratumArea("*", ha, design.areaHa()), 0, List.of());
    }
}
