package quadmean.stats;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Nanoseconds for adding a plot of three values to sums kept in two doubles each, and for a mean of a stratified sample with
 * its error.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class SumsBenchmark {
    private static final int PLOTS = 1_000;
    private static final int STRATA = 10;

    private final double[][] plots = new double[PLOTS][3];
    private final List<StratumSample> strata = new ArrayList<>();

    /** Ten strata of a hundred plots. */
    @Setup
    public void grow() {
        Random random = new Random(4);
        for (double[] plot : plots) {
            for (int i = 0; i < plot.length; i++) {
                plot[i] = Math.exp(random.nextGaussian());
            }
        }
        for (int s = 0; s < STRATA; s++) {
            double[] values = new double[PLOTS / STRATA];
            for (int i = 0; i < values.length; i++) {
                values[i] = plots[s * values.length + i][0];
            }
            strata.add(StratumSample.of(1.0 / STRATA, values));
        }
    }

    /** One plot more in the sums. */
    @Benchmark
    @OperationsPerInvocation(PLOTS)
    public MomentSums addToSums() {
        MomentSums sums = MomentSums.none(3);
        for (double[] plot : plots) {
            sums.add(plot);
        }
        return sums;
    }

    /** The mean of 1 000 plots in ten strata; the figure is for all of them. */
    @Benchmark
    public MeanEstimate stratifiedMean() {
        return StratifiedMean.estimate(strata, DegreesOfFreedom.SATTERTHWAITE);
    }
}
