package quadmean.field;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quadmean.design.ColumnRole;
import quadmean.design.ColumnSpec;
import quadmean.model.Rule;

/** Reads plain numbers: digits, one decimal mark, a sign. No exponent, no grouping, no unit. */
final class Numbers {
    private static final int MOST_DIGITS = 15;
    private static final Pattern CLASS =
            Pattern.compile("(\\d{1,6}(?:\\.\\d{1,6})?)\\s*[-\u2013]\\s*(\\d{1,6}(?:\\.\\d{1,6})?)");

    private static final Pattern FEET_AND_INCHES =
            Pattern.compile("\\d{1,3}\\s*['\u2032\u2019]\\s*(\\d{1,2}\\s*(\"|''|[\u2033\u201d])?)?");

    private Numbers() {}

    /** The number of a column; empty if there is none, or if it cannot be read, which is then noted. */
    static OptionalDouble read(Row row, ColumnRole role, RowProblems problems) {
        String text = row.text(role);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        char decimal = row.file().decimal();
        OptionalDouble number = plain(text, decimal);
        if (number.isPresent()) {
            return number;
        }
        String hint = "";
        Matcher range = CLASS.matcher(withPoint(text, decimal));
        if (range.matches()) {
            double low = Double.parseDouble(range.group(1));
            double high = Double.parseDouble(range.group(2));
            if (low < high && takesClasses(row, role)) {
                return OptionalDouble.of((low + high) / 2);
            }
            hint = low < high ? "; if it is a class, say classes = \"midpoint\" in the design" : "; a class goes up";
        }
        if (FEET_AND_INCHES.matcher(text).matches()) {
            hint = "; feet and inches are written as feet with decimals, inches / 12: 6 inches are 0" + decimal + "5";
        }
        problems.add(
                Rule.NUMBER_UNREADABLE,
                role,
                "\"" + text + "\" is not a plain number with the decimal mark \"" + decimal + "\"" + hint);
        return OptionalDouble.empty();
    }

    /** A plain number with a decimal mark; empty for anything else. */
    static OptionalDouble plain(String text, char decimal) {
        String plain = withPoint(text, decimal);
        return isPlain(plain) ? OptionalDouble.of(Double.parseDouble(plain)) : OptionalDouble.empty();
    }

    /** A sign if need be, then up to 15 digits before the point and up to 15 behind it, one of both at least. */
    private static boolean isPlain(String text) {
        int from = !text.isEmpty() && (text.charAt(0) == '+' || text.charAt(0) == '-') ? 1 : 0;
        int point = digitsEnd(text, from);
        int before = point - from;
        if (point == text.length()) {
            return before >= 1 && before <= MOST_DIGITS;
        }
        int end = digitsEnd(text, point + 1);
        int behind = end - point - 1;
        return text.charAt(point) == '.'
                && end == text.length()
                && before <= MOST_DIGITS
                && behind <= MOST_DIGITS
                && before + behind >= 1;
    }

    private static int digitsEnd(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at;
    }

    /** Whether an entry is a class and not a number. */
    static boolean isClass(String text) {
        return CLASS.matcher(text.replace(',', '.')).matches();
    }

    private static String withPoint(String text, char decimal) {
        return decimal == '.' ? text : text.replace('.', '?').replace(decimal, '.');
    }

    private static boolean takesClasses(Row row, ColumnRole role) {
        ColumnSpec spec = row.file().columns().get(role);
        return spec != null && spec.entry() == ColumnSpec.Entry.MIDPOINT;
    }
}
