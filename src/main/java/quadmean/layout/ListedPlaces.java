package quadmean.layout;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import quadmean.model.ListedPlot;
import quadmean.model.Position;

/** Where the plots of a plot list are, on the plane of the UTM zone that the first of them lies in. */
public final class ListedPlaces {
    private ListedPlaces() {}

    /** Places by plot number, in the order of the list; plots of which the list does not say where they are have none. */
    public static Map<String, SheetPlace> of(List<ListedPlot> plots) {
        Map<String, SheetPlace> places = new LinkedHashMap<>();
        UtmGrid grid = null;
        for (ListedPlot plot : plots) {
            Position at = plot.position();
            if (at != null) {
                grid = grid == null ? UtmGrid.around(lonLat(at)) : grid;
                Coordinate metres = grid.toGrid(lonLat(at));
                places.put(plot.id(), new SheetPlace(at.longitude(), at.latitude(), metres.x, metres.y));
            }
        }
        return places;
    }

    private static Coordinate lonLat(Position at) {
        return new Coordinate(at.longitude(), at.latitude());
    }
}
