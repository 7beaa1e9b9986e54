package quadmean.height;

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
import org.openjdk.jmh.infra.Blackhole;
import quadmean.model.CurveForm;

/**
 * Fits a second: every form on 1 000 species-stand groups of 60 trees, and the twelve forms of heights.R on the 174 heights of
 * the Idaho data, which src/bench/R/fits.R times in R.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 2, time = 10)
@Measurement(iterations = 3, time = 20)
@Fork(1)
public class CurvesBenchmark {
    private static final int GROUPS = 1_000;
    private static final int TREES = 60;
    private static final int FORMS = 16;
    private static final List<CurveForm> AS_IN_R = List.of(
            CurveForm.NASLUND,
            CurveForm.CURTIS,
            CurveForm.MICHAILOFF,
            CurveForm.WYKOFF,
            CurveForm.CHAPMAN_RICHARDS,
            CurveForm.WEIBULL,
            CurveForm.RATKOWSKY,
            CurveForm.LOGISTIC,
            CurveForm.GOMPERTZ,
            CurveForm.KORF,
            CurveForm.PRODAN,
            CurveForm.POWER);

    private final List<Heights.Sample> groups = new ArrayList<>();
    private List<Heights.Sample> idaho = List.of();
    private int next;

    /** Groups about Näslund curves of different sites, with a scatter of 1.5 m. */
    @Setup
    public void grow() {
        Random random = new Random(60);
        for (int i = 0; i < GROUPS; i++) {
            double[] site = {1.2 + random.nextDouble(), 0.14 + 0.06 * random.nextDouble()};
            groups.add(Heights.generated(CurveForm.NASLUND, site, 1.3, TREES, 1.5, i));
        }
        idaho = List.of(Heights.idaho("DF"), Heights.idaho("GF"));
        if (CurveForm.values().length != FORMS) {
            throw new IllegalStateException("the count of forms has changed; mend FORMS");
        }
    }

    /** All forms on one group after the other; the figure is fits a second. */
    @Benchmark
    @OperationsPerInvocation(FORMS)
    public void groups(Blackhole hole) {
        Heights.Sample group = groups.get(next++ % GROUPS);
        for (CurveForm form : CurveForm.values()) {
            hole.consume(CurveFitter.fit(form, group.d(), group.h(), 1.3));
        }
    }

    /** The twelve forms on both species of the Idaho heights; the figure is fits a second. */
    @Benchmark
    @OperationsPerInvocation(24)
    public void idahoHeights(Blackhole hole) {
        for (Heights.Sample species : idaho) {
            for (CurveForm form : AS_IN_R) {
                hole.consume(CurveFitter.fit(form, species.d(), species.h(), 1.3));
            }
        }
    }
}
