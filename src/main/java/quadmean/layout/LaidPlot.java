package quadmean.layout;

import java.util.OptionalInt;
import org.locationtech.jts.geom.Coordinate;

/**
 * A plot that was laid out.
 *
 * @param stratum code of the stratum it lies in
 * @param at where it lies, on the tract's grid (m); not to be changed
 * @param row line of a grid, from 0
 * @param column place on the line
 * @param cluster number of its cluster, if it has one
 * @param edgeM distance to the line of the tract (m)
 * @param lineM distance to the nearest line that counts: that of the tract, or of its stratum where each is laid out for itself (m)
 * @param edge whether the boundary treatment concerns it
 * @param subset number of the subset that it belongs to; 0 where there is one layout
 */
public record LaidPlot(
        String stratum,
        Coordinate at,
        OptionalInt row,
        OptionalInt column,
        OptionalInt cluster,
        double edgeM,
        double lineM,
        SheetPlot.Edge edge,
        int subset) {}
