package quadmean.stats;

import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * BCa limits of 20 columns (5 species, 4 attributes) of 144 plots from 10 000 resamples, all at once: one stratum, and three.
 * src/bench/R/bootstrap.R times the first with R's boot.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 4)
@Fork(1)
public class BootstrapBenchmark {
    private static final int PLOTS = 144;
    private static final int COLUMNS = 20;
    private static final int REPLICATES = 10_000;

    private final double[][] rows = new double[PLOTS][COLUMNS];
    private final List<ResampledStratum> one = List.of(new ResampledStratum(1, Double.POSITIVE_INFINITY, PLOTS));
    private final List<ResampledStratum> three = List.of(
            new ResampledStratum(0.5, 2_000, 72), new ResampledStratum(0.3, 1_200, 48), new ResampledStratum(0.2, 800, 24));

    /** Skewed values, a third of them zero, as species on plots have them. */
    @Setup
    public void grow() {
        Random random = new Random(144);
        for (double[] row : rows) {
            for (int c = 0; c < COLUMNS; c++) {
                row[c] = random.nextInt(3) == 0 ? 0 : Math.exp(random.nextGaussian());
            }
        }
    }

    /** A simple random sample. */
    @Benchmark
    public void simpleRandom(Blackhole hole) {
        limits(one, hole);
    }

    /** Three strata with finite populations. */
    @Benchmark
    public void stratified(Blackhole hole) {
        limits(three, hole);
    }

    private void limits(List<ResampledStratum> strata, Blackhole hole) {
        BootstrapSample sample = Bootstrap.run(strata, ColumnMeans.of(rows), REPLICATES, 1);
        for (int c = 0; c < COLUMNS; c++) {
            hole.consume(sample.bca(c, 0.95));
        }
    }
}
