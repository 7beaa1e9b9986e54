package quadmean.layout;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * A polygon as its file has it, not yet checked.
 *
 * @param rings the outer ring, then the holes
 */
record RawPolygon(List<List<Coordinate>> rings) {
    RawPolygon {
        rings = rings.stream().map(List::copyOf).toList();
    }
}
