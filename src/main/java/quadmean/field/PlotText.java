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
    /** A number for each field of the last row, the same for the same text. */
    private long[] hashes = new long[16];

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
        long hash = 1;
        for (int i = from; i < to; i++) { // fields are too short for a block copy to pay
            char c = buffer[i];
            into[at++] = c;
            hash = hash * 31 + c;
        }
        ends[fields++] = at;
        hashes[fieldsOfLast++] = hash;
    }

    private void makeRoom(int end) {
        if (end > letters.length) {
            letters = Arrays.copyOf(letters, Math.max(2 * letters.length, end));
        }
        if (fields == ends.length) {
            ends = Arrays.copyOf(ends, 2 * fields);
        }
        if (fieldsOfLast == hashes.length) {
            hashes = Arrays.copyOf(hashes, 2 * fieldsOfLast);
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
        int a = firstFields[rows - 1] + field;
        int from = start(a);
        int first = start(field);
        return isSame(letters, from, ends[a] - from, letters, first, ends[field] - first);
    }

    private static boolean isSame(char[] one, int from, int n, char[] other, int otherFrom, int otherN) {
        if (n != otherN) {
            return false;
        }
        for (int i = 0; i < n; i++) { // too short for a comparison of blocks to pay
            if (one[from + i] != other[otherFrom + i]) {
                return false;
            }
        }
        return true;
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
        return spread(hashes[field]);
    }

    /** The same of some fields together. */
    long hash(int[] some, long seed) {
        long h = seed;
        for (int field : some) {
            h = (h ^ hashes[field]) * 0x9E3779B97F4A7C15L;
        }
        return spread(h);
    }

    private static long spread(long h) {
        long z = h * 0x9FB21C651E98DF25L;
        return z ^ (z >>> 32);
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

    /** Whether a kind and some fields of the last row make the key that stands between two places of a text. */
    boolean matches(char[] keys, int from, int to, int kind, int[] some) {
        if (keys[from] != (char) kind) {
            return false;
        }
        int at = from + 1;
        for (int field : some) {
            int a = firstFields[rows - 1] + field;
            int start = start(a);
            int n = ends[a] - start;
            if (at + n >= to || keys[at + n] != '\uFFFF' || !isSame(letters, start, n, keys, at, n)) {
                return false;
            }
            at += n + 1;
        }
        return at == to;
    }
}
