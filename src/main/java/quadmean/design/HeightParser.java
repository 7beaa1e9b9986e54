package quadmean.design;

import quadmean.units.UnitSystem;

/** Reads {@code [height]}. */
final class HeightParser {
    /** Under ten heights or so a curve of a species' own is no gain: common practice, no source. */
    private static final double DEFAULT_MIN_HEIGHTS = 10;

    /** In robust standard deviations; common practice, no source. */
    private static final double DEFAULT_OFF_CURVE = 4;

    private HeightParser() {}

    static Design.HeightEntry parse(Section root, UnitSystem units) {
        Section s = root.table("height");
        Design.HeightEntry entry = new Design.HeightEntry(
                s.number("breast_height", Range.POSITIVE, units.breastHeight()),
                (int) s.number("min_heights", Range.AT_LEAST_THREE, DEFAULT_MIN_HEIGHTS),
                s.number("off_curve", Range.POSITIVE, DEFAULT_OFF_CURVE));
        s.close();
        return entry;
    }
}
