package quadmean.simulate;

import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import quadmean.measure.TractRectangle;

/** A piece of ground with a line around it, beyond which no tree counts. Safe to use from several threads. */
final class Ground {
    private static final double M2_PER_HA = 10_000;
    /** A shape that fills its box up to rounding is a rectangle. */
    private static final double FULL = 1 - 1e-9;

    private final Geometry shape;
    private final Envelope box;
    private final boolean rectangle;
    private final TractRectangle tract;
    private final IndexedPointInAreaLocator locator;
    private final IndexedFacetDistance line;

    Ground(Geometry shape) {
        this.shape = shape;
        this.box = shape.getEnvelopeInternal();
        this.rectangle = shape.getArea() >= FULL * box.getArea();
        this.tract = new TractRectangle(box.getWidth(), box.getHeight());
        this.locator = new IndexedPointInAreaLocator(shape);
        this.line = new IndexedFacetDistance(shape.getBoundary());
    }

    Geometry shape() {
        return shape;
    }

    Envelope box() {
        return box;
    }

    /** Its area on the plane (ha). */
    double areaHa() {
        return shape.getArea() / M2_PER_HA;
    }

    boolean isRectangle() {
        return rectangle;
    }

    /** The smaller side of its box (m). */
    double narrow() {
        return Math.min(box.getWidth(), box.getHeight());
    }

    boolean holds(double x, double y) {
        if (!box.contains(x, y) || rectangle) {
            return box.contains(x, y);
        }
        return locator.locate(new Coordinate(x, y)) != Location.EXTERIOR;
    }

    /** Distance of a place inside to the line (m). */
    double lineM(double x, double y) {
        if (rectangle) {
            return Math.min(
                    Math.min(x - box.getMinX(), box.getMaxX() - x), Math.min(y - box.getMinY(), box.getMaxY() - y));
        }
        return line.distance(shape.getFactory().createPoint(new Coordinate(x, y)));
    }

    /** Times that a tree within its limit counts by mirage, the images of corners included; rectangles only. */
    int mirage(double x, double y, double treeX, double treeY, double limit) {
        return tract.mirage(
                x - box.getMinX(),
                y - box.getMinY(),
                treeX - box.getMinX(),
                treeY - box.getMinY(),
                limit,
                TractRectangle.Images.EDGES_AND_CORNERS);
    }

    /** Times that a tree within its limit counts by walkthrough. */
    int walkthrough(double x, double y, double treeX, double treeY) {
        return holds(2 * treeX - x, 2 * treeY - y) ? 1 : 2;
    }
}
