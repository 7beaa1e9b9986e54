package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static quadmean.support.ReferenceFiles.number;

import com.fasterxml.jackson.databind.JsonNode;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

class RandomInterceptTest {
    private static final Tolerance EXACT = Tolerance.relative("a few matrix inversions", 1e-9);

    /** Linear Näslund form on the Idaho heights: R 4.2.2, nlme 3.1-162, script idaho.R, idaho-mixed-naslund.json. */
    @ParameterizedTest
    @ValueSource(strings = {"DF", "GF"})
    void idahoAgreesWithR(String species) {
        List<NamedCsvRecord> rows = ReferenceFiles.csv("idaho-heights.csv").stream()
                .filter(r -> r.getField("species").equals(species))
                .toList();
        List<String> plots =
                rows.stream().map(r -> r.getField("plot")).distinct().toList();
        double[] d = rows.stream().mapToDouble(r -> number(r, "dbh_cm")).toArray();
        double[] y = rows.stream()
                .mapToDouble(r -> number(r, "dbh_cm") / Math.sqrt(number(r, "height_m") - 1.3))
                .toArray();
        int[] group =
                rows.stream().mapToInt(r -> plots.indexOf(r.getField("plot"))).toArray();
        RandomIntercept fit = RandomIntercept.fit(lines(d), y, group);
        JsonNode expected = ReferenceFiles.json("idaho-mixed-naslund.json").get(species);
        Tolerance.FIT.check(number(expected.get("fixed").get("(Intercept)")), fit.fixed()[0], "intercept");
        Tolerance.FIT.check(number(expected.get("fixed").get("dbh_cm")), fit.fixed()[1], "slope");
        Tolerance.relative("REML iterations of nlme", 5e-6)
                .check(number(expected.get("sd_plot")), Math.sqrt(fit.groupVariance()), "sd of plots");
        Tolerance.FIT.check(number(expected.get("sd_residual")), Math.sqrt(fit.residualVariance()), "residual sd");
        Tolerance.R_SCRIPT.check(number(expected.get("logLik_reml")), fit.logLikelihood(), "log-likelihood");
        for (JsonNode one : expected.get("first_plots")) {
            double u = fit.effects()[plots.indexOf(one.get("plot").asText())];
            Tolerance.relative("REML iterations of nlme", 1e-5)
                    .check(number(one.get("u")), u, "plot " + one.get("plot"));
        }
    }

    /**
     * Three groups of two, an intercept only: REML of a balanced one-way layout is the analysis of variance (by hand).
     * Means 2, 5, 8 about 5; within groups squares of 0.5 each on 3 degrees: 0.5. Between: 2·(9 + 0 + 9)/2 = 18.
     */
    @Test
    void balancedGroupsAreTheAnalysisOfVariance() {
        double[][] ones = {{1}, {1}, {1}, {1}, {1}, {1}};
        double[] y = {1.5, 2.5, 4.5, 5.5, 7.5, 8.5};
        RandomIntercept fit = RandomIntercept.fit(ones, y, new int[] {0, 0, 1, 1, 2, 2});
        EXACT.check(0.5, fit.residualVariance(), "within");
        EXACT.check((18 - 0.5) / 2, fit.groupVariance(), "between");
        EXACT.check(5, fit.fixed()[0], "mean");
        // variance of the mean: 18 over six observations
        EXACT.check(18 / 6.0, fit.covariance()[0][0], "variance of the mean");
        double shrink = 2 * 8.75 / (0.5 + 2 * 8.75);
        EXACT.check(-3 * shrink, fit.effects()[0], "effect of the first group");
        EXACT.check(3 * shrink, fit.effect(new double[] {2.5, 3.5}), "effect from residuals");
        EXACT.check(8.75 * (1 - shrink), fit.effectVariance(2), "left of the variance of an effect");
        EXACT.check(8.75, fit.effectVariance(0), "all of it");
    }

    @Test
    void groupsThatDifferNoMoreThanChanceHaveNoVariance() {
        double[][] ones = {{1}, {1}, {1}, {1}};
        RandomIntercept fit = RandomIntercept.fit(ones, new double[] {1, 3, 3, 1}, new int[] {0, 0, 1, 1});
        assertEquals(0, fit.groupVariance());
        EXACT.check(4 / 3.0, fit.residualVariance(), "plain variance of 1, 3, 3, 1");
        assertEquals(0, fit.effects()[1]);
    }

    /** Without an observation, at the same ratio of variances: generalised least squares with inverted matrices. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void heldOutObservationsArePredictedFromTheRest(long seed) {
        Random random = new Random(seed);
        int[] group = {0, 0, 0, 1, 1, 2, 3, 3, 3, 3};
        double[] level = {-2, 1, 0.5, 2};
        double[] d =
                IntStream.range(0, 10).mapToDouble(i -> 3 * random.nextDouble()).toArray();
        double[] y = IntStream.range(0, 10)
                .mapToDouble(i -> 1 + d[i] + level[group[i]] + random.nextGaussian())
                .toArray();
        RandomIntercept fit = RandomIntercept.fit(lines(d), y, group);
        double lambda = fit.groupVariance() / fit.residualVariance();
        for (int i = 0; i < y.length; i++) {
            Tolerance.relative("matrix inversions, seed " + seed, 1e-8)
                    .check(heldOut(i, d, y, group, lambda), fit.deleted()[i], "observation " + i);
        }
    }

    private static double heldOut(int out, double[] d, double[] y, int[] group, double lambda) {
        int[] kept = IntStream.range(0, y.length).filter(i -> i != out).toArray();
        RealMatrix x = new Array2DRowRealMatrix(
                lines(Arrays.stream(kept).mapToDouble(i -> d[i]).toArray()));
        RealVector values =
                new ArrayRealVector(Arrays.stream(kept).mapToDouble(i -> y[i]).toArray());
        RealMatrix v = MatrixUtils.createRealIdentityMatrix(kept.length);
        RealVector shared = new ArrayRealVector(kept.length);
        for (int a = 0; a < kept.length; a++) {
            for (int b = 0; b < kept.length; b++) {
                v.addToEntry(a, b, group[kept[a]] == group[kept[b]] ? lambda : 0);
            }
            shared.setEntry(a, group[kept[a]] == group[out] ? lambda : 0);
        }
        RealMatrix inverse = new LUDecomposition(v).getSolver().getInverse();
        RealMatrix normal = x.transpose().multiply(inverse).multiply(x);
        RealVector beta =
                new LUDecomposition(normal).getSolver().solve(x.transpose().operate(inverse.operate(values)));
        double effect = shared.dotProduct(inverse.operate(values.subtract(x.operate(beta))));
        return y[out] - beta.getEntry(0) - beta.getEntry(1) * d[out] - effect;
    }

    @Test
    void moreParametersThanObservationsAreRefused() {
        double[] two = {1, 2};
        assertThrows(IllegalArgumentException.class, () -> RandomIntercept.fit(lines(two), two, new int[] {0, 1}));
    }

    private static double[][] lines(double[] d) {
        return Arrays.stream(d).mapToObj(v -> new double[] {1, v}).toArray(double[][]::new);
    }
}
