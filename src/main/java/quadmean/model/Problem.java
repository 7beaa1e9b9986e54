package quadmean.model;

import java.util.Locale;

/**
 * One thing wrong with the input, placed so that a person can find it.
 *
 * @param file name of the file
 * @param row line of the file, the header being line 1; 0 where the whole file is meant
 * @param column column header or design key; empty where the whole row is meant
 * @param value the offending text
 * @param rule the rule that is broken
 * @param policy what was done about it
 * @param detail what is wrong in this case, as a sentence without a full stop
 */
public record Problem(String file, long row, String column, String value, Rule rule, Policy policy, String detail) {

    /** The problem on one line: place, what is wrong, and the remedy. */
    public String message() {
        String place = row > 0 ? String.format(Locale.ROOT, "%s:%d", file, row) : file;
        String where = column.isEmpty() ? "" : " [" + column + "]";
        return String.format(Locale.ROOT, "%s%s %s: %s; to do: %s", place, where, rule.code(), detail, rule.remedy());
    }
}
