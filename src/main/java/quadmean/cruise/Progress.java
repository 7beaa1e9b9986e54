package quadmean.cruise;

/** Told how far long work has come; called from several threads. */
@FunctionalInterface
public interface Progress {
    /** Tells nobody. */
    Progress SILENT = (done, of) -> {};

    /**
     * A piece of work is done.
     *
     * @param done pieces done so far
     * @param of pieces in all
     */
    void report(int done, int of);
}
