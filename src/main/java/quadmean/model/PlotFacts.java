package quadmean.model;

/** What the list of plots says of a plot besides its stratum. */
public record PlotFacts() {
    /** Nothing said. */
    public static final PlotFacts NONE = new PlotFacts();
}
