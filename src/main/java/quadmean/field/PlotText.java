package quadmean.field;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The text of the rows of a plot, kept without an object for each field. */
final class PlotText {
    private char[] letters = new char[4096];
    /** Where each field ends; that of the row before first. */
    private int[] ends = new int[1024];

    private int fields;
    private int[] firstFields = new int[128];
    private long[] lines = new long[128];
    private int rows;
    private int fieldsOfLast;

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
        int n = to - from;
        if (at + n > letters.length) {
            letters = Arrays.copyOf(letters, Math.max(2 * letters.length, at + n));
        }
        for (int i = 0; i < n; i++) { // fields are too short for a block copy to pay
            letters[at + i] = buffer[from + i];
        }
        if (fields == ends.length) {
            ends = Arrays.copyOf(ends, 2 * fields);
        }
        ends[fields++] = at + n;
        fieldsOfLast++;
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

    /** Whether a field of the last row reads as it does in another row. */
    boolean isAlike(int field, int otherRow) {
        int a = firstFields[rows - 1] + field;
        int b = firstFields[otherRow] + field;
        return Arrays.equals(letters, start(a), ends[a], letters, start(b), ends[b]);
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
        return hash(letters, start(a), ends[a], 0);
    }

    /** The same of some fields together. */
    long hash(int[] some, long seed) {
        long h = seed;
        for (int field : some) {
            int a = firstFields[rows - 1] + field;
            h = hash(letters, start(a), ends[a], h * 31 + 7);
        }
        return h;
    }

    private static long hash(char[] text, int from, int to, long seed) {
        long h = seed ^ 0x9E3779B97F4A7C15L;
        for (int i = from; i < to; i++) {
            h = (h ^ text[i]) * 0x9FB21C651E98DF25L;
            h ^= h >>> 29;
        }
        return h;
    }

    /** A kind and some fields of the last row, one after the other, each before a sign that no text has. */
    char[] key(int kind, int[] some) {
        StringBuilder key = new StringBuilder(32).append((char) kind);
        for (int field : some) {
            int a = firstFields[rows - 1] + field;
            key.append(letters, start(a), ends[a] - start(a)).append('\uFFFF');
        }
        return key.toString().toCharArray();
    }

    /** Whether a kind and some fields of the last row make a key. */
    boolean matches(char[] key, int kind, int[] some) {
        if (key[0] != (char) kind) {
            return false;
        }
        int at = 1;
        for (int field : some) {
            int a = firstFields[rows - 1] + field;
            int from = start(a);
            int n = ends[a] - from;
            if (at + n >= key.length
                    || key[at + n] != '\uFFFF'
                    || !Arrays.equals(letters, from, ends[a], key, at, at + n)) {
                return false;
            }
            at += n + 1;
        }
        return at == key.length;
    }
}
