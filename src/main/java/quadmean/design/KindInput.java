package quadmean.design;

import quadmean.units.UnitSystem;

/** What a cruise takes in time, by which kinds of plot are compared; each has a default and says where that comes from. */
public enum KindInput {
    /** In km/h or mi/h; inside m/h. */
    WALKING("walking", "pace between plots", KindInput.PRACTICE, Range.POSITIVE),
    /** Minutes to find the place, mark the centre and note the plot. */
    SET_UP("setup", "setting up a plot", KindInput.PRACTICE, Range.NOT_NEGATIVE),
    /** Minutes to judge and count one tree. */
    COUNT("count", "counting a tree", KindInput.PRACTICE, Range.NOT_NEGATIVE),
    /** Minutes for species and dbh of one tree. */
    MEASURE(
            "measure",
            "measuring a tree",
            "tally tree of Henttonen and Kangas 2015, symbols inferred",
            Range.NOT_NEGATIVE),
    /** Minutes for one height. */
    HEIGHT(
            "height",
            "a height",
            "sample tree less tally tree of Henttonen and Kangas 2015, symbols inferred",
            Range.NOT_NEGATIVE),
    /** Trees measured, in percent of those counted. */
    MEASURED("measured", "trees measured, of those counted", KindInput.PRACTICE, Range.PERCENT_OR_ZERO),
    /** Trees whose height is measured, in percent of those counted. */
    HEIGHTS("heights", "heights, of trees counted", "every k-th tree as on the field sheets", Range.PERCENT_OR_ZERO);

    private static final String PRACTICE = "common practice, no source";

    private final String key;
    private final String label;
    private final String source;
    private final Range range;

    KindInput(String key, String label, String source, Range range) {
        this.key = key;
        this.label = label;
        this.source = source;
        this.range = range;
    }

    /** The key under {@code [plan.kinds]}. */
    public String key() {
        return key;
    }

    /** What it is, in words. */
    public String label() {
        return label;
    }

    /** Where its default comes from. */
    public String source() {
        return source;
    }

    /** The unit in which people write it. */
    public String unit(UnitSystem units) {
        return switch (this) {
            case WALKING -> units == UnitSystem.US ? "mi/h" : "km/h";
            case SET_UP, COUNT, MEASURE, HEIGHT -> "min";
            case MEASURED, HEIGHTS -> "%";
        };
    }

    Range range() {
        return range;
    }
}
