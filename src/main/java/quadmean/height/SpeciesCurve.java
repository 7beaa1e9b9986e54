package quadmean.height;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The curve search for one species, or for all of them together.
 *
 * @param species species code; {@code *} for the pooled curve
 * @param heights field heights it had to go on, those set aside not counted
 * @param fits every form tried, with what came of it
 * @param chosen the curve in use for the species; the pooled one where its own would not do; null if there is none
 * @param reason why this curve, in a sentence
 */
public record SpeciesCurve(
        String species,
        int heights,
        List<CurveFit> fits,
        @Nullable HeightCurve chosen,
        String reason) {
    /** Code of the pooled curve. */
    public static final String POOLED = "*";

    public SpeciesCurve {
        fits = List.copyOf(fits);
    }
}
