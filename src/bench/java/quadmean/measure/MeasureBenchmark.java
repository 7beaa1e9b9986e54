package quadmean.measure;

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
import quadmean.units.AngleScale;

/**
 * Nanoseconds for the height of a tree from a reading to the tip and one to the base, and for the error of that height.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class MeasureBenchmark {
    private static final int TREES = 1_000;

    private final Readings[] percent = new Readings[TREES];
    private final Readings[] degrees = new Readings[TREES];
    private final double[] distances = new double[TREES];
    private final HeightErrors errors = HeightErrors.commonPractice();

    /** Trees from 15 to 35 m away, tips 40 to 100 percent above the eye, bases up to 15 percent below. */
    @Setup
    public void sight() {
        Random random = new Random(1);
        for (int i = 0; i < TREES; i++) {
            double top = 40 + 60 * random.nextDouble();
            double base = -15 * random.nextDouble();
            percent[i] = new Readings(AngleScale.PERCENT, top, base);
            degrees[i] = new Readings(AngleScale.DEGREES, degrees(top), degrees(base));
            distances[i] = 15 + 20 * random.nextDouble();
        }
    }

    private static double degrees(double percent) {
        return AngleScale.DEGREES.reading(AngleScale.PERCENT.tangent(percent));
    }

    /** Readings in percent. */
    @Benchmark
    @OperationsPerInvocation(TREES)
    public double heightInPercent() {
        return heights(percent);
    }

    /** Readings in degrees. */
    @Benchmark
    @OperationsPerInvocation(TREES)
    public double heightInDegrees() {
        return heights(degrees);
    }

    private double heights(Readings[] readings) {
        double sum = 0;
        for (int i = 0; i < TREES; i++) {
            Readings r = readings[i];
            sum += TreeHeight.fromReadings(r.scale(), r.top(), r.base(), distances[i]);
        }
        return sum;
    }

    /** The error of a height at a distance taped to the base. */
    @Benchmark
    @OperationsPerInvocation(TREES)
    public double heightError() {
        double sum = 0;
        for (int i = 0; i < TREES; i++) {
            sum += errors.heightSd(new EyeToBaseSighting(degrees[i], distances[i]));
        }
        return sum;
    }
}
