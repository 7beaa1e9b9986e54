package quadmean.layout;

import java.util.List;
import java.util.OptionalInt;

/**
 * What the sheets of a cruise are made from, besides its design.
 *
 * @param asked number of plots asked for; empty if nobody asked for a number
 * @param plots the plots laid out
 * @param route how they are walked
 * @param remarks sentences on the layout that the crew should read, such as on buffers
 */
public record SheetSet(OptionalInt asked, List<SheetPlot> plots, SheetRoute route, List<String> remarks) {
    public SheetSet {
        plots = List.copyOf(plots);
        remarks = List.copyOf(remarks);
    }

    /** The plot of a number, if there is one. */
    public java.util.Optional<SheetPlot> plot(String number) {
        return plots.stream().filter(p -> p.number().equals(number)).findFirst();
    }
}
