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

    /** Sheets for plots that nobody has placed on a map: tables and forms, and no list of plots. */
    public static SheetSet withoutPlaces(List<String> remarks) {
        SheetPlace nowhere = new SheetPlace(Double.NaN, Double.NaN, 0, 0);
        return new SheetSet(
                OptionalInt.empty(), List.of(), new SheetRoute(nowhere, "start", List.of(), List.of()), remarks);
    }

    /** The same with sentences on it. */
    SheetSet with(List<String> sentences) {
        return new SheetSet(asked, plots, route, sentences);
    }

    /** Whether longitude and latitude are known of the start and of every plot; without them there is nothing for a receiver. */
    public boolean isOnGlobe() {
        return route.start().isOnGlobe()
                && plots.stream().allMatch(p -> p.place().isOnGlobe());
    }

    /** The plot of a number, if there is one. */
    public java.util.Optional<SheetPlot> plot(String number) {
        return plots.stream().filter(p -> p.number().equals(number)).findFirst();
    }
}
