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

    /** The name used in design files. */
    public String id() {
        return id;
    }
}
