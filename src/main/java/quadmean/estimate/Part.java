package quadmean.estimate;

import quadmean.volume.CutLog;

/**
 * Which logs an estimate is of.
 *
 * @param product product code; {@code *} for all products
 * @param log place in the stem, 1 for the butt log; 0 for all logs
 */
public record Part(String product, int log) {
    /** Whole trees, or all of their logs. */
    public static final Part ALL = new Part(EstimateRow.ALL, 0);

    /** The logs of one product. */
    public static Part ofProduct(String code) {
        return new Part(code, 0);
    }

    /** The logs at one place in the stem, whatever their product. */
    public static Part ofLog(int number) {
        return new Part(EstimateRow.ALL, number);
    }

    /** The place in the stem as it stands in outputs: a number, or {@code *} for all logs. */
    public String place() {
        return log == 0 ? EstimateRow.ALL : Integer.toString(log);
    }

    /** Whether a log belongs to it; one that is not known may belong anywhere. */
    boolean holds(CutLog cut) {
        boolean ofProduct = product.equals(EstimateRow.ALL) || product.equals(cut.product());
        boolean atPlace = log == 0 || log == cut.number();
        return cut.isUnknown() || (ofProduct && atPlace);
    }
}
