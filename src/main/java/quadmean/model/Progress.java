package quadmean.model;

/** Told how far long work has come; called from several threads. */
@FunctionalInterface
public interface Progress {
    /** Tells nobody. */
    Progress SILENT = (work, done, of) -> {};

    /** Work that can take long. */
    enum Work {
        CURVES("Fitting height curves"),
        REFITS("Fitting curves to resampled plots"),
        CRUISES("Cruising on paper"),
        /** The first pass over an estate, for its height curves. */
        HEIGHTS("Drawing heights"),
        /** The pass that adds an estate up. */
        ROWS("Adding up plots");

        private final String words;

        Work(String words) {
            this.words = words;
        }

        /** What is being done. */
        public String words() {
            return words;
        }
    }

    /**
     * A piece of work is done.
     *
     * @param work which work
     * @param done pieces done so far
     * @param of pieces in all, above 0
     */
    void report(Work work, int done, int of);

    /**
     * Rows of an estate were read.
     *
     * @param work which pass
     * @param rows rows so far, those of an earlier run that goes on too
     * @param share share of the bytes of all files that were read so far, in [0, 1]
     */
    default void rows(Work work, long rows, double share) {}
}
