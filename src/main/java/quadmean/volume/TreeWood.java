package quadmean.volume;

import java.util.List;

/**
 * The wood of one tree. What the design does not ask for, or what is not known, is NaN.
 *
 * @param volumeM3 cubic volume by the tree equation (m³)
 * @param boardFeet board feet by a tree equation; NaN where they come from the logs
 * @param logs the logs that the stem is cut into, butt log first; none if it is not cut
 * @param dryKg dry biomass (kg)
 * @param greenKg green weight (kg)
 * @param carbonKg carbon in the dry biomass (kg)
 */
public record TreeWood(
        double volumeM3, double boardFeet, List<CutLog> logs, double dryKg, double greenKg, double carbonKg) {
    public TreeWood {
        logs = List.copyOf(logs);
    }

    /** A tree of which only the cubic volume is known. */
    public static TreeWood ofVolume(double volumeM3) {
        return new TreeWood(volumeM3, Double.NaN, List.of(), Double.NaN, Double.NaN, Double.NaN);
    }
}
