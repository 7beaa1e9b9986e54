package quadmean.field;

import java.util.Set;
import java.util.stream.Stream;
import quadmean.design.ColumnRole;
import quadmean.design.Design;
import quadmean.model.Measuring;

/** Which rows stand for trees that were counted, or predicted, and not measured. */
final class CountReader {
    private final Measuring measuring;

    CountReader(Design design) {
        this.measuring = design.plot().measuring();
    }

    /** Whether a row may do without a dbh, and has neither dbh nor height. */
    boolean isCounted(Row row) {
        return measuring.hasCounts()
                && mayCount(row.text(ColumnRole.PLOT))
                && Stream.of(ColumnRole.DBH, ColumnRole.GIRTH, ColumnRole.HEIGHT, ColumnRole.TOP, ColumnRole.BASE)
                        .allMatch(role -> row.text(role).isEmpty());
    }

    /** On a point that is listed as measured each tree has a dbh. */
    private boolean mayCount(String plot) {
        Set<String> measured = measuring instanceof Measuring.SomePoints some ? some.points() : Set.of();
        return !measured.contains(plot);
    }
}
