package quadmean.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;
import quadmean.model.Rule;

/** Makes polygons of what a file has, in the coordinates of the file, and notes what is wrong with them. */
final class ShapeMaker {
    private static final GeometryFactory SHAPES = new GeometryFactory();

    private final FilePositions positions;
    private final BoundaryLog log;

    ShapeMaker(FilePositions positions, BoundaryLog log) {
        this.positions = positions;
        this.log = log;
    }

    /** The polygons of a feature that are in order. */
    List<Polygon> polygons(RawFeature feature) {
        List<Polygon> polygons = new ArrayList<>();
        for (RawPolygon raw : feature.polygons()) {
            polygon(feature, raw).ifPresent(polygons::add);
        }
        return polygons;
    }

    private Optional<Polygon> polygon(RawFeature feature, RawPolygon raw) {
        if (raw.rings().isEmpty()) {
            log.add(Rule.BOUNDARY_SHAPE, feature, "", "a polygon has no ring");
            return Optional.empty();
        }
        List<LinearRing> rings = new ArrayList<>();
        boolean inOrder = true;
        for (List<Coordinate> ring : raw.rings()) {
            inOrder &= isInOrder(feature, ring);
            if (inOrder) {
                rings.add(SHAPES.createLinearRing(ring.toArray(Coordinate[]::new)));
            }
        }
        if (!inOrder) {
            return Optional.empty();
        }
        LinearRing[] holes = rings.subList(1, rings.size()).toArray(LinearRing[]::new);
        Polygon polygon = SHAPES.createPolygon(rings.get(0), holes);
        return isValid(feature, polygon) ? Optional.of(polygon) : Optional.empty();
    }

    private boolean isInOrder(RawFeature feature, List<Coordinate> ring) {
        List<Coordinate> faulty =
                ring.stream().filter(c -> positions.fault(c).isPresent()).toList();
        if (!faulty.isEmpty()) {
            String others = faulty.size() == 1 ? "" : ", and " + (faulty.size() - 1) + " more of this ring";
            String at = positions.show(faulty.get(0));
            String fault = positions.fault(faulty.get(0)).orElse("");
            log.add(Rule.BOUNDARY_POSITION, feature, at, at + ": " + fault + others);
            return false;
        }
        if (ring.size() < 4) {
            log.add(
                    Rule.BOUNDARY_SHAPE,
                    feature,
                    "",
                    "a ring has " + ring.size() + " positions; a triangle has four," + " the last being the first");
            return false;
        }
        return isClosed(feature, ring) && staysOnOneSide(feature, ring);
    }

    private boolean isClosed(RawFeature feature, List<Coordinate> ring) {
        Coordinate first = ring.get(0);
        Coordinate last = ring.get(ring.size() - 1);
        if (first.equals2D(last)) {
            return true;
        }
        Coordinate from = positions.placed(last);
        Coordinate to = positions.placed(first);
        Course gap = positions.isLocal() ? Course.onPlane(from, to) : Course.onEllipsoid(from, to);
        log.add(
                Rule.BOUNDARY_SHAPE,
                feature,
                positions.show(last),
                "a ring starts at " + positions.show(first) + " and ends at " + positions.show(last) + ", "
                        + GpxBoundary.metres(gap.distanceMetres()) + " away");
        return false;
    }

    /** A side cannot be half around the globe: it jumps from 180 degrees east to 180 west. */
    private boolean staysOnOneSide(RawFeature feature, List<Coordinate> ring) {
        for (int i = 1; i < ring.size() && !positions.isLocal(); i++) {
            double step = positions.placed(ring.get(i)).x - positions.placed(ring.get(i - 1)).x;
            if (Math.abs(step) > 180) {
                log.add(
                        Rule.BOUNDARY_POSITION,
                        feature,
                        positions.show(ring.get(i)),
                        "the boundary crosses the 180th meridian between " + positions.show(ring.get(i - 1)) + " and "
                                + positions.show(ring.get(i)) + "; lay the two sides out as two tracts");
                return false;
            }
        }
        return true;
    }

    private boolean isValid(RawFeature feature, Polygon polygon) {
        if (polygon.getExteriorRing().getCoordinates().length == 0 || isFlat(polygon)) {
            log.add(
                    Rule.BOUNDARY_SHAPE,
                    feature,
                    positions.show(polygon.getCoordinate()),
                    "a polygon that starts at " + positions.show(polygon.getCoordinate()) + " has no area");
            return false;
        }
        TopologyValidationError error = new IsValidOp(polygon).getValidationError();
        if (error != null) {
            String at = positions.show(error.getCoordinate());
            log.add(Rule.BOUNDARY_SHAPE, feature, at, fault(error.getErrorType()) + " at " + at);
        }
        return error == null;
    }

    /** Whether all corners lie on one line: the area is nothing beside the square of the length. */
    private static boolean isFlat(Polygon polygon) {
        double across = polygon.getExteriorRing().getEnvelopeInternal().getDiameter();
        return polygon.convexHull().getArea() <= 1e-9 * across * across;
    }

    private static String fault(int type) {
        return switch (type) {
            case TopologyValidationError.SELF_INTERSECTION -> "the boundary crosses itself";
            case TopologyValidationError.RING_SELF_INTERSECTION -> "the boundary touches itself";
            case TopologyValidationError.HOLE_OUTSIDE_SHELL -> "a hole lies outside its polygon";
            case TopologyValidationError.NESTED_HOLES -> "a hole lies in another hole";
            case TopologyValidationError.DISCONNECTED_INTERIOR -> "holes cut the polygon in pieces";
            case TopologyValidationError.DUPLICATE_RINGS -> "a ring stands twice";
            default ->
                String.format(
                        Locale.ROOT,
                        "the polygon is not in order (%s)",
                        new TopologyValidationError(type).getMessage());
        };
    }
}
