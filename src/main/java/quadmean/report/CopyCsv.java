package quadmean.report;

import java.util.List;

/** Rows of text as a CSV file. */
public final class CopyCsv {
    private CopyCsv() {}

    /**
     * The rows as they are.
     *
     * @param rows header first; at least one
     */
    public static Content of(List<List<String>> rows) {
        return Csv.toReadAgain(rows.get(0), rows.stream().skip(1));
    }
}
