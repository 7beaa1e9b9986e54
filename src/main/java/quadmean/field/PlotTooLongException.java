package quadmean.field;

/** A plot of so many rows that it is none. */
public final class PlotTooLongException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    PlotTooLongException(String file, long line) {
        super(file + ": the plot that starts near line " + line
                + " has more than 64 MB of rows; does the tally number its plots?");
    }
}
