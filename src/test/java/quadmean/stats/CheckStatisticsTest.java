package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.number;
import static quadmean.support.ReferenceFiles.numbers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.stats.PairedDifference.Equivalence;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

/** Statistics of check cruises. audit.json: R 4.2.2 (t.test, binom.test), survey 4.1-1 (svyciprop, svymean), script audit.R. */
class CheckStatisticsTest {
    private static final JsonNode R = ReferenceFiles.json("audit.json");

    private static PairedDifference plots() {
        double[] cruise = numbers(R.get("paired").get("cruise"));
        double[] check = numbers(R.get("paired").get("check"));
        double[] differences = new double[cruise.length];
        for (int i = 0; i < differences.length; i++) {
            differences[i] = cruise[i] - check[i];
        }
        return PairedDifference.of(differences);
    }

    private static void limits(JsonNode expected, Interval actual, String what) {
        Tolerance.R_SCRIPT.check(numbers(expected), new double[] {actual.lower(), actual.upper()}, what);
    }

    @Test
    void pairedDifferencesAreThoseOfR() {
        JsonNode expected = R.get("paired");
        PairedDifference d = plots();
        Tolerance.R_SCRIPT.check(number(expected.get("mean")), d.mean(), "mean");
        Tolerance.R_SCRIPT.check(number(expected.get("sd")), d.sd(), "sd");
        Tolerance.R_SCRIPT.check(number(expected.get("t")), d.mean() / d.se(), "t");
        Tolerance.R_SCRIPT.check(number(expected.get("p")), d.pValue(), "p");
        limits(expected.get("interval95"), d.estimate().interval(0.95), "95 %");
    }

    @ParameterizedTest
    @ValueSource(strings = {"inside", "outside"})
    void equivalenceIsTwoOneSidedTestsOfR(String entry) {
        JsonNode expected = R.get("paired").get(entry);
        Equivalence e = plots().equivalence(number(expected.get("margin")), 0.05);
        Tolerance.R_SCRIPT.check(number(expected.get("p_lower")), e.pLower(), "p above the lower margin");
        Tolerance.R_SCRIPT.check(number(expected.get("p_upper")), e.pUpper(), "p below the upper margin");
        limits(expected.get("interval"), e.interval(), "90 %");
        assertEquals(entry.equals("inside"), e.isShown());
    }

    /** The two tests reject exactly where the interval lies inside the margin (by algebra). */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 2, 4.6, 4.64, 5, 9, 40})
    void theIntervalInsideTheMarginIsTheSameDecision(double margin) {
        Equivalence e = plots().equivalence(margin, 0.05);
        boolean inside = e.interval().lower() > -margin && e.interval().upper() < margin;
        assertEquals(inside, e.isShown());
    }

    /** Not significantly different is no proof: two noisy pairs differ by nothing significant and are equivalent to nothing. */
    @Test
    void noSignificantDifferenceIsNotEquivalence() {
        PairedDifference noisy = PairedDifference.of(new double[] {40, -30, 25, -20});
        assertTrue(noisy.pValue() > 0.5);
        assertFalse(noisy.equivalence(10, 0.05).isShown());
    }

    @Test
    void withoutSpreadOrSecondPairThereIsNoTest() {
        for (double[] values : new double[][] {{3}, {2, 2, 2}}) {
            PairedDifference d = PairedDifference.of(values);
            assertTrue(Double.isNaN(d.pValue()));
            assertFalse(d.equivalence(10, 0.05).isShown());
        }
        assertThrows(IllegalArgumentException.class, () -> plots().equivalence(0, 0.05));
        assertThrows(IllegalArgumentException.class, () -> plots().equivalence(5, 0.5));
    }

    @ParameterizedTest
    @ValueSource(strings = {"some", "all", "none"})
    void exactBoundsAreThoseOfR(String entry) {
        JsonNode expected = R.get("binomial").get(entry);
        Proportion p =
                new Proportion(expected.get("having").asInt(), expected.get("n").asInt());
        limits(expected.get("both95"), p.exact(0.95), "two-sided");
        Tolerance exact = Tolerance.absolute("digits of the R reference", 1e-12);
        exact.check(number(expected.get("lower95")), p.exact(0.90).lower(), "lower");
        exact.check(number(expected.get("upper95")), p.exact(0.90).upper(), "upper");
    }

    @Test
    void boundsOfTreesOnPlotsAreThoseOfR() {
        JsonNode expected = R.get("clustered");
        List<ClusteredShare.Count> counts = new ArrayList<>();
        for (int i = 0; i < expected.get("trees").size(); i++) {
            counts.add(new ClusteredShare.Count(
                    expected.get("within").get(i).asInt(),
                    expected.get("trees").get(i).asInt()));
        }
        ClusteredShare share = ClusteredShare.of(counts, 0.95);
        Tolerance.R_SCRIPT.check(number(expected.get("share")), share.share(), "share");
        limits(expected.get("limits95"), share.limits(0.95), "95 %");
        limits(expected.get("limits90"), ClusteredShare.of(counts, 0.90).limits(0.90), "90 %");
        Proportion independent = new Proportion(share.having(), share.n());
        assertTrue(share.limits(0.90).lower() < independent.exact(0.90).lower(), "alike trees tell less");
    }

    /** Where every tree is right there is no variance to go by, and plots count as trees. */
    @Test
    void withoutAnErrorPlotsCountAsTrees() {
        List<ClusteredShare.Count> counts =
                List.of(new ClusteredShare.Count(9, 9), new ClusteredShare.Count(0, 0), new ClusteredShare.Count(4, 4));
        ClusteredShare all = ClusteredShare.of(counts, 0.90);
        assertEquals(2, all.clusters());
        Tolerance.ROUNDING.check(
                new Proportion(2, 2).exact(0.90).lower(), all.limits(0.90).lower(), "lower");
        assertTrue(Double.isNaN(
                ClusteredShare.of(counts.subList(0, 1), 0.90).limits(0.90).lower()));
    }

    @Test
    void theMeanDifferenceOfTreesHasTheErrorOfPlots() {
        JsonNode expected = R.get("differences");
        double[] values = numbers(expected.get("values"));
        List<Cluster> plots = new ArrayList<>();
        int at = 0;
        for (JsonNode n : expected.get("trees")) {
            plots.add(Cluster.whole(java.util.Arrays.copyOfRange(values, at, at + n.asInt())));
            at += n.asInt();
        }
        MeanEstimate mean = ClusterMean.perElement(plots, Double.POSITIVE_INFINITY);
        Tolerance.R_SCRIPT.check(number(expected.get("mean")), mean.mean(), "mean");
        Tolerance.R_SCRIPT.check(number(expected.get("se")), mean.se(), "standard error");
    }
}
