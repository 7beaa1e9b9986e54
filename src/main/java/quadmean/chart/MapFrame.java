package quadmean.chart;

import java.util.List;
import quadmean.chart.TractMap.Point;

/** Where metres come to lie on the drawing: one scale for both axes, north up. */
final class MapFrame {
    static final double WIDTH = 720;
    static final double MARGIN = 34;
    private static final double TALLEST = 760;

    private final double west;
    private final double north;
    private final double scale;
    private final double left;
    private final double height;

    private MapFrame(double west, double north, double scale, double left, double height) {
        this.west = west;
        this.north = north;
        this.scale = scale;
        this.left = left;
        this.height = height;
    }

    /** The frame that holds all places; a single place gets ground about it. */
    static MapFrame around(TractMap map) {
        List<Point> points = map.points().toList();
        double west = points.stream().mapToDouble(Point::x).min().orElse(0);
        double east = points.stream().mapToDouble(Point::x).max().orElse(0);
        double south = points.stream().mapToDouble(Point::y).min().orElse(0);
        double north = points.stream().mapToDouble(Point::y).max().orElse(0);
        double wide = Math.max(east - west, 1);
        double tall = Math.max(north - south, 1);
        double scale = Math.min((WIDTH - 2 * MARGIN) / wide, (TALLEST - 2 * MARGIN) / tall);
        double left = (WIDTH - scale * (east - west)) / 2;
        return new MapFrame(west, north, scale, left, scale * (north - south) + 2 * MARGIN);
    }

    double x(Point p) {
        return left + scale * (p.x() - west);
    }

    double y(Point p) {
        return MARGIN + scale * (north - p.y());
    }

    /** Drawing units for each metre. */
    double scale() {
        return scale;
    }

    /** Height of the drawing of the tract. */
    double height() {
        return height;
    }
}
