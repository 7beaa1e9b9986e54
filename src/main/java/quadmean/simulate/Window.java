package quadmean.simulate;

import org.locationtech.jts.geom.Envelope;

/**
 * The ground of a map of trees.
 *
 * @param west its western side (m)
 * @param south its southern side (m)
 * @param east its eastern side (m)
 * @param north its northern side (m)
 */
public record Window(double west, double south, double east, double north) {
    public Window {
        if (!(east > west && north > south && Double.isFinite(east - west) && Double.isFinite(north - south))) {
            throw new IllegalArgumentException("a window has an extent above zero");
        }
    }

    /** The window of its four sides: west, south, east, north. */
    public static Window of(double[] sides) {
        if (sides.length != 4) {
            throw new IllegalArgumentException("a window has four sides, got " + sides.length);
        }
        return new Window(sides[0], sides[1], sides[2], sides[3]);
    }

    Envelope envelope() {
        return new Envelope(west, east, south, north);
    }
}
