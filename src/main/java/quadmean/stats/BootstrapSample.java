package quadmean.stats;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;

/** Values of a statistic over the resamples of a bootstrap, and the intervals they give. */
public final class BootstrapSample {
    /** Below so many degrees of freedom a bootstrap is given with a note (common practice, no source). */
    static final int FEW = 10;

    private final double[] estimates;
    private final double[] accelerations;
    private final double[][] values;
    private final double[][] sorted;
    private final Set<BootstrapNote> designNotes;

    private BootstrapSample(
            double[] estimates, double[] accelerations, double[][] values, Set<BootstrapNote> designNotes) {
        this.estimates = estimates;
        this.accelerations = accelerations;
        this.values = values;
        this.sorted =
                Arrays.stream(values).parallel().map(BootstrapSample::sorted).toArray(double[][]::new);
        this.designNotes = designNotes;
    }

    static BootstrapSample of(ResampledStratum[] design, UnitStatistic statistic, double[][] values) {
        Set<BootstrapNote> notes = EnumSet.noneOf(BootstrapNote.class);
        if (Bootstrap.units(design) - design.length < FEW) {
            notes.add(BootstrapNote.FEW_UNITS);
        }
        if (Arrays.stream(design).anyMatch(s -> s.units() == 1 && s.shrinkage() > 0)) {
            notes.add(BootstrapNote.SINGLE_UNIT);
        }
        Jackknife jackknife = Jackknife.of(design, statistic);
        return new BootstrapSample(jackknife.estimates(), jackknife.accelerations(), values, notes);
    }

    /** The statistic of the sample itself. */
    public double estimate(int output) {
        return estimates[output];
    }

    /** Standard deviation over the resamples: the standard error of the estimate. */
    public double se(int output) {
        return Moments.of(sorted[output]).sd();
    }

    /** A copy of the values over the resamples, in their order. */
    public double[] values(int output) {
        return values[output].clone();
    }

    /**
     * Percentile limits: quantiles of the resamples (Efron 1979, from memory).
     *
     * @param confidence confidence level, in (0, 1)
     */
    public BootstrapInterval percentile(int output, double confidence) {
        return interval(output, confidence, false);
    }

    /**
     * Limits corrected for bias and for an error that grows with the estimate, BCa (Efron 1987), with the acceleration from leaving
     * out one unit at a time within its stratum (Davison and Hinkley 1997, section 5.3; from memory).
     *
     * @param confidence confidence level, in (0, 1)
     */
    public BootstrapInterval bca(int output, double confidence) {
        return interval(output, confidence, true);
    }

    private BootstrapInterval interval(int output, double confidence, boolean corrected) {
        double tail = (1 - Arguments.confidence(confidence)) / 2;
        Set<BootstrapNote> notes = EnumSet.noneOf(BootstrapNote.class);
        notes.addAll(designNotes);
        double[] own = sorted[output];
        int undefined = values[output].length - own.length;
        if (undefined > 0) {
            notes.add(BootstrapNote.UNDEFINED);
        }
        if (own.length == 0 || own[0] == own[own.length - 1]) {
            notes.add(BootstrapNote.NO_SPREAD);
            return new BootstrapInterval(new Interval(Double.NaN, Double.NaN), notes, undefined);
        }
        if (corrected && !Double.isFinite(accelerations[output])) {
            notes.add(BootstrapNote.NO_ACCELERATION);
            return new BootstrapInterval(new Interval(Double.NaN, Double.NaN), notes, undefined);
        }
        ReplicateLimits replicates = new ReplicateLimits(own);
        double lower = tail;
        double upper = 1 - tail;
        if (corrected) {
            double bias = replicates.bias(estimates[output]);
            lower = ReplicateLimits.corrected(tail, bias, accelerations[output]);
            upper = ReplicateLimits.corrected(1 - tail, bias, accelerations[output]);
        }
        if (!replicates.holds(lower) || !replicates.holds(upper)) {
            notes.add(BootstrapNote.BEYOND);
        }
        return new BootstrapInterval(
                new Interval(replicates.quantile(lower), replicates.quantile(upper)), notes, undefined);
    }

    /** The finite values in rising order; infinities go to the ends and NaN behind them. */
    private static double[] sorted(double[] values) {
        double[] copy = values.clone();
        Arrays.sort(copy);
        int from = 0;
        int to = copy.length;
        while (to > 0 && !Double.isFinite(copy[to - 1])) {
            to--;
        }
        while (from < to && !Double.isFinite(copy[from])) {
            from++;
        }
        return to - from == copy.length ? copy : Arrays.copyOfRange(copy, from, to);
    }
}
