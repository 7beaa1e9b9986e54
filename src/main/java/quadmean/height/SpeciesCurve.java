package quadmean.height;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The curve search for one species, one group, or for all species together.
 *
 * @param species code of the species or group; {@code *} for the pooled curve
 * @param scope which of these it is
 * @param heights field heights it had to go on, those set aside not counted
 * @param fits every form tried, with what came of it
 * @param chosen the curve in use for the species; that of its group or the pooled one where its own would not do; null if
 *     there is none
 * @param calibration what came of moving the curve to the level of each plot; null where it was not tried
 * @param reason why this curve, in a sentence
 */
public record SpeciesCurve(
        String species,
        CurveScope scope,
        int heights,
        List<CurveFit> fits,
        @Nullable HeightCurve chosen,
        @Nullable PlotCalibration calibration,
        String reason) {
    /** Code of the pooled curve. */
    public static final String POOLED = "*";

    public SpeciesCurve {
        fits = List.copyOf(fits);
    }

    /** Whether the curve in use was fitted to the heights of this very species or group. */
    public boolean isOwn() {
        return chosen != null && chosen.scope() == scope && chosen.species().equals(species);
    }

    /** The calibration in use, null if there is none. */
    public @Nullable PlotCalibration used() {
        return calibration != null && calibration.isUsed() ? calibration : null;
    }
}
