package quadmean.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/** Lines of arithmetic in plain text, every number unrounded, results also rounded. */
final class Steps {
    /** Two numbers that differ by less, as a share of the larger, are one number reached in two ways. */
    private static final double SAME = 1e-9;

    private static final int DIGITS = 4;

    /** Digits that a sum of binary fractions leaves alone, and digits of a number that was meant to be short. */
    private static final int SURE_DIGITS = 14;

    private static final int SHORT = 10;

    private final List<String> lines = new ArrayList<>();

    /** The lines so far. */
    List<String> lines() {
        return List.copyOf(lines);
    }

    /** A line of words. */
    Steps say(String words) {
        lines.add(words.replace('\u00a0', ' '));
        return this;
    }

    /** {@code   what: how = value unit (about rounded)}. */
    Steps step(String what, String how, double value, String unit) {
        String about = Rounding.significant(value, DIGITS).text(value);
        String exact = number(value);
        String remark = !Double.isFinite(value) || about.equals(exact) ? "" : " (about " + about + ")";
        return say("  " + what + ": " + how + " = " + exact + (unit.isEmpty() ? "" : " " + unit) + remark);
    }

    /** A number with all its digits, never in powers of ten, without what binary fractions leave behind such as in 119.99999999999999. */
    static String number(double value) {
        if (!Double.isFinite(value)) {
            return value == Double.POSITIVE_INFINITY ? "infinitely many" : "not known";
        }
        BigDecimal exact = new BigDecimal(Double.toString(value));
        BigDecimal near = exact.round(new MathContext(SURE_DIGITS)).stripTrailingZeros();
        return near.precision() <= SHORT ? near.toPlainString() : plain(exact);
    }

    /** A number as the files have it, to the last digit. */
    static String exact(double value) {
        return Double.isFinite(value) ? plain(new BigDecimal(Double.toString(value))) : number(value);
    }

    private static String plain(BigDecimal value) {
        String plain = value.toPlainString();
        return plain.endsWith(".0") ? plain.substring(0, plain.length() - 2) : plain;
    }

    /** A number as a factor or a term: in brackets where it is below zero. */
    static String term(double value) {
        return value < 0 ? "(" + number(value) + ")" : number(value);
    }

    static boolean isSame(double a, double b) {
        return Double.compare(a, b) == 0 || Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));
    }
}
