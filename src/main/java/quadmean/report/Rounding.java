package quadmean.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * How many digits of an estimate are worth showing: those down to the second significant digit of its standard error.
 * Its limits are cut at the same place.
 */
final class Rounding {
    /** Shown for what is unknown. */
    static final String UNKNOWN = "–";

    private static final int DIGITS_OF_ERROR = 2;
    private static final int DIGITS_WITHOUT_ERROR = 3;
    private static final int MOST_DECIMALS = 6;

    private final int decimals;

    private Rounding(int decimals) {
        this.decimals = Math.min(MOST_DECIMALS, decimals);
    }

    /**
     * The rounding for an estimate.
     *
     * @param value the estimate
     * @param se its standard error, in the same unit; without one (NaN or 0) the value keeps three significant digits
     */
    static Rounding of(double value, double se) {
        boolean hasError = Double.isFinite(se) && se > 0;
        return hasError ? significant(se, DIGITS_OF_ERROR) : significant(value, DIGITS_WITHOUT_ERROR);
    }

    /** Keeps so many significant digits of a value. */
    static Rounding significant(double value, int digits) {
        boolean hasDigits = Double.isFinite(value) && value != 0;
        return new Rounding(
                hasDigits ? new BigDecimal(value).round(new MathContext(digits)).scale() : 0);
    }

    /** Keeps so many decimals. */
    static Rounding decimals(int decimals) {
        return new Rounding(decimals);
    }

    /** A number cut at this place, with commas between thousands; a dash for what is not finite. */
    String text(double value) {
        if (!Double.isFinite(value)) {
            return UNKNOWN;
        }
        BigDecimal cut = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
        return withCommas(cut.toPlainString());
    }

    /** By hand: a formatter reads its pattern anew each time, and a page has thousands of numbers. */
    private static String withCommas(String plain) {
        int point = plain.indexOf('.');
        StringBuilder text = new StringBuilder(plain);
        for (int i = (point < 0 ? plain.length() : point) - 3; i > (plain.startsWith("-") ? 1 : 0); i -= 3) {
            text.insert(i, ',');
        }
        return text.toString();
    }

    /** A percentage with one decimal, or none from 100 up; a dash for what is not finite. */
    static String percent(double value) {
        return Double.isFinite(value)
                ? decimals(Math.abs(value) < 99.95 ? 1 : 0).text(value) + "\u00a0%"
                : UNKNOWN;
    }

    /** A number to four significant digits, for constants and parameters. */
    static String constant(double value) {
        double size = Math.abs(value);
        if (size != 0 && Double.isFinite(value) && (size < 1e-3 || size >= 1e7)) {
            return String.format(Locale.ROOT, "%.3e", value);
        }
        return significant(value, 4).text(value);
    }

    /** A whole number with commas between thousands. */
    static String count(long value) {
        return String.format(Locale.ROOT, "%,d", value);
    }
}
