package quadmean.model;

import org.jspecify.annotations.Nullable;

/**
 * What the list of plots says of a plot besides its stratum. Numbers that it does not say are NaN.
 *
 * @param phase whether the plot was to be visited
 * @param auxiliary auxiliary value, in any unit, the same for all plots
 * @param cluster the cluster that the plot belongs to; empty if none is said
 * @param clusterSize plots in that cluster, or anything in proportion to them
 * @param group class of the plot: a post-stratum, or a class of the first phase; empty if none is said
 * @param chance chance of a single draw, or of coming into the sample, in (0, 1]
 * @param draws how often the plot was drawn
 * @param place where it stands on the grid; null if that is not said
 * @param stripLength length of a strip (m)
 */
public record PlotFacts(
        Phase phase,
        double auxiliary,
        String cluster,
        double clusterSize,
        String group,
        double chance,
        int draws,
        @Nullable Place place,
        double stripLength) {
    /** Nothing said. */
    public static final PlotFacts NONE =
            new PlotFacts(Phase.NOT_SAID, Double.NaN, "", Double.NaN, "", Double.NaN, 1, null, Double.NaN);

    /** How far the work on a plot of double sampling goes. */
    public enum Phase {
        NOT_SAID,
        /** Its auxiliary value or class is known, and nobody went there. */
        FIRST_ONLY,
        /** Its trees were tallied too. */
        BOTH
    }

    /**
     * A place on the grid of plots.
     *
     * @param row number of the row; neighbouring rows differ by 1
     * @param column number of the column
     */
    public record Place(int row, int column) {}

    /** The same with another auxiliary value. */
    public PlotFacts withAuxiliary(double value) {
        return new PlotFacts(phase, value, cluster, clusterSize, group, chance, draws, place, stripLength);
    }

    /** The same in a cluster. */
    public PlotFacts withCluster(String code, double size) {
        return new PlotFacts(phase, auxiliary, code, size, group, chance, draws, place, stripLength);
    }

    /** The same in a class. */
    public PlotFacts withGroup(String code) {
        return new PlotFacts(phase, auxiliary, cluster, clusterSize, code, chance, draws, place, stripLength);
    }

    /** The same with a chance. */
    public PlotFacts withChance(double value, int times) {
        return new PlotFacts(phase, auxiliary, cluster, clusterSize, group, value, times, place, stripLength);
    }

    /** The same at a place of the grid. */
    public PlotFacts withPlace(int row, int column) {
        return new PlotFacts(
                phase, auxiliary, cluster, clusterSize, group, chance, draws, new Place(row, column), stripLength);
    }
}
