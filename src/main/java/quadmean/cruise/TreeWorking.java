package quadmean.cruise;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quadmean.estimate.StemWorking;
import quadmean.height.HeightCurve;
import quadmean.height.HeightedTree;
import quadmean.model.BiomassSpec;
import quadmean.model.GreenWeight;
import quadmean.volume.TreeEquation;

/**
 * How the numbers of one tally row come about.
 *
 * @param tree the tree with its height
 * @param curve the height curve of its species; null where its height is from the field or unknown
 * @param curveHeightM what the curve gives before calibration by plot and before any draw (m); NaN without a curve
 * @param volume its equation of cubic volume with numbers, if there is one
 * @param boardFeet its equation of board feet with numbers, if there is one
 * @param logs its logs
 * @param biomass its equation of dry biomass, if there is one
 * @param greenWeight its factor of green weight, if there is one
 * @param stem what it adds to its plot
 */
public record TreeWorking(
        HeightedTree tree,
        @Nullable HeightCurve curve,
        double curveHeightM,
        Optional<TreeEquation.Working> volume,
        Optional<TreeEquation.Working> boardFeet,
        List<LogWorking> logs,
        Optional<BiomassSpec> biomass,
        Optional<GreenWeight> greenWeight,
        StemWorking stem) {
    public TreeWorking {
        logs = List.copyOf(logs);
    }
}
