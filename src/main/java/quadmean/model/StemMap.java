package quadmean.model;

import java.util.List;

/**
 * Every stem on a rectangle of ground.
 *
 * @param name what messages call it
 * @param left least x (m)
 * @param bottom least y (m)
 * @param right greatest x (m), above {@code left}
 * @param top greatest y (m), above {@code bottom}
 * @param stems the stems, all within
 */
public record StemMap(String name, double left, double bottom, double right, double top, List<MappedStem> stems) {
    public StemMap {
        stems = List.copyOf(stems);
        if (!(right > left && top > bottom)) {
            throw new IllegalArgumentException("a map of stems has a width and a length");
        }
    }

    /** Width along x (m). */
    public double width() {
        return right - left;
    }

    /** Length along y (m). */
    public double length() {
        return top - bottom;
    }

    /** Area (ha). */
    public double areaHa() {
        return width() * length() / PlotDesign.M2_PER_HA;
    }
}
