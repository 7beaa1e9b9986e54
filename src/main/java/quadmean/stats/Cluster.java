package quadmean.stats;

/**
 * A cluster of elements, read whole or in part: a line of plots, a compartment.
 *
 * @param size elements in the cluster, or anything in proportion to them, such as its area; above 0
 * @param populationUnits elements in the cluster for the finite population correction; infinity for none
 * @param values one value for each element read
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
public record Cluster(double size, double populationUnits, double[] values) {

    /** A cluster whose elements were all read. */
    public static Cluster whole(double[] values) {
        return new Cluster(values.length, values.length, values);
    }

    /** A cluster of known size, some of whose elements were drawn at random. */
    public static Cluster sampled(double size, double[] values) {
        return new Cluster(size, size, values);
    }

    /** The mean of its elements. */
    double mean() {
        return Moments.of(values).mean();
    }

    /** Variance of that mean within the cluster; 0 if it was read whole, NaN for one element of several. */
    double variance() {
        double unseen = new StratumSample(1, populationUnits, values).unseen();
        return unseen == 0 ? 0 : Moments.of(values).variance() / values.length * unseen;
    }
}
