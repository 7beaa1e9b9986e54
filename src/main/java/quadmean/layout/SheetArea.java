package quadmean.layout;

import java.util.List;

/**
 * The ground of a stratum, or of the tract, as the map draws it.
 *
 * @param name name for people
 * @param rings outlines of its parts and of the holes in them, in any order and direction
 */
public record SheetArea(String name, List<List<Corner>> rings) {
    public SheetArea {
        rings = rings.stream().map(List::copyOf).toList();
    }

    /**
     * A corner of an outline.
     *
     * @param eastM metres on the plane of the map, toward east
     * @param northM metres toward north
     */
    public record Corner(double eastM, double northM) {}
}
