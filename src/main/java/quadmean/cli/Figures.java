package quadmean.cli;

import java.util.Locale;
import quadmean.measure.Slope;
import quadmean.units.AngleScale;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** How the pocket calculators write numbers: both unit systems, as many decimals as the error is worth. */
final class Figures {
    private static final int MOST_DECIMALS = 3;

    private final UnitSystem first;

    Figures(UnitSystem first) {
        this.first = first;
    }

    /** Unit of the first figure. */
    Unit unit() {
        return first.length();
    }

    /** A length with its standard deviation, in both systems: {@code 23.40 m ± 0.25 m (76.8 ft ± 0.8 ft)}. */
    String withSd(double metres, double sd) {
        return withSd(metres, sd, first) + " (" + withSd(metres, sd, other()) + ")";
    }

    /** A length in both systems: {@code 24.1 m (79.1 ft)}. */
    String length(double metres, int decimals) {
        return in(metres, first, decimals) + " (" + in(metres, other(), decimals) + ")";
    }

    /** How much too high or too low something is: {@code 1.39 m (4.55 ft) high}. */
    String off(double metres) {
        return length(Math.abs(metres), 2) + (metres < 0 ? " low" : " high");
    }

    /** A length in the first system only. */
    String first(double metres, int decimals) {
        return in(metres, first, decimals);
    }

    /** Two lengths in both systems: {@code 19 to 32 m (62 to 105 ft)}. */
    String range(double from, double to, int decimals) {
        return range(from, to, first, decimals) + " (" + range(from, to, other(), decimals) + ")";
    }

    /** A number with so many decimals. */
    static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    /** A number as it was typed, without needless decimals. */
    static String plain(double value) {
        return new Amount(value, "").toString();
    }

    /** A slope in percent and degrees. */
    static String slope(Slope slope) {
        return number(slope.on(AngleScale.PERCENT), 1) + " % (" + number(slope.on(AngleScale.DEGREES), 2) + "°)";
    }

    private UnitSystem other() {
        return first == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US;
    }

    private static String withSd(double metres, double sd, UnitSystem system) {
        int decimals = decimals(Unit.METRE.convert(sd, system.length()));
        return in(metres, system, decimals) + " ± " + in(sd, system, decimals);
    }

    private static String range(double from, double to, UnitSystem system, int decimals) {
        return number(Unit.METRE.convert(from, system.length()), decimals) + " to " + in(to, system, decimals);
    }

    private static String in(double metres, UnitSystem system, int decimals) {
        return number(Unit.METRE.convert(metres, system.length()), decimals) + " "
                + system.length().symbol();
    }

    /** Two significant digits of the error; two decimals without one. */
    private static int decimals(double sd) {
        if (!(sd > 0)) {
            return 2;
        }
        int decimals = 1 - (int) Math.floor(Math.log10(sd));
        return Math.max(0, Math.min(MOST_DECIMALS, decimals));
    }
}
