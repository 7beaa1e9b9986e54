package quadmean.model;

/**
 * The account of a tally's rows: {@code in = used + dropped}.
 *
 * @param in data rows read, the header and blank lines apart
 * @param used rows used, those that only note an empty plot among them
 * @param dropped rows left out; each is listed
 * @param kept of the rows used, those listed in spite of a problem
 */
public record RowCount(long in, long used, long dropped, long kept) {
    public RowCount {
        if (in != used + dropped || kept > used) {
            throw new IllegalStateException(
                    "rows do not add up: in " + in + ", used " + used + ", dropped " + dropped + ", kept " + kept);
        }
    }
}
