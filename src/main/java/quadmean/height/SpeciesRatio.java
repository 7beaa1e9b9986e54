package quadmean.height;

import java.util.Locale;
import quadmean.stats.Moments;

/**
 * How a species stands to a borrowed curve: mean of its heights above breast height over those of the curve.
 *
 * @param value the ratio; 1 where the curve serves as it is
 * @param se its standard error; 0 where the curve serves as it is
 * @param heights number of heights behind it
 */
public record SpeciesRatio(double value, double se, int heights) {
    /** Fewer heights than this scale no curve: the ratio would be off by more than species differ. Common practice, no source. */
    static final int LEAST = 3;

    /** The curve as it is. */
    static final SpeciesRatio NONE = new SpeciesRatio(1, 0, 0);

    /** The mean of ratios; the curve as it is where there are too few. */
    static SpeciesRatio of(double[] ratios) {
        Moments m = Moments.of(ratios);
        return m.n() < LEAST ? NONE : new SpeciesRatio(m.mean(), m.sd() / Math.sqrt(m.n()), m.n());
    }

    String words() {
        return heights == 0
                ? "as it is"
                : String.format(
                        Locale.ROOT,
                        "times %.3f, the mean ratio of its %d heights above breast height to the curve's",
                        value,
                        heights);
    }
}
