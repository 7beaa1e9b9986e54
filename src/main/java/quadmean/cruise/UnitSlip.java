package quadmean.cruise;

import java.util.Optional;
import java.util.stream.Stream;

/** The factors by which values are off when a decimal point or a unit slips. */
enum UnitSlip {
    TENFOLD(10, "a decimal point, or mm and cm, or dm and m"),
    INCHES(2.54, "inches and centimetres"),
    FEET(1 / 0.3048, "feet and metres");

    private final double factor;
    private final String what;

    UnitSlip(double factor, String what) {
        this.factor = factor;
        this.what = what;
    }

    /**
     * The slip that would explain a value, in words.
     *
     * @param value the value as written, above 0
     * @param expected what it should be near, above 0
     * @param tolerance how near, above 0
     * @param possible the slips to think of
     */
    static Optional<String> explain(double value, double expected, double tolerance, UnitSlip... possible) {
        return Stream.of(possible)
                .filter(s -> Math.abs(value * s.factor - expected) <= tolerance
                        || Math.abs(value / s.factor - expected) <= tolerance)
                .map(s -> s.what)
                .findFirst();
    }
}
