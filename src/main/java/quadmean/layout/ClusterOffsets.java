package quadmean.layout;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import quadmean.design.LayoutSettings.Cluster;
import quadmean.design.LayoutSettings.Shape;

/** Where the plots of a cluster lie, seen from its middle. */
final class ClusterOffsets {
    private ClusterOffsets() {}

    /**
     * Offsets (m on the grid).
     *
     * @param degrees direction of a line, or of the first plot of a ring, clockwise from the grid's north
     * @param scale length on the grid over length on the ground
     */
    static List<Coordinate> of(Cluster cluster, double degrees, double scale) {
        int n = cluster.plots();
        double spacing = cluster.spacingM() * scale;
        List<Coordinate> offsets = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            if (cluster.shape() == Shape.LINE) {
                offsets.add(toward(degrees, (i - (n - 1) / 2.0) * spacing));
            } else { // the side of a regular polygon is 2·r·sin(π/n)
                offsets.add(toward(degrees + 360.0 * i / n, spacing / (2 * Math.sin(Math.PI / n))));
            }
        }
        return offsets;
    }

    private static Coordinate toward(double degrees, double distance) {
        double angle = Math.toRadians(degrees);
        return new Coordinate(distance * Math.sin(angle), distance * Math.cos(angle));
    }
}
