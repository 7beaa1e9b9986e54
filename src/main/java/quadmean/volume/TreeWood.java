package quadmean.volume;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The wood of one tree. What the design does not ask for, or what is not known, is NaN.
 *
 * @param volumeM3 cubic volume by the tree equation (m³)
 * @param treeBoardFeet gross board feet by a tree equation; empty where they come from the logs
 * @param defect share of the tree taken off for defect, in [0, 1]; the logs have it in theirs
 * @param logs the logs that the stem is cut into, butt log first; none if it is not cut
 * @param dryKg dry biomass (kg)
 * @param greenKg green weight (kg)
 * @param carbonKg carbon in the dry biomass (kg)
 */
public record TreeWood(
        double volumeM3,
        OptionalDouble treeBoardFeet,
        double defect,
        List<CutLog> logs,
        double dryKg,
        double greenKg,
        double carbonKg) {
    public TreeWood {
        logs = List.copyOf(logs);
        if (!(defect >= 0 && defect <= 1)) {
            throw new IllegalArgumentException("the share of defect must lie in [0, 1], got " + defect);
        }
    }

    /** A tree of which only the cubic volume is known. */
    public static TreeWood ofVolume(double volumeM3) {
        return new TreeWood(volumeM3, OptionalDouble.empty(), 0, List.of(), Double.NaN, Double.NaN, Double.NaN);
    }

    /** Gross board feet by the tree equation, else of the logs; 0 without either. */
    public double boardFeet() {
        return treeBoardFeet.orElseGet(
                () -> logs.stream().mapToDouble(CutLog::boardFeet).sum());
    }
}
