package quadmean.estimate;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
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
import quadmean.cruise.Cruise;
import quadmean.design.DesignReader;
import quadmean.model.EstateOnePlot;
import quadmean.model.EstateStand;

/**
 * Milliseconds for all estimates of a cruise of 72 points, trees and plots ready made, and for those of an estate of 2 000
 * stands from the sums of their plots.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class EstimateBenchmark {
    private static final int STANDS = 2_000;
    private static final int PLOTS = 20;
    private static final int TREES = 20;

    private @Nullable Worksheet ready;
    private final List<EstateStand> stands = new ArrayList<>();
    private final List<StandSums> sums = new ArrayList<>();

    /** The real points of designs/idaho-points.toml, and an invented estate. */
    @Setup
    public void work() throws IOException {
        var design = DesignReader.read(Path.of("designs", "idaho-points.toml")).design();
        ready = Cruise.run(Objects.requireNonNull(design)).worksheet();
        Random random = new Random(5);
        for (int i = 0; i < STANDS; i++) {
            stands.add(new EstateStand("S" + i, 5 + random.nextInt(40), "R1", "stratum " + i % 3));
            sums.add(stand(random));
        }
    }

    private Worksheet cruise() {
        return Objects.requireNonNull(ready);
    }

    private StandSums stand(Random random) {
        int attributes = cruise().settings().attributes().size();
        StandSums stand = StandSums.none(attributes);
        PlotSums plot = new PlotSums(attributes);
        double[] room = new double[attributes];
        TreeShares shares = new TreeShares(
                cruise().settings().plot(), cruise().settings().attributes());
        for (int p = 0; p < PLOTS; p++) {
            plot.clear();
            for (int t = 0; t < TREES; t++) {
                plot.add(shares, shares.once(tree(random)));
            }
            stand.add(plot, shares, room);
        }
        return stand;
    }

    private static Stem tree(Random random) {
        double dbhCm = 30 * Math.exp(random.nextGaussian() / 3);
        return new Stem("species " + random.nextInt(5), dbhCm, Math.exp(random.nextGaussian()));
    }

    /** Every row, table and note of the cruise. */
    @Benchmark
    public StandEstimate seventyTwoPoints() {
        return StandEstimator.estimate(cruise().strata(), cruise().plots(), cruise().settings());
    }

    /** Rows of the estate, its three strata and each stand, all species and each of five. */
    @Benchmark
    public int twoThousandStands() {
        EstateEstimator estimator =
                new EstateEstimator(stands, new ArrayList<>(sums), cruise().settings(), EstateOnePlot.POOL);
        int rows = estimator.estate().rows().size();
        for (int i = 0; i < STANDS; i++) {
            rows += estimator.rows(i, EstimateRow.ALL).size();
            for (String species : estimator.speciesOf(i)) {
                rows += estimator.rows(i, species).size();
            }
        }
        return rows;
    }
}
