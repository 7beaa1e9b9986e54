package quadmean.field;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quadmean.model.Tree;

/**
 * Trees whose readings were seen before, with their numbers, as many as there is room for. A reading takes one place among the slots and one among the texts,
 * which lie in the order in which they came: the common readings come early, and stay in the nearest memory of the processor.
 */
final class TreeMemo {
    /** In place of an entry: these readings are not known. */
    static final int UNKNOWN = 0;

    private static final int FIRST_SLOTS = 1 << 10;
    private static final int LETTERS_PER_COLUMN = 8;

    private final int[] columns;
    private final int room;
    private final int width;
    /** Number of an entry, from 1, below the upper half of its hash; 0 for a free slot. At most half of the slots are taken. */
    private long[] slots = new long[FIRST_SLOTS];

    private long[] hashes = new long[FIRST_SLOTS / 2 + 1];
    private int[] numbers = new int[FIRST_SLOTS / 2 + 1];
    private @Nullable Tree[] trees = new Tree[FIRST_SLOTS / 2 + 1];
    private char[] letters;
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
        this.width = LETTERS_PER_COLUMN * Math.max(2, columns.length);
        this.letters = new char[width * numbers.length];
    }

    /** The entry of the readings of the last row, in stands of a kind; {@link #UNKNOWN} for none. */
    int find(PlotText text, int kind) {
        long hash = text.hash(columns, kind);
        int at = (int) hash & (slots.length - 1);
        long slot = slots[at];
        while (slot != 0) {
            if ((slot ^ hash) >>> 32 == 0 && text.matches(letters, width * (int) slot, width, kind, columns)) {
                return (int) slot;
            }
            at = (at + 1) & (slots.length - 1);
            slot = slots[at];
        }
        return UNKNOWN;
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
        return size < room && text.keyLength(columns) <= width;
    }

    /** Keeps the tree of the last row, for which there is room, and its number. */
    void put(PlotText text, int kind, Tree tree, int number) {
        size++;
        if (2 * size > slots.length) {
            grow();
        }
        text.key(letters, width * size, kind, columns);
        hashes[size] = text.hash(columns, kind);
        numbers[size] = number;
        trees[size] = tree;
        enter(size);
    }

    private void grow() {
        int more = 2 * slots.length;
        slots = new long[more];
        hashes = Arrays.copyOf(hashes, more / 2 + 1);
        numbers = Arrays.copyOf(numbers, more / 2 + 1);
        trees = Arrays.copyOf(trees, numbers.length);
        letters = Arrays.copyOf(letters, width * numbers.length);
        for (int entry = 1; entry < size; entry++) {
            enter(entry);
        }
    }

    private void enter(int entry) {
        int at = (int) hashes[entry] & (slots.length - 1);
        while (slots[at] != 0) {
            at = (at + 1) & (slots.length - 1);
        }
        slots[at] = hashes[entry] >>> 32 << 32 | entry;
    }
}
