package quadmean.height;

/**
 * By how much a measured tree moves the numbers that filled heights share, to the first order.
 *
 * @param source what the numbers are, as in {@link SharedError}
 * @param shift what the tree moves each of them by
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
public record Influence(String source, double[] shift) {}
