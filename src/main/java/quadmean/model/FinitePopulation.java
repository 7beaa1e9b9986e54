package quadmean.model;

/** Whether the standard error shrinks as the plots come to cover the tract. */
public enum FinitePopulation {
    /** No correction: right for points and for plots that could lie anywhere. */
    IGNORE("ignore"),
    /** Correction 1 - n/N, N = area over plot area: right only where the plots tile the tract. */
    CORRECT("correct");

    private final String id;

    FinitePopulation(String id) {
        this.id = id;
    }

    /**
     * Number of plots in a tract, for the correction.
     *
     * @param plot kind and size of the plots
     * @param areaHa area of the tract (ha)
     * @return area over plot area; infinity where no correction is wanted, and for points and nested plots, which have no
     *     one area
     */
    public double plotsIn(PlotDesign plot, double areaHa) {
        if (this == IGNORE) {
            return Double.POSITIVE_INFINITY;
        }
        if (plot instanceof PlotDesign.Strip strip) {
            return areaHa / strip.areaHa();
        }
        return plot instanceof PlotDesign.Fixed fixed ? areaHa / fixed.areaHa() : Double.POSITIVE_INFINITY;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }
}
