package quadmean.field;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quadmean.model.Tree;

/**
 * Trees whose readings were seen before, with their numbers, as many as there is room for. Readings are kept as words
 * ({@link PlotText#word}), so that a few comparisons of numbers tell whether they are the same; others are not kept.
 */
final class TreeMemo {
    /** In place of an entry: these readings are not known. */
    static final int UNKNOWN = 0;

    private static final int FIRST_SLOTS = 1 << 10;

    private final int[] columns;
    private final int room;
    /** Numbers of a key: the kind of the stand, and a word for each column. */
    private final int width;
    /** Number of an entry, from 1; 0 for a free slot. At most half of the slots are taken. */
    private int[] slots = new int[FIRST_SLOTS];

    private int[] numbers = new int[FIRST_SLOTS / 2 + 1];
    private @Nullable Tree[] trees = new Tree[FIRST_SLOTS / 2 + 1];
    private long[] keys;
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
        this.width = columns.length + 1;
        this.keys = new long[width * numbers.length];
    }

    /** The entry of the readings of the last row, in stands of a kind; {@link #UNKNOWN} for none. */
    int find(PlotText text, int kind) {
        long hash = kind;
        for (int column : columns) {
            hash = (hash ^ text.word(column)) * 0x9E3779B97F4A7C15L;
        }
        int at = slot(hash);
        while (slots[at] != UNKNOWN && !isSame(width * slots[at], text, kind)) {
            at = (at + 1) & (slots.length - 1);
        }
        return slots[at];
    }

    private boolean isSame(int from, PlotText text, int kind) {
        if (keys[from] != kind) {
            return false;
        }
        for (int i = 0; i < columns.length; i++) {
            if (keys[from + 1 + i] != text.word(columns[i])) {
                return false;
            }
        }
        return true;
    }

    /** The number of an entry. */
    int number(int entry) {
        return numbers[entry];
    }

    /** The first tree that read so. */
    Tree tree(int entry) {
        return Objects.requireNonNull(trees[entry], "an entry has a tree");
    }

    /** Whether the readings of the last row, which are new, can be kept. */
    boolean hasRoom(PlotText text) {
        for (int column : columns) {
            if (text.word(column) == PlotText.NO_WORD) {
                return false;
            }
        }
        return size < room;
    }

    /** Keeps the tree of the last row, for which there is room, and its number. */
    void put(PlotText text, int kind, Tree tree, int number) {
        size++;
        if (2 * size > slots.length) {
            grow();
        }
        keys[width * size] = kind;
        for (int i = 0; i < columns.length; i++) {
            keys[width * size + 1 + i] = text.word(columns[i]);
        }
        numbers[size] = number;
        trees[size] = tree;
        enter(size);
    }

    private void grow() {
        int more = 2 * slots.length;
        slots = new int[more];
        numbers = Arrays.copyOf(numbers, more / 2 + 1);
        trees = Arrays.copyOf(trees, numbers.length);
        keys = Arrays.copyOf(keys, width * numbers.length);
        for (int entry = 1; entry < size; entry++) {
            enter(entry);
        }
    }

    private void enter(int entry) {
        long hash = keys[width * entry];
        for (int i = 1; i < width; i++) {
            hash = (hash ^ keys[width * entry + i]) * 0x9E3779B97F4A7C15L;
        }
        int at = slot(hash);
        while (slots[at] != UNKNOWN) {
            at = (at + 1) & (slots.length - 1);
        }
        slots[at] = entry;
    }

    private int slot(long hash) {
        return (int) (hash >>> 32) & (slots.length - 1);
    }
}
