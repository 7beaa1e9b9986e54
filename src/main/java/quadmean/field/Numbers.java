package quadmean.field;

import java.util.OptionalDouble;
import java.util.regex.Pattern;
import quadmean.design.ColumnRole;
import quadmean.model.Rule;

/** Reads plain numbers: digits, one decimal mark, a sign. No exponent, no grouping, no unit. */
final class Numbers {
    private static final Pattern PLAIN = Pattern.compile("[+-]?\\d{1,15}(\\.\\d{0,15})?|[+-]?\\.\\d{1,15}");

    private Numbers() {}

    /** The number of a column; empty if there is none, or if it cannot be read, which is then noted. */
    static OptionalDouble read(Row row, ColumnRole role, RowProblems problems) {
        String text = row.text(role);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        char decimal = row.file().decimal();
        String plain = decimal == '.' ? text : text.replace('.', '?').replace(decimal, '.');
        if (!PLAIN.matcher(plain).matches()) {
            problems.add(
                    Rule.NUMBER_UNREADABLE,
                    role,
                    "\"" + text + "\" is not a plain number with the decimal mark \"" + decimal + "\"");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Double.parseDouble(plain));
    }
}
