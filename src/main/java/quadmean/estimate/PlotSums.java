package quadmean.estimate;

import java.util.Arrays;

/** Values of the plot under way, species by species. What rounding takes is kept beside each sum. */
public final class PlotSums {
    private final int attributes;
    private String[] species = new String[8];
    private double[] sums;
    private double[] lost;
    private int kinds;

    /**
     * An empty plot.
     *
     * @param attributes number of attributes
     */
    public PlotSums(int attributes) {
        this.attributes = attributes;
        this.sums = new double[attributes * species.length];
        this.lost = new double[sums.length];
    }

    /** Starts another plot. */
    public void clear() {
        Arrays.fill(sums, 0, kinds * attributes, 0);
        Arrays.fill(lost, 0, kinds * attributes, 0);
        kinds = 0;
    }

    /** Adds a tree. */
    public void add(TreeShare tree) {
        int from = slot(tree.species()) * attributes;
        double[] values = tree.perHa();
        for (int i = 0; i < attributes; i++) {
            add(from + i, values[i]);
        }
    }

    private int slot(String code) {
        for (int i = 0; i < kinds; i++) {
            if (isSame(species[i], code)) {
                return i;
            }
        }
        if (kinds == species.length) {
            species = Arrays.copyOf(species, 2 * kinds);
            sums = Arrays.copyOf(sums, attributes * species.length);
            lost = Arrays.copyOf(lost, sums.length);
        }
        species[kinds] = code;
        return kinds++;
    }

    /** Mostly the very same text, which shows without a look into it. */
    @SuppressWarnings({"ReferenceEquality", "StringEquality"})
    private static boolean isSame(String one, String other) {
        return one == other || one.equals(other);
    }

    private void add(int at, double value) {
        double before = sums[at];
        double sum = before + value;
        double taken = sum - before;
        lost[at] += (before - (sum - taken)) + (value - taken);
        sums[at] = sum;
    }

    int kinds() {
        return kinds;
    }

    String species(int kind) {
        return species[kind];
    }

    /** The values of all species together into an array. */
    void all(double[] into) {
        for (int i = 0; i < attributes; i++) {
            double sum = 0;
            double rest = 0;
            for (int at = i; at < kinds * attributes; at += attributes) {
                double before = sum;
                sum += sums[at];
                double taken = sum - before;
                rest += (before - (sum - taken)) + (sums[at] - taken) + lost[at];
            }
            into[i] = sum + rest;
        }
    }

    /** The values of one species into an array. */
    void of(int kind, double[] into) {
        for (int i = 0; i < attributes; i++) {
            into[i] = sums[kind * attributes + i] + lost[kind * attributes + i];
        }
    }
}
