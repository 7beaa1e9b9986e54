package quadmean.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quadmean.field.FelledOptions.Measure;
import quadmean.model.FelledStem;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.StemReading;

/** The rows of one stem as they come. */
final class GatheredStem {
    private static final int FEWEST_POINTS = 2;

    private final String id;
    private final String species;
    private final List<StemReading> points = new ArrayList<>();
    private final List<Problem> bulges = new ArrayList<>();
    private @Nullable Row firstRow;
    private First dbh = First.NONE;
    private First height = First.NONE;
    private StemReading highest = new StemReading(0, Double.NaN, Double.NaN, Double.NaN);
    private long spoiltBy;

    GatheredStem(String id, String species) {
        this.id = id;
        this.species = species;
    }

    /**
     * What the first row that has it says of a size of the tree.
     *
     * @param value in the unit inside; NaN if no row has it yet
     * @param text as written
     * @param row its line
     * @param isOther whether the row at hand says something else
     */
    record First(double value, String text, long row, boolean isOther) {
        static final First NONE = new First(Double.NaN, "", 0, false);

        First and(double other, Row row, Measure measure) {
            if (Double.isNaN(value)) {
                return new First(other, row.text(measure.role()), row.line(), false);
            }
            return new First(value, text, this.row, !Double.isNaN(other) && other != value);
        }
    }

    /** Takes the dbh of a row. */
    First dbh(double cm, Row row) {
        dbh = dbh.and(cm, row, Measure.DBH);
        return dbh;
    }

    /** Takes the total height of a row. */
    First height(double m, Row row) {
        height = height.and(m, row, Measure.HEIGHT);
        return height;
    }

    /** Total height of the tree (m); NaN if no row has it yet. */
    double heightM() {
        return height.value();
    }

    /** Height of the point before (m); NaN if there is none. */
    double highestM() {
        return highest.heightM();
    }

    long highestRow() {
        return highest.row();
    }

    /** Takes a point; a row that cannot be used spoils the stem. */
    void take(Row row, StemReading point, boolean isBad) {
        if (firstRow == null) {
            firstRow = row;
        }
        if (isBad) {
            spoiltBy = spoiltBy == 0 ? row.line() : spoiltBy;
            return;
        }
        if (point.diameterCm() > highest.diameterCm()) {
            String detail = "the stem is thicker here than in row " + highest.row();
            bulges.add(FelledCells.problem(row, Rule.FELLED_BULGE, Measure.DIAMETER, Policy.KEEP, detail));
        }
        points.add(point);
        highest = point;
    }

    Row firstRow() {
        return Objects.requireNonNull(firstRow);
    }

    boolean isSpoilt() {
        return spoiltBy > 0;
    }

    /** Line of the first row that cannot be used; 0 if all can. */
    long spoiltBy() {
        return spoiltBy;
    }

    boolean isGood() {
        return !isSpoilt() && points.size() >= FEWEST_POINTS;
    }

    List<Problem> bulges() {
        return bulges;
    }

    /** The stem with the points that can be used. */
    FelledStem stem() {
        return new FelledStem(id, firstRow().line(), species, dbh.value(), height.value(), points);
    }
}
