package quadmean.design;

import org.jspecify.annotations.Nullable;
import quadmean.units.AngleScale;
import quadmean.units.Unit;

/**
 * Which tally column holds something, and in which unit.
 *
 * @param name the column's name in the header
 * @param unit unit of a length; null for others, and where the header has to say it
 * @param scale scale of an angle; null for others, and where the header has to say it
 * @param entry what an entry may be
 */
public record ColumnSpec(
        String name, @Nullable Unit unit, @Nullable AngleScale scale, Entry entry) {

    /** A column of plain entries. */
    public ColumnSpec(String name, @Nullable Unit unit, @Nullable AngleScale scale) {
        this(name, unit, scale, Entry.PLAIN);
    }

    /** What an entry of a measured column may be. */
    public enum Entry {
        /** One number. */
        PLAIN,
        /** One number, or a class such as 8-10, which counts at its midpoint. */
        MIDPOINT
    }
}
