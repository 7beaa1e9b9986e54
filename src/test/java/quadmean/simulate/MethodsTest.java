package quadmean.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quadmean.simulate.Trials.Stand;
import quadmean.units.Attribute;
import quadmean.units.BasalArea;

/**
 * Every way of sampling in forests of which each tree is known: linear estimates come out at the truth within three Monte Carlo errors.
 * The truth is a sum over the map, worked out here as well.
 */
class MethodsTest {
    private static final double ERRORS = 3;

    @TempDir
    private Path folder;

    private static String words(Methods method, Stand stand, AttributeOutcome o) {
        return String.format(
                Locale.ROOT,
                "%s, %s, %s: %.3f %% ± %.3f %%",
                stand,
                method.label(),
                o.attribute().label(),
                o.biasPercent(),
                100 * o.biasError() / o.truth());
    }

    private void hasNoBias(Stand stand, Methods method, int n, long cruises, List<String> off) throws IOException {
        SimulationResult result = Trials.run(folder, stand, method.design(stand, n), cruises);
        List<Attribute> linear = method == Methods.COUNT_POINTS || method == Methods.TWO_FACTORS
                ? List.of(Attribute.BASAL_AREA)
                : List.of(Attribute.BASAL_AREA, Attribute.TREES);
        for (Attribute a : linear) {
            AttributeOutcome o = result.outcome(a).orElseThrow();
            if (Math.abs(o.bias()) > ERRORS * o.biasError()) {
                off.add(words(method, stand, o));
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void linearEstimatesComeOutAtTheTruth(Methods method) throws IOException {
        List<String> off = new ArrayList<>();
        if (method.isLinear()) {
            hasNoBias(Stand.LONGLEAF, method, 12, 400, off);
        }
        assertTrue(off.isEmpty(), off.toString());
    }

    /** Of some eighty comparisons one in 370 is off by three errors by chance alone. */
    @Tag("slow")
    @Test
    void linearEstimatesComeOutAtTheTruthInEveryForest() throws IOException {
        List<String> off = new ArrayList<>();
        for (Stand stand : Stand.values()) {
            for (Methods method : Methods.values()) {
                if (method.isLinear()) {
                    hasNoBias(stand, method, 12, 4_000, off);
                }
            }
        }
        assertTrue(off.isEmpty(), off.toString());
    }

    /** To the first order the bias of a ratio goes by 1/n (Cochran 1977, section 6.8, from memory): a quarter as large with four times as many. */
    @Tag("slow")
    @ParameterizedTest
    @EnumSource(names = {"RATIO", "DOUBLE_RATIO", "COUNT_POINTS"})
    void ratiosHaveABiasOfTheOrderOfOneOverN(Methods method) throws IOException {
        Attribute attribute = method == Methods.COUNT_POINTS ? Attribute.TREES : Attribute.BASAL_AREA;
        AttributeOutcome few = Trials.run(folder, Stand.WAKA, method.design(Stand.WAKA, 6), 20_000)
                .outcome(attribute)
                .orElseThrow();
        AttributeOutcome many = Trials.run(folder, Stand.WAKA, method.design(Stand.WAKA, 24), 20_000)
                .outcome(attribute)
                .orElseThrow();
        String words = words(method, Stand.WAKA, few) + "; " + words(method, Stand.WAKA, many);
        System.out.println(words);
        double error = Math.hypot(few.biasError() / 4, many.biasError());
        assertTrue(Math.abs(many.bias() - few.bias() / 4) < ERRORS * error + Math.abs(few.bias()) / 8, words);
    }

    /**
     * The error of the adjusted estimate takes draws as if a tree could be drawn twice. With the chances p, its variance is then too large
     * by 1/(1 - Σp²/Σp) where ratio and size have nothing to do with each other (by algebra: each term of the Poisson variance has its
     * 1 - p); the unadjusted one has that factor in it.
     */
    @ParameterizedTest
    @EnumSource(names = {"THREE_P", "THREE_P_ADJUSTED"})
    void threePIsTooCautiousByWhatCannotBeDrawnTwice(Methods method) throws IOException {
        int n = 30;
        SimulationResult result = Trials.run(folder, Stand.LONGLEAF, method.design(Stand.LONGLEAF, n), 400);
        AttributeOutcome o = result.target().orElseThrow();
        double sum = 0;
        double square = 0;
        for (var tree : Stand.LONGLEAF.forest(result.design()).trees()) {
            double p = Math.min(1, BasalArea.ofTree(tree.dbhCm()) * n / 16.0);
            sum += p;
            square += p * p;
        }
        double expected = method == Methods.THREE_P ? 1 : 1 / Math.sqrt(1 - square / sum);
        double seen = Math.sqrt(o.meanVariance()) / o.sd();
        assertEquals(expected, seen, ERRORS * seen * o.sdError() / o.sd(), method.label());
    }
}
