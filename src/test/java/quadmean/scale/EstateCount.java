package quadmean.scale;

/** How much of an estate has been written. */
final class EstateCount {
    private int stands;
    private long plots;
    private long emptyPlots;
    private long trees;
    private long heights;

    void stand() {
        stands++;
    }

    void plot(int treesOnIt) {
        plots++;
        emptyPlots += treesOnIt == 0 ? 1 : 0;
        trees += treesOnIt;
    }

    void height() {
        heights++;
    }

    int stands() {
        return stands;
    }

    long plots() {
        return plots;
    }

    long emptyPlots() {
        return emptyPlots;
    }

    long trees() {
        return trees;
    }

    long heights() {
        return heights;
    }

    /** Data rows of the tally: one for each tree and each empty plot. */
    long rows() {
        return trees + emptyPlots;
    }
}
