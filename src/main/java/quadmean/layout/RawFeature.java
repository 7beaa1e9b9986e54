package quadmean.layout;

import java.util.List;

/**
 * A feature of a boundary file as it stands there, in the coordinates of the file.
 *
 * @param place where it is, such as {@code feature 3}
 * @param line line of the file, 0 if not known
 * @param code what it says of its stratum, empty if nothing
 * @param polygons its polygons
 */
record RawFeature(String place, long line, String code, List<RawPolygon> polygons) {
    RawFeature {
        code = code.strip();
        polygons = List.copyOf(polygons);
    }
}
