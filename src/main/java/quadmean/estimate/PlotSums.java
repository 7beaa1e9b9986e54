package quadmean.estimate;

import java.util.Arrays;

/** Values of the plot under way: all species together, and species by species. What rounding takes is kept beside each sum. */
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
        this.sums = new double[attributes * (species.length + 1)];
        this.lost = new double[sums.length];
    }

    /** Starts another plot. */
    public void clear() {
        Arrays.fill(sums, 0, (kinds + 1) * attributes, 0);
        Arrays.fill(lost, 0, (kinds + 1) * attributes, 0);
        kinds = 0;
    }

    /** Adds a tree. */
    public void add(TreeShare tree) {
        add(0, tree.perHa());
        add((slot(tree.species()) + 1) * attributes, tree.perHa());
    }

    private int slot(String code) {
        for (int i = 0; i < kinds; i++) {
            if (species[i].equals(code)) {
                return i;
            }
        }
        if (kinds == species.length) {
            species = Arrays.copyOf(species, 2 * kinds);
            sums = Arrays.copyOf(sums, attributes * (species.length + 1));
            lost = Arrays.copyOf(lost, sums.length);
        }
        species[kinds] = code;
        return kinds++;
    }

    private void add(int from, double[] values) {
        for (int i = 0; i < attributes; i++) {
            double before = sums[from + i];
            double sum = before + values[i];
            double taken = sum - before;
            lost[from + i] += (before - (sum - taken)) + (values[i] - taken);
            sums[from + i] = sum;
        }
    }

    int kinds() {
        return kinds;
    }

    String species(int kind) {
        return species[kind];
    }

    /** The values of all species together into an array. */
    void all(double[] into) {
        values(0, into);
    }

    /** The values of one species into an array. */
    void of(int kind, double[] into) {
        values((kind + 1) * attributes, into);
    }

    private void values(int from, double[] into) {
        for (int i = 0; i < attributes; i++) {
            into[i] = sums[from + i] + lost[from + i];
        }
    }
}
