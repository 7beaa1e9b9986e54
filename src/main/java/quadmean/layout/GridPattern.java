package quadmean.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * A lattice of plots. Its start is uniform over one cell, so that every place has the same chance; the number of plots in a
 * shape then varies around area over cell.
 *
 * @param alongM distance between plots of a line (m)
 * @param acrossM distance between lines (m)
 * @param shift how far each line is shifted against the one before, as a share of {@code alongM}
 * @param degrees direction of the lines, clockwise from the grid's north
 */
record GridPattern(double alongM, double acrossM, double shift, double degrees) {
    /** A square grid. */
    static GridPattern square(double spacingM, double degrees) {
        return new GridPattern(spacingM, spacingM, 0, degrees);
    }

    /** A grid on which every plot has six neighbours at the same distance: lines lie √3/2 of it apart. */
    static GridPattern triangular(double spacingM, double degrees) {
        return new GridPattern(spacingM, spacingM * Math.sqrt(0.75), 0.5, degrees);
    }

    /** Ground of each plot (m²). */
    double cell() {
        return alongM * acrossM;
    }

    /** The smallest distance between two plots (m). */
    double nearest() {
        return Math.min(alongM, Math.hypot(acrossM, shift * alongM));
    }

    /** How many points of the lattice have to be looked at to cover a shape. */
    double points(Geometry shape) {
        Envelope box = shape.getEnvelopeInternal();
        double width = Math.hypot(box.getWidth(), box.getHeight());
        return (width / acrossM + 1) * (width / alongM + 1);
    }

    /** The points of one lattice inside the box around a shape. */
    List<Spot> over(Geometry shape, SplittableRandom random) {
        Envelope box = shape.getEnvelopeInternal();
        Coordinate middle = box.centre();
        double reach = Math.hypot(box.getWidth(), box.getHeight()) / 2;
        double startAlong = random.nextDouble() * alongM;
        double startAcross = random.nextDouble() * acrossM;
        double sin = Math.sin(Math.toRadians(degrees));
        double cos = Math.cos(Math.toRadians(degrees));
        int rows = (int) Math.ceil(reach / acrossM) + 1;
        int columns = (int) Math.ceil(reach / alongM) + 1;
        List<Spot> spots = new ArrayList<>();
        for (int row = -rows; row <= rows; row++) {
            double across = startAcross + row * acrossM;
            double shifted = startAlong + (row * shift - Math.floor(row * shift)) * alongM;
            for (int column = -columns - 1; column <= columns; column++) {
                double along = shifted + column * alongM;
                Coordinate at =
                        new Coordinate(middle.x + along * sin + across * cos, middle.y + along * cos - across * sin);
                if (box.contains(at)) {
                    spots.add(new Spot(at, row + rows, column + columns + 1));
                }
            }
        }
        return spots;
    }
}
