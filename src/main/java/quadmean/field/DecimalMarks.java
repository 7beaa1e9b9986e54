package quadmean.field;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quadmean.model.Rule;

/** Gathers which decimal mark the numbers of a tally are written with. */
final class DecimalMarks {
    private static final Pattern COMMA = Pattern.compile("[+-]?\\d+,\\d+");
    private static final Pattern POINT = Pattern.compile("[+-]?\\d*\\.\\d+");
    /** Could be a number of thousands. */
    private static final Pattern GROUPED = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}");

    private @Nullable String comma;
    private @Nullable String point;
    private boolean allGrouped = true;

    /** Looks at an entry of a column of numbers. */
    void see(long line, String text) {
        if (COMMA.matcher(text).matches()) {
            comma = comma == null ? "line " + line + " has " + text : comma;
            allGrouped &= GROUPED.matcher(text).matches();
        } else if (point == null && POINT.matcher(text).matches()) {
            point = "line " + line + " has " + text;
        }
    }

    /** The mark; a comma is stated, and what the entries leave open is a problem. */
    char settle(FileProblems problems) {
        if (comma == null) {
            return '.';
        }
        if (point != null) {
            contradicts(problems, comma + ", " + point + "; say which is right with decimal = \",\" or \".\"");
            return '.';
        }
        if (allGrouped) {
            contradicts(problems, comma + ": decimal comma or thousands? say with decimal = \",\" or \".\"");
            return '.';
        }
        problems.add(Rule.FORMAT_DETECTED, 0, "decimal", ",", "numbers have a decimal comma: " + comma);
        return ',';
    }

    private static void contradicts(FileProblems problems, String detail) {
        problems.add(Rule.FORMAT_CONTRADICTS, 0, "decimal", "", detail);
    }
}
