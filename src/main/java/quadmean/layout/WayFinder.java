package quadmean.layout;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.PolygonExtracter;

/** Whether straight legs stay on the tract. */
final class WayFinder {
    /** What a leg may touch of a hole, or of the ground outside, and still count as open (m). Common practice, no source. */
    private static final double TOUCH = 1;

    private final Geometry outline;
    private final PreparedGeometry inside;
    private final List<Polygon> holes = new ArrayList<>();

    WayFinder(Geometry outline) {
        this.outline = outline;
        this.inside = PreparedGeometryFactory.prepare(outline);
        for (Object polygon : PolygonExtracter.getPolygons(outline)) {
            Polygon p = (Polygon) polygon;
            for (int i = 0; i < p.getNumInteriorRing(); i++) {
                holes.add(p.getFactory().createPolygon(p.getInteriorRingN(i)));
            }
        }
    }

    /** What a leg meets; one that starts or ends off the tract is not told that it leaves it. */
    SheetRoute.Way way(Coordinate from, Coordinate to) {
        Geometry leg = outline.getFactory().createLineString(new Coordinate[] {from, to});
        if (inside.covers(leg)) {
            return SheetRoute.Way.OPEN;
        }
        if (holes.stream().anyMatch(h -> h.intersection(leg).getLength() > TOUCH)) {
            return SheetRoute.Way.AROUND;
        }
        boolean both = onTract(from) && onTract(to);
        return both && leg.difference(outline).getLength() > TOUCH ? SheetRoute.Way.OUTSIDE : SheetRoute.Way.OPEN;
    }

    private boolean onTract(Coordinate at) {
        return outline.distance(outline.getFactory().createPoint(at)) <= TOUCH;
    }
}
