package quadmean.layout;

import java.util.OptionalInt;

/**
 * A plot as the field sheets and the files for instruments need it.
 *
 * @param number plot number
 * @param stratum code of its stratum
 * @param place where it lies
 * @param row row on the grid of plots, empty if there is none
 * @param column column on the grid
 * @param cluster cluster that it belongs to, empty if none
 * @param edge whether the boundary treatment concerns it
 * @param edgeDistanceM distance to the nearest line that counts: of the tract, or of its stratum where each is laid out for itself
 *     (m); NaN if not known
 * @param subset subset of the plan that it belongs to, empty where there is one layout
 */
public record SheetPlot(
        String number,
        String stratum,
        SheetPlace place,
        OptionalInt row,
        OptionalInt column,
        String cluster,
        Edge edge,
        double edgeDistanceM,
        String subset) {
    /** A plot of a single layout. */
    public SheetPlot(
            String number,
            String stratum,
            SheetPlace place,
            OptionalInt row,
            OptionalInt column,
            String cluster,
            Edge edge,
            double edgeDistanceM) {
        this(number, stratum, place, row, column, cluster, edge, edgeDistanceM, "");
    }

    /** Whether a plot lies so near a line that trees beyond would have been on it. */
    public enum Edge {
        INSIDE,
        NEAR
    }

    /** Whether the boundary treatment concerns it. */
    public boolean isNearEdge() {
        return edge == Edge.NEAR;
    }
}
