package quadmean.field;

import org.jspecify.annotations.Nullable;

/** What was made of readings seen before, as many as there is room for. */
final class TreeMemo<T> {
    private final int[] columns;
    private final int room;
    private final long[] hashes;
    private final char[][] keys;
    private final Object[] values;
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
        int slots = Integer.highestOneBit(Math.max(16, room)) << 2;
        this.hashes = new long[slots];
        this.keys = new char[slots][];
        this.values = new Object[slots];
    }

    /** What was made of the readings of the last row, in stands of a kind; null if they are not kept. */
    @SuppressWarnings("unchecked") // put keeps nothing else
    @Nullable
    T find(PlotText text, int kind) {
        long hash = text.hash(columns, kind);
        int at = slot(hash);
        while (keys[at] != null) {
            if (hashes[at] == hash && text.matches(keys[at], kind, columns)) {
                return (T) values[at];
            }
            at = (at + 1) & (keys.length - 1);
        }
        return null;
    }

    /** Keeps what was made of the readings of the last row. */
    void put(PlotText text, int kind, T value) {
        if (size == room) {
            return;
        }
        long hash = text.hash(columns, kind);
        int at = slot(hash);
        while (keys[at] != null) {
            at = (at + 1) & (keys.length - 1);
        }
        hashes[at] = hash;
        keys[at] = text.key(kind, columns);
        values[at] = value;
        size++;
    }

    private int slot(long hash) {
        return (int) (hash ^ (hash >>> 32)) & (keys.length - 1);
    }
}
