package quadmean.estimate;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import quadmean.stats.MomentSums;

/** All that the estimate of a stand of an estate takes of its plots: a few sums, which add up in any order and in any parts. */
public final class StandSums {
    private final int attributes;
    private final MomentSums all;
    private final Map<String, MomentSums> bySpecies = new TreeMap<>();
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
     * @param work room for a value of each attribute
     */
    public void add(PlotSums plot, double[] work) {
        plots++;
        plot.all(work);
        all.add(work);
        for (int kind = 0; kind < plot.kinds(); kind++) {
            plot.of(kind, work);
            sums(plot.species(kind)).add(work);
        }
    }

    /** Adds the plots of other sums. */
    public void add(StandSums other) {
        plots += other.plots;
        all.add(other.all);
        other.bySpecies.forEach((species, sums) -> sums(species).add(sums));
    }

    private MomentSums sums(String species) {
        return bySpecies.computeIfAbsent(species, s -> MomentSums.none(attributes));
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
    MomentSums of(String species) {
        return bySpecies.get(species);
    }

    /** The species found, by code. */
    Map<String, MomentSums> bySpecies() {
        return Collections.unmodifiableMap(bySpecies);
    }

    /** Writes the sums so that {@link #read} makes them again. */
    public void write(DataOutput out) throws IOException {
        out.writeInt(plots);
        write(all, out);
        out.writeInt(bySpecies.size());
        for (Map.Entry<String, MomentSums> species : bySpecies.entrySet()) {
            out.writeUTF(species.getKey());
            write(species.getValue(), out);
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
            sums.bySpecies.put(in.readUTF(), readSums(attributes, in));
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
