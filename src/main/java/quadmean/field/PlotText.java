package quadmean.field;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The text of the rows of a plot, kept without an object for each field. */
final class PlotText {
    private static final int MOST_DIGITS = 15;
    private static final double[] POWERS = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    /** In place of a word: the text is no word. */
    static final long NO_WORD = -1;

    private static final int LONGEST_WORD = 8;
    private static final int LAST_ASCII = 127;

    private char[] letters = new char[4096];
    /** Where each field ends; that of the row before first. */
    private int[] ends = new int[1024];

    private int fields;
    private int[] firstFields = new int[128];
    private long[] lines = new long[128];
    private int rows;
    private int fieldsOfLast;
    /** Fields of the last row as words: up to eight ASCII letters in one number, which is the whole text; 0 for an empty one. */
    private long[] words = new long[16];

    /** The same of the first row of the plot. */
    private long[] firstWords = new long[16];

    /** Starts a row. */
    void begin(long line) {
        if (rows == lines.length) {
            lines = Arrays.copyOf(lines, 2 * rows);
            firstFields = Arrays.copyOf(firstFields, 2 * rows);
        }
        lines[rows] = line;
        firstFields[rows] = fields;
        rows++;
        fieldsOfLast = 0;
    }

    /** Adds a field to the last row, without blanks around it. */
    void add(char[] buffer, int offset, int length) {
        int from = offset;
        int to = offset + length;
        while (from < to && isBlank(buffer[from])) {
            from++;
        }
        while (to > from && isBlank(buffer[to - 1])) {
            to--;
        }
        int at = fields == 0 ? 0 : ends[fields - 1];
        makeRoom(at + to - from);
        char[] into = letters;
        long word = 0;
        int all = 0;
        for (int i = from; i < to; i++) { // fields are too short for a block copy to pay
            char c = buffer[i];
            into[at++] = c;
            word = word << 8 | c;
            all |= c | (c - 1); // below zero for a sign of value 0, which a word would lose
        }
        ends[fields++] = at;
        words[fieldsOfLast++] = to - from <= LONGEST_WORD && (all & ~LAST_ASCII) == 0 ? word : NO_WORD;
    }

    private void makeRoom(int end) {
        if (end > letters.length) {
            letters = Arrays.copyOf(letters, Math.max(2 * letters.length, end));
        }
        if (fields == ends.length) {
            ends = Arrays.copyOf(ends, 2 * fields);
        }
        if (fieldsOfLast == words.length) {
            words = Arrays.copyOf(words, 2 * fieldsOfLast);
            firstWords = Arrays.copyOf(firstWords, 2 * fieldsOfLast);
        }
    }

    private static boolean isBlank(char c) {
        return c <= ' ' ? Character.isWhitespace(c) : c > '~' && Character.isWhitespace(c);
    }

    int fieldsOfLast() {
        return fieldsOfLast;
    }

    int rows() {
        return rows;
    }

    long line(int row) {
        return lines[row];
    }

    /** Forgets the last row. */
    void dropLast() {
        rows--;
        fields = firstFields[rows];
    }

    /** Forgets all rows but the last. */
    void keepLast() {
        System.arraycopy(words, 0, firstWords, 0, fieldsOfLast);
        if (rows < 2) {
            return;
        }
        int first = firstFields[rows - 1];
        int shift = start(first);
        int n = fields - first;
        System.arraycopy(letters, shift, letters, 0, ends[fields - 1] - shift);
        for (int i = 0; i < n; i++) {
            ends[i] = ends[first + i] - shift;
        }
        lines[0] = lines[rows - 1];
        firstFields[0] = 0;
        rows = 1;
        fields = n;
    }

    private int start(int field) {
        return field == 0 ? 0 : ends[field - 1];
    }

    /** Whether a field of the last row reads as it does in the first row. */
    boolean isAsInFirst(int field) {
        if (words[field] != NO_WORD || firstWords[field] != NO_WORD) {
            return words[field] == firstWords[field];
        }
        int a = firstFields[rows - 1] + field;
        return Arrays.equals(letters, start(a), ends[a], letters, start(field), ends[field]);
    }

    /** A field of the last row as a word; {@link #NO_WORD} if it is none. */
    long word(int field) {
        return words[field];
    }

    boolean isEmpty(int field) {
        int a = firstFields[rows - 1] + field;
        return start(a) == ends[a];
    }

    /** A field of the last row. */
    String text(int field) {
        int a = firstFields[rows - 1] + field;
        return new String(letters, start(a), ends[a] - start(a));
    }

    /**
     * A field of the last row that is a plain number of up to 15 digits, without a sign; NaN for all else. Whole numbers up to 10¹⁵ and
     * powers of ten are exact, so that their quotient is the double next to the number (by algebra).
     */
    double plainNumber(int field, char decimal) {
        int a = firstFields[rows - 1] + field;
        long digits = 0;
        int n = 0;
        int behind = -1;
        for (int i = start(a); i < ends[a]; i++) {
            char c = letters[i];
            if (c >= '0' && c <= '9') {
                digits = 10 * digits + (c - '0');
                n++;
                behind += behind >= 0 ? 1 : 0;
            } else if (c == decimal && behind < 0 && n > 0) {
                behind = 0;
            } else {
                return Double.NaN;
            }
        }
        return n == 0 || n > MOST_DIGITS ? Double.NaN : behind <= 0 ? digits : digits / POWERS[behind];
    }

    /** The fields of a row. */
    List<String> fields(int row) {
        int first = firstFields[row];
        int end = row + 1 < rows ? firstFields[row + 1] : fields;
        List<String> all = new ArrayList<>(end - first);
        for (int i = first; i < end; i++) {
            all.add(new String(letters, start(i), ends[i] - start(i)));
        }
        return all;
    }

    /** A number made of a field of the last row, the same for the same text. */
    long hash(int field) {
        int a = firstFields[rows - 1] + field;
        long h = 1;
        for (int i = start(a); i < ends[a]; i++) {
            h = h * 31 + letters[i];
        }
        return -Math.abs(h);
    }
}
