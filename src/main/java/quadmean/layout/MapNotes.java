package quadmean.layout;

import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** What a reader of the results should know of the map. */
final class MapNotes {
    private MapNotes() {}

    static List<String> of(MapGrid grid, Geometry tract) {
        String area = "Areas: " + grid.areaMethod() + ".";
        if (grid instanceof LocalGrid) {
            return List.of("Coordinates are those of a local plane, in metres.", area);
        }
        Envelope e = tract.getEnvelopeInternal();
        double[] scales = Stream.of(
                        new Coordinate(e.getMinX(), e.getMinY()),
                        new Coordinate(e.getMaxX(), e.getMinY()),
                        new Coordinate(e.getMinX(), e.getMaxY()),
                        new Coordinate(e.getMaxX(), e.getMaxY()))
                .mapToDouble(grid::scaleAt)
                .toArray();
        return List.of(
                String.format(
                        Locale.ROOT,
                        "Laid out on %s; lengths on it are %s at sea level. Its north lies %s true north in the middle of the"
                                + " tract. Distances and bearings given are those on the ellipsoid, from true north.",
                        grid.name(),
                        lengths(
                                DoubleStream.of(scales).min().orElse(1),
                                DoubleStream.of(scales).max().orElse(1)),
                        side(grid.convergenceDegrees(e.centre()))),
                area + " 1000 m higher the ground is 0.03 % larger.");
    }

    private static String lengths(double least, double most) {
        String from = String.format(Locale.ROOT, "%+.3f", 100 * (least - 1));
        String to = String.format(Locale.ROOT, "%+.3f", 100 * (most - 1));
        return (from.equals(to) ? from : from + " to " + to) + " % off those on the ellipsoid";
    }

    /** True north turned clockwise from the grid's puts the grid's to the west of it. */
    private static String side(double convergence) {
        return String.format(
                Locale.ROOT, "%.2f degrees %s of", Math.abs(convergence), convergence > 0 ? "west" : "east");
    }
}
