package quadmean.audit;

/**
 * A subset of the plan.
 *
 * @param name its name
 * @param plots plots in it
 * @param done plots of it that were run, or could not be reached
 */
public record SubsetState(String name, int plots, int done) {
    /** Whether it is walked to its end, and so a sample of the tract. */
    public boolean isWhole() {
        return done == plots;
    }

    /** Whether it was begun and not ended. */
    public boolean isPart() {
        return done > 0 && done < plots;
    }
}
