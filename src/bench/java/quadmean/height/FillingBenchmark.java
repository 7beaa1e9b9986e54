package quadmean.height;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import quadmean.model.CurveForm;
import quadmean.model.FillingCurve;
import quadmean.model.HeightSource;
import quadmean.units.UnitSystem;

/**
 * Nanoseconds for the height of a tree on a curve that is in use.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class FillingBenchmark {
    private static final int TREES = 1_000;

    /** One form of plain arithmetic, three with powers and exponentials. */
    @Param({"NASLUND", "CURTIS", "CHAPMAN_RICHARDS", "KORF"})
    private CurveForm form = CurveForm.NASLUND;

    private final double[] dbhCm = new double[TREES];
    private FillingCurve curve = curve(CurveForm.NASLUND);

    /** Trees from 5 to 100 cm. */
    @Setup
    public void grow() {
        Random random = new Random(2);
        for (int i = 0; i < TREES; i++) {
            dbhCm[i] = 5 + 95 * random.nextDouble();
        }
        curve = curve(form);
        double height = FillingCurves.heightMetres(curve, 30);
        if (!(height > 5 && height < 60)) {
            throw new IllegalStateException("the parameters of " + form.id() + " make a tree of " + height + " m");
        }
    }

    private static FillingCurve curve(CurveForm form) {
        return new FillingCurve(
                "*",
                HeightSource.SPECIES_CURVE,
                form,
                CurveModelTest.example(form),
                1,
                UnitSystem.METRIC,
                1.3,
                0,
                Double.NaN,
                Double.NaN,
                Double.NaN);
    }

    /** A height in metres. */
    @Benchmark
    @OperationsPerInvocation(TREES)
    public double height() {
        double sum = 0;
        for (double d : dbhCm) {
            sum += FillingCurves.heightMetres(curve, d);
        }
        return sum;
    }
}
