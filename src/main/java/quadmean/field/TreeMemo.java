package quadmean.field;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * What was made of readings seen before, as many as there is room for. Everything lies close together in the order in which it came:
 * the common readings come early, and stay in the nearest memory of the processor.
 */
final class TreeMemo<T> {
    private static final int FIRST_SLOTS = 1 << 10;

    private final int[] columns;
    private final int room;
    /** Number of the entry in a slot, from 1; 0 for a free one. At most half of the slots are taken. */
    private int[] slots = new int[FIRST_SLOTS];

    private long[] hashes = new long[FIRST_SLOTS / 2 + 1];
    private Object[] values = new Object[FIRST_SLOTS / 2 + 1];
    /** Where the text of each entry ends; that of entry 0, which there is not, is empty. */
    private int[] ends = new int[FIRST_SLOTS / 2 + 1];

    private char[] letters = new char[8 * FIRST_SLOTS];
    private int size;

    /**
     * An empty memory.
     *
     * @param columns fields of a row that its readings stand in
     * @param room most readings to keep
     */
    TreeMemo(int[] columns, int room) {
        this.columns = columns.clone();
        this.room = room;
    }

    /** What was made of the readings of the last row, in stands of a kind; null if they are not kept. */
    @SuppressWarnings("unchecked") // put keeps nothing else
    @Nullable
    T find(PlotText text, int kind) {
        long hash = text.hash(columns, kind);
        int at = (int) hash & (slots.length - 1);
        int entry = slots[at];
        while (entry != 0) {
            if (hashes[entry] == hash && text.matches(letters, ends[entry - 1], ends[entry], kind, columns)) {
                return (T) values[entry];
            }
            at = (at + 1) & (slots.length - 1);
            entry = slots[at];
        }
        return null;
    }

    /** Keeps what was made of the readings of the last row, which are new. */
    void put(PlotText text, int kind, T value) {
        if (size == room) {
            return;
        }
        char[] key = text.key(kind, columns);
        if (2 * (size + 1) > slots.length) {
            grow();
        }
        int start = ends[size];
        if (start + key.length > letters.length) {
            letters = Arrays.copyOf(letters, 2 * (start + key.length));
        }
        System.arraycopy(key, 0, letters, start, key.length);
        size++;
        hashes[size] = text.hash(columns, kind);
        values[size] = value;
        ends[size] = start + key.length;
        enter(size);
    }

    private void grow() {
        int more = 2 * slots.length;
        slots = new int[more];
        hashes = Arrays.copyOf(hashes, more / 2 + 1);
        values = Arrays.copyOf(values, more / 2 + 1);
        ends = Arrays.copyOf(ends, more / 2 + 1);
        for (int entry = 1; entry <= size; entry++) {
            enter(entry);
        }
    }

    private void enter(int entry) {
        int at = (int) hashes[entry] & (slots.length - 1);
        while (slots[at] != 0) {
            at = (at + 1) & (slots.length - 1);
        }
        slots[at] = entry;
    }
}
