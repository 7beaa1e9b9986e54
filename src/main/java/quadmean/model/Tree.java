package quadmean.model;

import org.jspecify.annotations.Nullable;

/**
 * One tallied tree.
 *
 * @param file tally file it came from
 * @param row line in that file
 * @param plot plot or point number as written
 * @param number tree number as written, empty if the tally has none
 * @param species species code after recodes
 * @param dbhCm diameter at breast height (cm), above zero
 * @param height the height taken in the field, null if none was
 * @param detail what else the tally says of it
 */
public record Tree(
        String file,
        long row,
        String plot,
        String number,
        String species,
        double dbhCm,
        @Nullable FieldHeight height,
        TreeDetail detail) {
    public Tree {
        if (!(dbhCm > 0)) {
            throw new IllegalArgumentException("dbh must be above zero, got " + dbhCm);
        }
    }

    /** A single living tree of which nothing more is known. */
    public Tree(
            String file,
            long row,
            String plot,
            String number,
            String species,
            double dbhCm,
            @Nullable FieldHeight height) {
        this(file, row, plot, number, species, dbhCm, height, TreeDetail.PLAIN);
    }

    /** Plot and tree number the way crews say it: {@code 67-6}. */
    public String label() {
        return number.isEmpty() ? plot + " (line " + row + ")" : plot + "-" + number;
    }

    /** The same tree without its field height. */
    public Tree withoutHeight() {
        return new Tree(file, row, plot, number, species, dbhCm, null, detail);
    }

    /** A tree of another row that reads the same but for its field height. */
    public Tree alike(String otherFile, long otherRow, String otherPlot, String otherNumber, FieldHeight otherHeight) {
        return new Tree(otherFile, otherRow, otherPlot, otherNumber, species, dbhCm, otherHeight, detail);
    }
}
