package quadmean.volume;

import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import quadmean.model.Provenance;
import quadmean.model.Standing;
import quadmean.model.TaperForm;
import quadmean.model.TaperSpec;
import quadmean.model.VolumeForm;
import quadmean.model.VolumeSpec;
import quadmean.model.VolumeSpec.LogBase;
import quadmean.units.Unit;

/**
 * Nanoseconds for the volume of a tree by equations of several forms; the coefficients are made up.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class VolumeBenchmark {
    private static final int TREES = 1_000;
    private static final Provenance MADE_UP = new Provenance("made up", Standing.INVENTED);

    /** The form of the equation; by a stem profile the volume is an integral. */
    @Param({"COMBINED_VARIABLE", "SCHUMACHER_HALL", "LOG_POLYNOMIAL", "HONER", "FORM_FACTOR", "TAPER"})
    private VolumeForm form = VolumeForm.HONER;

    private final double[] dbhCm = new double[TREES];
    private final double[] heightM = new double[TREES];
    private TreeEquation equation = equation(VolumeForm.HONER);

    /** Trees from 5 to 100 cm, 10 to 45 m high. */
    @Setup
    public void grow() {
        Random random = new Random(3);
        for (int i = 0; i < TREES; i++) {
            dbhCm[i] = 5 + 95 * random.nextDouble();
            heightM[i] = 10 + 35 * random.nextDouble();
        }
        equation = equation(form);
        if (!(volume() > 0)) {
            throw new IllegalStateException("a tree has no volume by " + form.id());
        }
    }

    private static TreeEquation equation(VolumeForm form) {
        VolumeSpec spec = new VolumeSpec(
                "*",
                form,
                coefficients(form),
                LogBase.E,
                0,
                Unit.CENTIMETRE,
                Unit.METRE,
                Unit.CUBIC_METRE,
                MADE_UP.source(),
                MADE_UP.standing());
        TaperSpec cone = new TaperSpec("*", TaperForm.ORMEROD, List.of(1.0), Optional.empty(), MADE_UP);
        return TreeEquation.of(spec, ProfileBook.of(Map.of("*", cone), Map.of(), 1.3).stem("*").orElseThrow());
    }

    private static List<Double> coefficients(VolumeForm form) {
        return switch (form) {
            case COMBINED_VARIABLE -> List.of(0.01, 3e-5);
            case SCHUMACHER_HALL -> List.of(-9.8, 1.8, 1.05);
            case LOG_POLYNOMIAL -> List.of(-9.8, 1.8, 1.05, 0.01, 0.01, 0.01);
            case HONER -> List.of(400.0, 20_000.0);
            case FORM_FACTOR -> List.of(0.45);
            case TAPER -> List.of();
            default -> throw new IllegalStateException("no coefficients here for " + form.id());
        };
    }

    /** A volume in cubic metres. */
    @Benchmark
    @OperationsPerInvocation(TREES)
    public double volume() {
        double sum = 0;
        for (int i = 0; i < TREES; i++) {
            sum += equation.volumeM3(dbhCm[i], heightM[i]);
        }
        return sum;
    }
}
