package quadmean.layout;

import org.locationtech.jts.geom.Coordinate;

/**
 * A place drawn by a pattern, before anyone asks whether a plot is there.
 *
 * @param at on the grid (m)
 * @param row line, or -1 without lines
 * @param column place on the line, or -1
 */
record Spot(Coordinate at, int row, int column) {
    static Spot free(Coordinate at) {
        return new Spot(at, -1, -1);
    }
}
