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
        CRUISES("Cruising on paper");

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
}
