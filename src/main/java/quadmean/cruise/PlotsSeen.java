package quadmean.cruise;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;

/** The plots of each stand that were seen, as numbers of 64 bits: eight to sixteen bytes a plot, whatever it is called. */
final class PlotsSeen {
    private static final int FEWEST = 8;

    private final long[][] byStand;
    private final int[] sizes;

    PlotsSeen(int stands) {
        this.byStand = new long[stands][];
        this.sizes = new int[stands];
    }

    /** Whether a plot is new; it is then kept. Of a billion plots in one stand two would be mistaken for each other once in 37 times. */
    boolean add(int stand, String plot) {
        return add(stand, number(plot));
    }

    private boolean add(int stand, long number) {
        long[] slots = byStand[stand];
        if (slots == null || 4 * (sizes[stand] + 1) > 3 * slots.length) {
            slots = grow(slots);
            byStand[stand] = slots;
        }
        if (!put(slots, number)) {
            return false;
        }
        sizes[stand]++;
        return true;
    }

    private static long[] grow(long[] slots) {
        if (slots == null) {
            return new long[FEWEST];
        }
        long[] more = new long[2 * slots.length];
        for (long number : slots) {
            if (number != 0) {
                put(more, number);
            }
        }
        return more;
    }

    private static boolean put(long[] slots, long number) {
        int at = (int) (number ^ (number >>> 32)) & (slots.length - 1);
        while (slots[at] != 0) {
            if (slots[at] == number) {
                return false;
            }
            at = (at + 1) & (slots.length - 1);
        }
        slots[at] = number;
        return true;
    }

    /** Never 0, which marks a slot as free. */
    private static long number(String plot) {
        long h = 0xCBF29CE484222325L;
        for (int i = 0; i < plot.length(); i++) {
            h = (h ^ plot.charAt(i)) * 0x9FB21C651E98DF25L;
            h ^= h >>> 29;
        }
        return h == 0 ? 1 : h;
    }

    void write(DataOutput out) throws IOException {
        for (int s = 0; s < byStand.length; s++) {
            out.writeInt(sizes[s]);
            long[] slots = byStand[s] == null ? new long[0] : byStand[s];
            for (long number : slots) {
                if (number != 0) {
                    out.writeLong(number);
                }
            }
        }
    }

    static PlotsSeen read(int stands, DataInput in) throws IOException {
        PlotsSeen seen = new PlotsSeen(stands);
        for (int s = 0; s < stands; s++) {
            int n = in.readInt();
            for (int i = 0; i < n; i++) {
                seen.add(s, in.readLong());
            }
        }
        return seen;
    }
}
