package quadmean.layout;

import java.util.List;

/**
 * Plots laid out on a tract.
 *
 * @param asked number asked for (clusters where plots come in clusters); 0 if a spacing was given instead
 * @param plots those laid out, by stratum and in the order of their lines
 * @param grounds what each piece of ground got
 * @param leftOut plots of clusters that lie beyond a line
 * @param nearestM smallest distance between two plots by design (m on the ground); infinite where chance decides
 * @param rowSpacingM width of the strips that they can be walked in (m)
 * @param linesDegrees direction of these strips, clockwise from the grid's north (degrees)
 * @param notes what a reader should know, in sentences
 */
public record Layout(
        int asked,
        List<LaidPlot> plots,
        List<Ground> grounds,
        List<LeftOut> leftOut,
        double nearestM,
        double rowSpacingM,
        double linesDegrees,
        List<String> notes) {
    /** Stands for all strata, where one layout covers the tract. */
    public static final String WHOLE = "*";

    public Layout {
        plots = List.copyOf(plots);
        grounds = List.copyOf(grounds);
        leftOut = List.copyOf(leftOut);
        notes = List.copyOf(notes);
    }

    /**
     * The ground of one layout.
     *
     * @param stratum code of its stratum, or {@link #WHOLE}
     * @param asked number asked for (clusters where plots come in clusters); 0 if a spacing was given instead
     * @param laid plots laid out
     * @param alongM distance between neighbours on a line of a grid (m on the ground); NaN where there is none
     * @param acrossM distance between the lines (m on the ground); NaN likewise
     * @param bufferPercent share of the ground that the buffer keeps plots off (percent)
     */
    public record Ground(String stratum, int asked, int laid, double alongM, double acrossM, double bufferPercent) {
        /** The same ground with the plots of another subset too. */
        Ground with(Ground other) {
            return new Ground(stratum, asked + other.asked, laid + other.laid, alongM, acrossM, bufferPercent);
        }
    }

    /**
     * A plot of a cluster that lies beyond the line.
     *
     * @param cluster its cluster
     * @param plot its place in the cluster, from 1
     */
    public record LeftOut(int cluster, int plot) {}
}
