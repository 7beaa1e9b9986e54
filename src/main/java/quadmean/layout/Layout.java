package quadmean.layout;

import java.util.List;

/**
 * Plots laid out on a tract.
 *
 * @param asked number asked for (clusters where plots come in clusters); 0 if a spacing was given instead
 * @param plots those laid out, by stratum and in the order of their lines
 * @param nearestM smallest distance between two plots by design (m on the ground); infinite where chance decides
 * @param rowSpacingM width of the strips that they can be walked in (m)
 * @param linesDegrees direction of these strips, clockwise from the grid's north (degrees)
 * @param notes what a reader should know, in sentences
 */
public record Layout(
        int asked, List<LaidPlot> plots, double nearestM, double rowSpacingM, double linesDegrees, List<String> notes) {
    public Layout {
        plots = List.copyOf(plots);
        notes = List.copyOf(notes);
    }
}
