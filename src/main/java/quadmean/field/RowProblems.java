package quadmean.field;

import java.util.ArrayList;
import java.util.List;
import quadmean.design.ColumnRole;
import quadmean.design.Design;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;

/** The problems of one row and what follows from them. */
final class RowProblems {
    private final Design design;
    private final Row row;
    private final List<Problem> problems = new ArrayList<>();

    RowProblems(Design design, Row row) {
        this.design = design;
        this.row = row;
    }

    /** Notes a problem of a column; the policy is the design's. */
    void add(Rule rule, ColumnRole role, String detail) {
        add(rule, row.column(role), row.text(role), detail);
    }

    void add(Rule rule, String column, String value, String detail) {
        problems.add(new Problem(row.fileName(), row.line(), column, value, rule, design.policy(rule), detail));
    }

    /** Problems of the same row that nobody is told. */
    RowProblems silent() {
        return new RowProblems(design, row);
    }

    List<Problem> list() {
        return problems;
    }

    /** Whether a problem keeps the row out of the estimate. */
    boolean isOut() {
        return problems.stream().anyMatch(p -> p.policy() != Policy.KEEP);
    }
}
