package quadmean.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import quadmean.model.Rule;

/**
 * Makes polygons of one walked track. Where each segment ends near its start, each is a ring, and one inside another is a
 * hole; otherwise the segments are pieces of one walk.
 */
final class Walk {
    /** The largest gap that is closed, over the length of the walk (common practice, no source). */
    private static final double GAP = 0.05;

    private static final GeometryFactory SHAPES = new GeometryFactory();

    private final RawFeature track;
    private final BoundaryLog log;

    Walk(RawFeature track, BoundaryLog log) {
        this.track = track;
        this.log = log;
    }

    List<RawPolygon> polygons(List<List<Coordinate>> segments) {
        boolean eachCloses = segments.stream().allMatch(s -> isClosed(s) && places(s) >= 3);
        List<List<Coordinate>> walks = eachCloses
                ? segments
                : List.of(segments.stream().flatMap(List::stream).toList());
        List<List<Coordinate>> rings = new ArrayList<>();
        for (List<Coordinate> walk : walks) {
            if (isUsable(walk)) {
                rings.add(closed(walk));
            }
        }
        if (!eachCloses && segments.size() > 1 && !rings.isEmpty()) {
            log.add(
                    Rule.BOUNDARY_READ,
                    track,
                    "",
                    segments.size() + " segments are taken as pieces of one walk, the"
                            + " widest gap between two being " + GpxBoundary.metres(widest(segments)));
        }
        return nested(rings);
    }

    private boolean isUsable(List<Coordinate> walk) {
        if (places(walk) < 3) {
            log.add(Rule.BOUNDARY_WALK, track, "", "the track has " + places(walk) + " different places");
            return false;
        }
        if (!isClosed(walk)) {
            log.add(
                    Rule.BOUNDARY_WALK,
                    track,
                    GpxBoundary.metres(gap(walk)),
                    String.format(
                            Locale.ROOT,
                            "the walk of %s ends %s from its start, more than %.0f %% of its length",
                            GpxBoundary.metres(length(walk)),
                            GpxBoundary.metres(gap(walk)),
                            100 * GAP));
            return false;
        }
        return true;
    }

    private List<Coordinate> closed(List<Coordinate> walk) {
        if (walk.get(0).equals2D(walk.get(walk.size() - 1))) {
            return walk;
        }
        log.add(
                Rule.BOUNDARY_READ,
                track,
                GpxBoundary.metres(gap(walk)),
                "a walk of " + GpxBoundary.metres(length(walk)) + " was closed over a gap of "
                        + GpxBoundary.metres(gap(walk)));
        List<Coordinate> ring = new ArrayList<>(walk);
        ring.add(walk.get(0));
        return ring;
    }

    /** Rings as polygons: the largest first, and those inside one of them as its holes. */
    private static List<RawPolygon> nested(List<List<Coordinate>> rings) {
        List<Polygon> bySize = rings.stream()
                .map(r -> SHAPES.createPolygon(r.toArray(Coordinate[]::new)))
                .sorted(Comparator.comparingDouble(Polygon::getArea).reversed())
                .toList();
        List<Polygon> shells = new ArrayList<>();
        List<List<List<Coordinate>>> polygons = new ArrayList<>();
        for (Polygon ring : bySize) {
            int around = 0;
            while (around < shells.size() && !contains(shells.get(around), ring)) {
                around++;
            }
            if (around == shells.size()) {
                shells.add(ring);
                polygons.add(new ArrayList<>());
            }
            polygons.get(around).add(List.of(ring.getCoordinates()));
        }
        return polygons.stream().map(RawPolygon::new).toList();
    }

    /** Whether a ring lies inside another; one that crosses itself, which is found later, lies in none. */
    private static boolean contains(Polygon shell, Polygon ring) {
        return shell.isValid() && ring.isValid() && shell.contains(ring);
    }

    private static long places(List<Coordinate> walk) {
        return walk.stream().map(c -> List.of(c.x, c.y)).distinct().count();
    }

    private static boolean isClosed(List<Coordinate> walk) {
        return walk.size() > 1 && gap(walk) <= GAP * length(walk);
    }

    private static double gap(List<Coordinate> walk) {
        return distance(walk.get(walk.size() - 1), walk.get(0));
    }

    private static double length(List<Coordinate> walk) {
        double length = 0;
        for (int i = 1; i < walk.size(); i++) {
            length += distance(walk.get(i - 1), walk.get(i));
        }
        return length;
    }

    private static double widest(List<List<Coordinate>> segments) {
        double widest = 0;
        for (int i = 1; i < segments.size(); i++) {
            List<Coordinate> before = segments.get(i - 1);
            widest = Math.max(
                    widest,
                    distance(before.get(before.size() - 1), segments.get(i).get(0)));
        }
        return widest;
    }

    private static double distance(Coordinate a, Coordinate b) {
        return Course.onEllipsoid(a, b).distanceMetres();
    }
}
