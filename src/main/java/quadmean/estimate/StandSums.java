package quadmean.estimate;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quadmean.stats.MomentSums;

/** All that the estimate of a stand of an estate takes of its plots: a few sums, which add up in any order and in any parts. */
public final class StandSums {
    private final int attributes;
    private final MomentSums all;
    /** Species found, in the order in which they came; a stand has a few. */
    private String[] species = new String[4];

    private MomentSums[] bySpecies = new MomentSums[4];
    private int kinds;
    private int plots;

    private StandSums(int attributes, MomentSums all) {
        this.attributes = attributes;
        this.all = all;
    }

    /**
     * No plots yet.
     *
     * @param attributes number of attributes, trees and basal area first
     */
    public static StandSums none(int attributes) {
        return new StandSums(attributes, MomentSums.none(attributes));
    }

    /**
     * Adds a plot.
     *
     * @param trees what the trees of the plot were
     * @param work room for a value of each attribute
     */
    public void add(PlotSums plot, TreeShares trees, double[] work) {
        plots++;
        plot.all(work);
        all.add(work);
        for (int kind = 0; kind < plot.kinds(); kind++) {
            plot.of(kind, work);
            sums(trees.code(plot.species(kind))).add(work);
        }
    }

    /** Adds the plots of other sums. */
    public void add(StandSums other) {
        plots += other.plots;
        all.add(other.all);
        for (int k = 0; k < other.kinds; k++) {
            sums(other.species[k]).add(other.bySpecies[k]);
        }
    }

    private MomentSums sums(String code) {
        int at = find(code);
        if (at < kinds) {
            return bySpecies[at];
        }
        MomentSums none = MomentSums.none(attributes);
        put(code, none);
        return none;
    }

    private void put(String code, MomentSums sums) {
        if (kinds == species.length) {
            species = Arrays.copyOf(species, 2 * kinds);
            bySpecies = Arrays.copyOf(bySpecies, 2 * kinds);
        }
        species[kinds] = code;
        bySpecies[kinds] = sums;
        kinds++;
    }

    /** Where a species stands; the number of species if it does not. */
    private int find(String code) {
        int at = 0;
        while (at < kinds && !species[at].equals(code)) {
            at++;
        }
        return at;
    }

    /** Number of plots. */
    public int plots() {
        return plots;
    }

    /** The sums of all species together. */
    MomentSums all() {
        return all;
    }

    /** The sums of a species; null if no plot has it. */
    @Nullable
    MomentSums of(String code) {
        int at = find(code);
        return at < kinds ? bySpecies[at] : null;
    }

    /** The species found, in the order of their codes. */
    List<String> species() {
        return Arrays.stream(species, 0, kinds).sorted().toList();
    }

    void addSpecies(Set<String> to) {
        for (int k = 0; k < kinds; k++) {
            to.add(species[k]);
        }
    }

    /** Writes the sums so that {@link #read} makes them again. */
    public void write(DataOutput out) throws IOException {
        out.writeInt(plots);
        write(all, out);
        out.writeInt(kinds);
        for (int k = 0; k < kinds; k++) {
            out.writeUTF(species[k]);
            write(bySpecies[k], out);
        }
    }

    private static void write(MomentSums sums, DataOutput out) throws IOException {
        double[] parts = sums.parts();
        out.writeInt(parts.length);
        for (double part : parts) {
            out.writeDouble(part);
        }
        out.writeLong(sums.above());
    }

    /** Reads what {@link #write} wrote. */
    public static StandSums read(int attributes, DataInput in) throws IOException {
        int plots = in.readInt();
        StandSums sums = new StandSums(attributes, readSums(attributes, in));
        sums.plots = plots;
        int kinds = in.readInt();
        for (int i = 0; i < kinds; i++) {
            sums.put(in.readUTF(), readSums(attributes, in));
        }
        return sums;
    }

    private static MomentSums readSums(int attributes, DataInput in) throws IOException {
        double[] parts = new double[in.readInt()];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = in.readDouble();
        }
        return MomentSums.of(attributes, parts, in.readLong());
    }
}
