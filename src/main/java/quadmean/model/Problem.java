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
    private static final int LONGEST_VALUE = 200;
    private static final int LONGEST_DETAIL = 400;

    /** Texts of the input become one line of bearable length, without signs that would steer a screen. */
    public Problem {
        file = line(file, LONGEST_VALUE);
        column = line(column, LONGEST_VALUE);
        value = line(value, LONGEST_VALUE);
        detail = line(detail, LONGEST_DETAIL);
    }

    /** The problem on one line: place, what is wrong, and the remedy. */
    public String message() {
        String place = row > 0 ? String.format(Locale.ROOT, "%s:%d", file, row) : file;
        String where = column.isEmpty() ? "" : " [" + column + "]";
        return String.format(Locale.ROOT, "%s%s %s: %s; to do: %s", place, where, rule.code(), detail, rule.remedy());
    }

    private static String line(String text, int longest) {
        int end = Math.min(text.length(), longest);
        boolean cut = end < text.length();
        if (cut && Character.isHighSurrogate(text.charAt(end - 1))) {
            end--;
        }
        StringBuilder line = new StringBuilder(end + 3);
        for (int i = 0; i < end; i++) {
            line.append(plain(text.charAt(i)));
        }
        return cut ? line.append("...").toString() : line.toString();
    }

    private static char plain(char c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL, Character.FORMAT -> c == '\t' || c == '\n' || c == '\r' ? ' ' : '\uFFFD';
            case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> ' ';
            default -> c;
        };
    }
}
