package quadmean.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.PolygonExtracter;

/** Places drawn at random in a shape, every place with the same chance. */
final class RandomPattern {
    /** Halvings after which places that still share a cell are drawn apart from one another. */
    private static final int DEEPEST = 40;

    private RandomPattern() {}

    /** Independent places. */
    static List<Spot> independent(Geometry shape, int n, SplittableRandom random) {
        PreparedGeometry prepared = PreparedGeometryFactory.prepare(shape);
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            spots.add(Spot.free(draw(prepared, random)));
        }
        return spots;
    }

    /**
     * Places spread over the shape: a generalised random tessellation (Stevens and Olsen 2004, from memory). The ground is
     * quartered again and again, the quarters in random order; laid end to end in that order it is sampled systematically
     * from a random start, one place for every n-th part of the area, which gives every place the same chance.
     */
    static List<Spot> balanced(Geometry shape, int n, SplittableRandom random) {
        double step = shape.getArea() / n;
        double start = random.nextDouble();
        List<Double> marks = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            marks.add((i + start) * step);
        }
        List<Spot> spots = new ArrayList<>();
        Envelope box = new Envelope(shape.getEnvelopeInternal());
        quarter(shape, box, marks, step, 0, spots, random);
        return spots;
    }

    private static void quarter(
            Geometry shape,
            Envelope box,
            List<Double> marks,
            double step,
            int depth,
            List<Spot> spots,
            SplittableRandom random) {
        if (marks.isEmpty()) {
            return;
        }
        // a larger cell can hold two marks: drawing freely in it whenever it holds one would favour its small quarters
        if (shape.getArea() <= step || depth == DEEPEST) {
            spots.addAll(independent(shape, marks.size(), random));
            return;
        }
        List<Envelope> quarters = quarters(box);
        Collections.shuffle(quarters, new java.util.Random(random.nextLong()));
        List<Geometry> parts = quarters.stream()
                .map(q -> polygons(shape.intersection(shape.getFactory().toGeometry(q))))
                .toList();
        int last = 3;
        while (parts.get(last).getArea() == 0) {
            last--;
        }
        double from = 0;
        for (int i = 0; i <= last; i++) {
            double low = from;
            double high =
                    i == last ? Double.POSITIVE_INFINITY : from + parts.get(i).getArea();
            List<Double> mine = marks.stream()
                    .filter(m -> m >= low && m < high)
                    .map(m -> m - low)
                    .toList();
            quarter(parts.get(i), quarters.get(i), mine, step, depth + 1, spots, random);
            from = high;
        }
    }

    /** The polygons of a cut, without the lines and points where it only touches. */
    private static Geometry polygons(Geometry cut) {
        List<?> polygons = PolygonExtracter.getPolygons(cut);
        return cut.getFactory().createMultiPolygon(polygons.toArray(Polygon[]::new));
    }

    private static List<Envelope> quarters(Envelope box) {
        Coordinate c = box.centre();
        return new ArrayList<>(List.of(
                new Envelope(box.getMinX(), c.x, box.getMinY(), c.y),
                new Envelope(c.x, box.getMaxX(), box.getMinY(), c.y),
                new Envelope(box.getMinX(), c.x, c.y, box.getMaxY()),
                new Envelope(c.x, box.getMaxX(), c.y, box.getMaxY())));
    }

    private static Coordinate draw(PreparedGeometry shape, SplittableRandom random) {
        Envelope box = shape.getGeometry().getEnvelopeInternal();
        while (true) {
            Coordinate at = new Coordinate(
                    box.getMinX() + random.nextDouble() * box.getWidth(),
                    box.getMinY() + random.nextDouble() * box.getHeight());
            if (shape.covers(shape.getGeometry().getFactory().createPoint(at))) {
                return at;
            }
        }
    }
}
