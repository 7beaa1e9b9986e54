package quadmean.layout;

import java.util.List;
import org.locationtech.jts.geom.Geometry;

/**
 * A tract on the map.
 *
 * @param grid the plane it lies in
 * @param parts the strata in the order of the design
 * @param outline the whole tract: the outline that the file gives, or all strata together
 * @param areas area of each stratum, in the order of the design
 * @param whole area of all strata together
 * @param restHa area of the outline in no stratum (ha); 0 where the file gives no outline
 * @param notes what a reader of the results should know of the map, as sentences
 */
public record Tract(
        MapGrid grid,
        List<TractPart> parts,
        Geometry outline,
        List<StratumArea> areas,
        StratumArea whole,
        double restHa,
        List<String> notes) {
    public Tract {
        parts = List.copyOf(parts);
        areas = List.copyOf(areas);
        notes = List.copyOf(notes);
    }
}
