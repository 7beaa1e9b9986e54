package quadmean.estimate;

import java.util.Arrays;

/** Values of the plot under way, species by species. What rounding takes is kept beside each sum. */
public final class PlotSums {
    private final int attributes;
    private double[] sums;
    private double[] lost;
    /** Numbers of the species found on the plot. */
    private int[] found = new int[8];

    private boolean[] isFound;
    private int kinds;

    /**
     * An empty plot.
     *
     * @param attributes number of attributes
     */
    public PlotSums(int attributes) {
        this.attributes = attributes;
        this.isFound = new boolean[found.length];
        this.sums = new double[attributes * found.length];
        this.lost = new double[sums.length];
    }

    /** Starts another plot. */
    public void clear() {
        for (int k = 0; k < kinds; k++) {
            int from = attributes * found[k];
            Arrays.fill(sums, from, from + attributes, 0);
            Arrays.fill(lost, from, from + attributes, 0);
            isFound[found[k]] = false;
        }
        kinds = 0;
    }

    /** Adds a tree. */
    public void add(TreeShares trees, int number) {
        int species = trees.species(number);
        if (species >= isFound.length || !isFound[species]) {
            meet(species);
        }
        int from = attributes * species;
        for (int i = 0; i < attributes; i++) {
            add(from + i, trees.perHa(number, i));
        }
    }

    private void meet(int species) {
        if (species >= isFound.length) {
            int more = 2 * species;
            isFound = Arrays.copyOf(isFound, more);
            sums = Arrays.copyOf(sums, attributes * more);
            lost = Arrays.copyOf(lost, attributes * more);
            found = Arrays.copyOf(found, more);
        }
        isFound[species] = true;
        found[kinds++] = species;
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

    /** Number of a species found. */
    int species(int kind) {
        return found[kind];
    }

    /** The values of all species together into an array. */
    void all(double[] into) {
        for (int i = 0; i < attributes; i++) {
            double sum = 0;
            double rest = 0;
            for (int k = 0; k < kinds; k++) {
                int at = attributes * found[k] + i;
                double before = sum;
                sum += sums[at];
                double taken = sum - before;
                rest += (before - (sum - taken)) + (sums[at] - taken) + lost[at];
            }
            into[i] = sum + rest;
        }
    }

    /** The values of one species found into an array. */
    void of(int kind, double[] into) {
        int from = attributes * found[kind];
        for (int i = 0; i < attributes; i++) {
            into[i] = sums[from + i] + lost[from + i];
        }
    }
}
