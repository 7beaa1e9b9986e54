package quadmean.field;

import quadmean.model.Rule;

/** Takes what is found wrong with the row under way; what becomes of the row is the design's to say. */
@FunctionalInterface
public interface RowFindings {
    /**
     * Notes a problem.
     *
     * @param column column header
     * @param value what the row has there
     * @param detail what is wrong, as a sentence without a full stop
     */
    void add(Rule rule, String column, String value, String detail);
}
