package quadmean.design;

import org.jspecify.annotations.Nullable;
import quadmean.units.AngleScale;
import quadmean.units.Unit;

/**
 * Which tally column holds something, and in which unit.
 *
 * @param name the column's name in the header
 * @param unit unit of a length, null for text and angles
 * @param scale scale of an angle, null for text and lengths
 */
public record ColumnSpec(
        String name, @Nullable Unit unit, @Nullable AngleScale scale) {}
