package quadmean.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import quadmean.design.Design;
import quadmean.design.MapSystem;
import quadmean.design.TractSettings;
import quadmean.model.Rule;
import quadmean.model.Stratum;

/** Makes a tract of the features of a file, and notes all that stands against it. */
final class TractMaker {
    /** Width of a zone of the UTM grid (degrees of longitude); scale is far off beyond it. */
    private static final double WIDEST = 6;

    private static final GeometryFactory SHAPES = new GeometryFactory();

    private final Design design;
    private final TractSettings settings;
    private final BoundaryLog log;

    TractMaker(Design design, TractSettings settings, BoundaryLog log) {
        this.design = design;
        this.settings = settings;
        this.log = log;
    }

    /** A polygon in order, in the coordinates of the file. */
    private record Shape(RawFeature feature, Polygon polygon) {}

    TractReading make(List<RawFeature> features) {
        FilePositions positions;
        try {
            positions = FilePositions.of(settings.system());
        } catch (IllegalArgumentException e) {
            String parameters = settings.system() instanceof MapSystem.Projected p ? p.parameters() : "";
            log.add(
                    Rule.BOUNDARY_POSITION,
                    0,
                    "tract.crs",
                    parameters,
                    "tract.crs is no map system: " + e.getMessage());
            return new TractReading(null, log.problems());
        }
        ShapeMaker maker = new ShapeMaker(positions, log);
        List<Shape> shapes = new ArrayList<>();
        features.forEach(f -> maker.polygons(f).forEach(p -> shapes.add(new Shape(f, p))));
        FeatureStrata strata = new FeatureStrata(design.strata(), settings, log);
        features.stream().filter(f -> !strata.isOutline(f)).forEach(strata::of);
        strata.checkAll();
        Envelope extent = new Envelope();
        shapes.forEach(s -> placed(s.polygon(), positions::placed).forEach(c -> extent.expandToInclude(c)));
        return shapes.isEmpty() || isTooWide(extent, positions)
                ? new TractReading(null, log.problems())
                : place(shapes, strata, positions, grid(extent, positions));
    }

    private static List<Coordinate> placed(Polygon polygon, UnaryOperator<Coordinate> move) {
        return List.of(polygon.getCoordinates()).stream().map(move).toList();
    }

    private boolean isTooWide(Envelope extent, FilePositions positions) {
        if (positions.isLocal() || extent.getWidth() <= WIDEST) {
            return false;
        }
        log.add(
                Rule.BOUNDARY_POSITION,
                0,
                "",
                String.format(Locale.ROOT, "%.1f", extent.getWidth()),
                String.format(
                        Locale.ROOT,
                        "the tract reaches over %.1f degrees of longitude, and a map zone over %.0f",
                        extent.getWidth(),
                        WIDEST));
        return true;
    }

    /** The zone that the file is in, or else the one around its middle. */
    private MapGrid grid(Envelope extent, FilePositions positions) {
        if (settings.system() instanceof MapSystem.Utm utm) {
            return UtmGrid.of(utm.zone(), utm.north());
        }
        return positions.isLocal() ? new LocalGrid() : UtmGrid.around(extent.centre());
    }

    private TractReading place(List<Shape> shapes, FeatureStrata strata, FilePositions positions, MapGrid grid) {
        UnaryOperator<Coordinate> move =
                grid instanceof UtmGrid utm ? c -> utm.toGrid(positions.placed(c)) : positions::placed;
        BoundaryLog quiet = new BoundaryLog("", design::policy); // of codes that are noted already
        FeatureStrata known = new FeatureStrata(design.strata(), settings, quiet);
        List<PlacedPolygon> polygons = new ArrayList<>();
        List<Geometry> outlines = new ArrayList<>();
        for (Shape s : shapes) {
            Polygon moved = moved(s.polygon(), move);
            if (moved.getArea() < 1) {
                log.add(Rule.BOUNDARY_SHAPE, s.feature(), "", "a polygon has less than a square metre");
            } else if (strata.isOutline(s.feature())) {
                outlines.add(moved);
            } else {
                known.of(s.feature()).ifPresent(code -> polygons.add(new PlacedPolygon(s.feature(), code, moved)));
            }
        }
        OverlapCheck overlaps = new OverlapCheck(design.units().area(), grid, log);
        overlaps.each(polygons);
        if (!outlines.isEmpty()) {
            overlaps.inside(polygons, OverlayNGRobust.union(outlines));
        }
        return log.refuses() ? new TractReading(null, log.problems()) : tract(polygons, outlines, grid);
    }

    private static Polygon moved(Polygon polygon, UnaryOperator<Coordinate> move) {
        LinearRing[] holes = new LinearRing[polygon.getNumInteriorRing()];
        for (int i = 0; i < holes.length; i++) {
            holes[i] = moved(polygon.getInteriorRingN(i), move);
        }
        return SHAPES.createPolygon(moved(polygon.getExteriorRing(), move), holes);
    }

    private static LinearRing moved(LinearRing ring, UnaryOperator<Coordinate> move) {
        Coordinate[] corners = List.of(ring.getCoordinates()).stream().map(move).toArray(Coordinate[]::new);
        corners[corners.length - 1] = corners[0];
        return SHAPES.createLinearRing(corners);
    }

    private TractReading tract(List<PlacedPolygon> polygons, List<Geometry> outlines, MapGrid grid) {
        List<TractPart> parts = new ArrayList<>();
        List<StratumArea> areas = new ArrayList<>();
        for (Stratum s : design.stratumList()) {
            Geometry shape = OverlayNGRobust.union(polygons.stream()
                    .filter(p -> p.stratum().equals(s.code()))
                    .<Geometry>map(PlacedPolygon::shape)
                    .toList());
            parts.add(new TractPart(s.code(), shape));
            areas.add(new StratumArea(s.code(), grid.areaHa(shape), s.areaHa()));
        }
        double mapHa = areas.stream().mapToDouble(StratumArea::mapHa).sum();
        StratumArea whole = new StratumArea("*", mapHa, design.areaHa());
        AreaCheck check = new AreaCheck(design.units().area(), log);
        areas.forEach(check::check);
        if (areas.size() > 1) {
            check.check(whole);
        }
        Geometry all = OverlayNGRobust.union(
                outlines.isEmpty() ? parts.stream().map(TractPart::shape).toList() : outlines);
        double rest = outlines.isEmpty() ? 0 : grid.areaHa(all) - mapHa;
        Tract tract = new Tract(grid, parts, all, areas, whole, rest, MapNotes.of(grid, all));
        return new TractReading(log.refuses() ? null : tract, log.problems());
    }
}
