package quadmean.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import quadmean.cruise.CruiseResult;

/**
 * The charts of a cruise.
 *
 * @param pictures the charts, in reading order; none if they could not be drawn
 * @param missing why there are none and what to do about it; empty if there are charts
 */
public record ChartSet(List<Picture> pictures, String missing) {
    private static final String NO_FONTS = "The charts could not be drawn: this computer gives the program no fonts to"
            + " write with. The numbers are not affected. On Debian or Ubuntu, run \"apt-get install fontconfig"
            + " fonts-dejavu-core\" and then this command again.";

    public ChartSet {
        pictures = List.copyOf(pictures);
    }

    /** Draws all charts: estimates by species and stratum, running mean, what more plots bring, heights and their residuals, diameters. */
    public static ChartSet of(CruiseResult result) {
        return drawn(() -> draw(result));
    }

    /**
     * Runs the drawing; where the platform has no fonts or no graphics library, which it reports by errors of several
     * kinds, a message takes the place of the pictures.
     */
    static ChartSet drawn(Supplier<List<Picture>> drawing) {
        try {
            return new ChartSet(drawing.get(), "");
        } catch (InternalError | LinkageError e) {
            return without(e);
        } catch (RuntimeException | Error e) {
            if (fromGraphics(e)) {
                return without(e);
            }
            throw e;
        }
    }

    private static ChartSet without(Throwable reason) {
        return new ChartSet(List.of(), NO_FONTS + " (The platform says: " + reason + ")");
    }

    /** Whether a failure arose in the platform's font code and not in ours; it throws plain errors too. */
    private static boolean fromGraphics(Throwable e) {
        StackTraceElement[] trace = e.getStackTrace();
        return trace.length > 0
                && (trace[0].getClassName().startsWith("sun.font.")
                        || trace[0].getClassName().startsWith("sun.awt.")
                        || trace[0].getClassName().startsWith("java.awt."));
    }

    private static List<Picture> draw(CruiseResult result) {
        SpeciesColours colours = SpeciesColours.of(result);
        List<Picture> pictures = new ArrayList<>(EstimateChart.pictures(result, colours));
        RunningMeanChart.picture(result).ifPresent(pictures::add);
        GainChart.picture(result).ifPresent(pictures::add);
        HeightChart.picture(result, colours).ifPresent(pictures::add);
        ResidualChart.picture(result, colours).ifPresent(pictures::add);
        pictures.addAll(DiameterChart.pictures(result, colours));
        pictures.addAll(LogChart.pictures(result, colours));
        return pictures;
    }
}
