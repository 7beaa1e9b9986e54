package quadmean.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryCollection;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import quadmean.model.Rule;

/** Reads well-known text (OGC 06-103r4): a geometry a line, with the code of its stratum and a semicolon or tab before it. */
final class WktBoundary {
    /** Brackets of a collection of multipolygons; deeper ones have no meaning and would fill the stack. */
    private static final int DEEPEST = 5;

    private final BoundaryLog log;

    private WktBoundary(BoundaryLog log) {
        this.log = log;
    }

    static List<RawFeature> read(String text, BoundaryLog log) {
        WktBoundary boundary = new WktBoundary(log);
        List<RawFeature> features = new ArrayList<>();
        long number = 0;
        for (String line : text.lines().toList()) {
            number++;
            if (!line.isBlank() && !line.startsWith("#")) {
                boundary.feature(line, number).ifPresent(features::add);
            }
        }
        return features;
    }

    private Optional<RawFeature> feature(String line, long number) {
        int cut = Math.max(line.indexOf(';'), line.indexOf('\t'));
        String code = line.substring(0, Math.max(0, cut)).strip();
        RawFeature bare = new RawFeature("", number, code, List.of());
        if (code.toUpperCase(Locale.ROOT).startsWith("SRID=")) {
            log.add(Rule.BOUNDARY_POSITION, bare, code, code + " is no code; take it out and say it under tract.crs");
            return Optional.empty();
        }
        List<RawPolygon> polygons = new ArrayList<>();
        Optional<Geometry> geometry = geometry(line.substring(cut + 1), bare);
        if (geometry.isEmpty()) {
            return Optional.of(bare); // its stratum is not missing, only its shape
        }
        collect(geometry.get(), bare, polygons);
        return polygons.isEmpty() ? Optional.empty() : Optional.of(new RawFeature("", number, code, polygons));
    }

    private Optional<Geometry> geometry(String text, RawFeature at) {
        if (depth(text) > DEEPEST) {
            log.add(Rule.BOUNDARY_UNREADABLE, at, start(text), "brackets lie deeper than well-known text has them");
            return Optional.empty();
        }
        try {
            return Optional.of(new WKTReader().read(text));
        } catch (ParseException e) {
            log.add(
                    Rule.BOUNDARY_UNREADABLE,
                    at,
                    start(text),
                    "this line is no well-known text, such as POLYGON ((0 0," + " 0 9, 9 9, 0 0)): " + e.getMessage());
        } catch (IllegalArgumentException e) {
            if (text.matches("(?is).*\\b(nan|inf|infinity)\\b.*")) { // such a ring never returns to its start
                log.add(
                        Rule.BOUNDARY_POSITION,
                        at,
                        start(text),
                        "a position is two finite numbers, and one here is not");
                return Optional.empty();
            }
            log.add(
                    Rule.BOUNDARY_SHAPE,
                    at,
                    start(text),
                    "a ring has fewer than four positions, or its last is not its" + " first");
        }
        return Optional.empty();
    }

    private static int depth(String text) {
        int depth = 0;
        int deepest = 0;
        for (int i = 0; i < text.length(); i++) {
            depth += text.charAt(i) == '(' ? 1 : text.charAt(i) == ')' ? -1 : 0;
            deepest = Math.max(deepest, depth);
        }
        return deepest;
    }

    private static String start(String text) {
        return text.strip().substring(0, Math.min(40, text.strip().length()));
    }

    private void collect(Geometry geometry, RawFeature at, List<RawPolygon> into) {
        if (geometry instanceof GeometryCollection many && !many.isEmpty()) {
            for (int i = 0; i < many.getNumGeometries(); i++) {
                collect(many.getGeometryN(i), at, into);
            }
        } else if (geometry instanceof Polygon polygon && !polygon.isEmpty()) {
            into.add(raw(polygon));
        } else {
            String type = geometry.getGeometryType() + (geometry.isEmpty() ? " without positions" : "");
            log.add(Rule.BOUNDARY_READ, at, type, "a " + type + " is no polygon and is left out");
        }
    }

    private static RawPolygon raw(Polygon polygon) {
        List<List<Coordinate>> rings = new ArrayList<>();
        rings.add(corners(polygon.getExteriorRing()));
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            rings.add(corners(polygon.getInteriorRingN(i)));
        }
        return new RawPolygon(rings);
    }

    private static List<Coordinate> corners(LinearRing ring) {
        return List.of(ring.getCoordinates());
    }
}
