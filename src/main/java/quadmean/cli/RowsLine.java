package quadmean.cli;

import java.util.Locale;

/** One pass over the rows of an estate, as a bar with rows, rows a second and the time that is left; a function of the clock alone. */
final class RowsLine {
    private static final int STEPS = 20;
    private static final double PER_SECOND = 1e9;

    private final String words;
    private final long start;
    private final long firstRows;
    private final double firstShare;

    /**
     * A pass that begins, or goes on after an interruption.
     *
     * @param start time of its first report (ns)
     * @param firstRows rows before that
     * @param firstShare share of the bytes read before that, in [0, 1]
     */
    RowsLine(String words, long start, long firstRows, double firstShare) {
        this.words = words;
        this.start = start;
        this.firstRows = firstRows;
        this.firstShare = firstShare;
    }

    /**
     * The bar.
     *
     * @param now time (ns)
     * @param rows rows so far
     * @param share share of the bytes read so far, in [0, 1]
     */
    String at(long now, long rows, double share) {
        int step = (int) (STEPS * share);
        String bar = String.format(
                Locale.ROOT,
                "%s [%s%s] %d %%, %,d rows",
                words,
                "#".repeat(step),
                ".".repeat(STEPS - step),
                (int) (100 * share),
                rows);
        double seconds = (now - start) / PER_SECOND;
        if (seconds <= 0 || share <= firstShare) {
            return bar;
        }
        double left = seconds * (1 - share) / (share - firstShare);
        return bar + String.format(Locale.ROOT, ", %,.0f rows/s, ", (rows - firstRows) / seconds) + time(left)
                + " left";
    }

    private static String time(double seconds) {
        long s = Math.round(seconds);
        if (s < 60) {
            return s + " s";
        }
        return s < 3600 ? s / 60 + " min " + s % 60 + " s" : s / 3600 + " h " + s % 3600 / 60 + " min";
    }
}
