package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static quadmean.support.ReferenceFiles.example;
import static quadmean.support.ReferenceFiles.number;
import static quadmean.support.ReferenceFiles.numbers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.support.Tolerance;

/** Published worked examples of sampling designs: worked-examples.json, each with its source, misprints and parts from memory. */
class TextbookDesignsTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    /** Spellman and Whiting, example 7.5: a mean and its error on 10 000 acres. */
    @Test
    void meanOnAreaToTotal() {
        JsonNode e = example("expand-total-10000ac");
        JsonNode in = e.get("inputs");
        JsonNode printed = e.get("published");
        MeanEstimate mean =
                new MeanEstimate(2, 1, number(in.get("mean_bf_per_acre")), number(in.get("SE_mean")), Double.NaN);
        MeanEstimate total = mean.times(number(in.get("area_acres")));
        Tolerance.ROUNDING.check(number(printed.get("var_mean")), mean.variance(), "variance");
        Tolerance.ROUNDING.check(number(printed.get("total")), total.mean(), "total");
        Tolerance.ROUNDING.check(number(printed.get("var_total")), total.variance(), "variance of the total");
        Tolerance.ROUNDING.check(number(printed.get("SE_total")), total.se(), "error of the total");
    }

    /** BCIT: 621 trees on 8 ha, expanded to 109 ha. */
    @Test
    void countOnAreaToTotal() {
        JsonNode e = example("expand-count-109ha");
        JsonNode in = e.get("inputs");
        double ha = number(in.get("sample_ha"));
        double[] perHa = {number(in.get("count")) / ha};
        MeanEstimate mean =
                StratifiedMean.estimate(List.of(StratumSample.of(1, perHa)), DegreesOfFreedom.UNITS_MINUS_STRATA);
        Tolerance.printed(3).check(number(e.get("published").get("per_ha")), mean.mean(), "per hectare");
        Tolerance.printed(0)
                .check(
                        number(e.get("published").get("total")),
                        mean.times(number(in.get("total_ha"))).mean(),
                        "total");
    }

    /**
     * Scheaffer, Mendenhall and Ott, trees on 1 500 acres; printed results from memory. Only mean and variance are given: 50 values
     * on each side of the mean have both.
     */
    @Test
    void boundOfATotal() {
        JsonNode e = example("srs-count-trees-1500ac");
        JsonNode in = e.get("inputs");
        int n = in.get("n").asInt();
        double half = Math.sqrt(number(in.get("s2")) * (n - 1) / n);
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            values[i] = number(in.get("mean")) + (i % 2 == 0 ? half : -half);
        }
        double units = number(in.get("N"));
        MeanEstimate total = StratifiedMean.estimate(
                        List.of(new StratumSample(1, units, values)), DegreesOfFreedom.UNITS_MINUS_STRATA)
                .times(units);
        Tolerance.printed(0).check(number(e.get("published").get("total")), total.mean(), "total");
        Tolerance.printed(2).check(number(e.get("published").get("bound")), 2 * total.se(), "bound of two errors");
    }

    /** Freese 1962, sampling for proportions: 480 of 1 000; limits p ± (2·SE + 1/(2n)) as printed, and the table's exact ones. */
    @Test
    void proportion() {
        JsonNode e = example("proportion-480of1000");
        JsonNode printed = e.get("published");
        Proportion share = new Proportion(480, 1000);
        MeanEstimate p = share.estimate(INFINITE);
        Tolerance.ROUNDING.check(number(printed.get("p")), p.mean(), "p");
        Tolerance.printed(4).check(number(printed.get("s_p")), p.se(), "its error");
        double half = 2 * p.se() + 1 / 2000.0;
        Tolerance.printed(3)
                .check(
                        numbers(printed.get("limits95_normal")),
                        new double[] {p.mean() - half, p.mean() + half},
                        "limits");
        JsonNode own = e.get("recomputed");
        Tolerance.R_SCRIPT.check(numbers(own.get("exact95")), limits(share, 0.95, 1), "exact limits");
        Tolerance.R_SCRIPT.check(numbers(own.get("exact99")), limits(share, 0.99, 1), "exact limits");
        Tolerance.printed(0)
                .check(numbers(printed.get("limits95_table_percent")), limits(share, 0.95, 100), "table limits");
        Tolerance.printed(0)
                .check(numbers(printed.get("limits99_table_percent")), limits(share, 0.99, 100), "table limits");
        Tolerance.printed(2)
                .check(numbers(printed.get("limits95_24of50")), limits(new Proportion(24, 50), 0.95, 1), "24 of 50");
    }

    /** By definition: nobody of n has the lower limit 0, all of n the upper limit 1; the other end is 0.025^(1/n). */
    @Test
    void noneAndAll() {
        Interval none = new Proportion(0, 20).exact(0.95);
        Interval all = new Proportion(20, 20).exact(0.95);
        assertEquals(0, none.lower());
        assertEquals(1, all.upper());
        Tolerance.R_SCRIPT.check(1 - Math.pow(0.025, 1 / 20.0), none.upper(), "none of 20");
        Tolerance.R_SCRIPT.check(Math.pow(0.025, 1 / 20.0), all.lower(), "all of 20");
    }

    /** Scheaffer, Mendenhall and Ott, regression estimator; data and printed results from memory. */
    @Test
    void regression() {
        JsonNode e = example("regression-estimator-486");
        JsonNode in = e.get("inputs");
        StratumSample y = new StratumSample(1, number(in.get("N")), numbers(in.get("y")));
        double meanX = number(in.get("population_mean_x"));
        MeanEstimate m =
                RegressionEstimate.mean(y, numbers(in.get("x")), meanX, RegressionEstimate.Variance.LARGE_SAMPLE);
        Tolerance.printed(1).check(number(e.get("published").get("mean")), m.mean(), "mean");
        Tolerance.R_SCRIPT.check(number(e.get("recomputed").get("V")), m.variance(), "variance");
        assertEquals(8, m.df());
        double slope =
                StraightLine.through(numbers(in.get("x")), numbers(in.get("y"))).slope();
        Tolerance.printed(3).check(number(e.get("published").get("b")), slope, "slope");
    }

    /** Scheaffer, Mendenhall and Ott, examples 8.2 to 8.4: 25 of 415 blocks of unequal size; printed results from memory. */
    @Test
    void clustersOfUnequalSize() {
        JsonNode e = example("cluster-25of415-unequal");
        JsonNode in = e.get("inputs");
        double[] sizes = numbers(in.get("cluster_sizes"));
        double[] totals = numbers(in.get("cluster_totals"));
        List<Cluster> clusters = new ArrayList<>();
        for (int i = 0; i < sizes.length; i++) {
            double[] alike = new double[(int) sizes[i]];
            java.util.Arrays.fill(alike, totals[i] / sizes[i]);
            clusters.add(Cluster.whole(alike));
        }
        double units = number(in.get("N_clusters"));
        MeanEstimate mean = ClusterMean.perElement(clusters, units);
        JsonNode printed = e.get("published");
        Tolerance.printed(0).check(number(printed.get("mean")), mean.mean(), "mean per element");
        Tolerance.printed(0).check(number(printed.get("bound_mean")), 2 * mean.se(), "bound");
        MeanEstimate total = ClusterMean.perCluster(clusters, units).times(units);
        Tolerance.R_SCRIPT.check(number(printed.get("total")), total.mean(), "total");
        Tolerance.R_SCRIPT.check(number(e.get("recomputed").get("bound_total_no_M")), 2 * total.se(), "its bound");
        double m = number(in.get("M_total_elements_if_known"));
        MeanEstimate known = mean.times(m);
        Tolerance.R_SCRIPT.check(number(e.get("recomputed").get("total_with_M")), known.mean(), "by known size");
        Tolerance.R_SCRIPT.check(number(e.get("recomputed").get("bound_total_with_M")), 2 * known.se(), "its bound");
    }

    /** Thompson, Sampling; the page prints the first total as 56.57 where 170/3 = 56.67, a misprint. */
    @Test
    void unequalProbabilities() {
        JsonNode e = example("pps-hansen-hurwitz-horvitz-thompson");
        double[] y = numbers(e.get("inputs").get("y"));
        double[] p = numbers(e.get("inputs").get("draw_probability"));
        int n = e.get("inputs").get("n").asInt();
        MeanEstimate drawn = HansenHurwitz.total(y, p);
        JsonNode printed = e.get("published");
        Tolerance.ROUNDING.check(170.0 / 3, drawn.mean(), "total by draws");
        Tolerance.printed(2).check(number(printed.get("HH_variance")), drawn.variance(), "its variance");
        double[] pi = new double[3];
        double[][] joint = new double[3][3];
        for (int i = 0; i < 3; i++) {
            pi[i] = 1 - Math.pow(1 - p[i], n);
            for (int j = 0; j < 3; j++) {
                joint[i][j] = 1 - Math.pow(1 - p[i], n) + 1 - Math.pow(1 - p[j], n) - 1 + Math.pow(1 - p[i] - p[j], n);
            }
        }
        MeanEstimate units = HorvitzThompson.total(y, pi, joint, HorvitzThompson.PairVariance.HORVITZ_THOMPSON);
        Tolerance.printed(2).check(number(printed.get("HT_total")), units.mean(), "total by inclusion");
        Tolerance.printed(2).check(number(printed.get("HT_variance")), units.variance(), "its variance");
    }

    /** Iles 1995: 120 trees of 100 ft, 20 wanted. */
    @Test
    void limitOfPredictions() {
        JsonNode e = example("3p-kz-planning");
        JsonNode in = e.get("inputs");
        double sum = number(in.get("trees")) * number(in.get("mean_predicted_height_ft"));
        assertEquals(number(e.get("published").get("sum_KPI")), sum);
        double limit = ThreeP.limit(sum, in.get("sample_wanted").asInt());
        assertEquals(number(e.get("published").get("feet_per_sample")), limit);
    }

    /**
     * Product of means with errors of 10 % (10 counts) and 5 % (20 trees): √125 % by the sum of squares; less the product of the
     * squares, 0.000025, in the unbiased form; degrees of freedom 0.0125²/(0.01²/9 + 0.0025²/19) (all by hand).
     */
    @ParameterizedTest
    @CsvSource({"BRUCE,0.0125", "GOODMAN,0.012475"})
    void product(ProductEstimate.Variance form, double relative) {
        MeanEstimate count = new MeanEstimate(10, 9, 40, 4, 12);
        MeanEstimate ratio = new MeanEstimate(20, 19, 8, 0.4, 1.6);
        MeanEstimate product = ProductEstimate.of(List.of(count, ratio), form);
        assertEquals(320, product.mean());
        Tolerance.ROUNDING.check(320 * Math.sqrt(relative), product.se(), "error");
        Tolerance.ROUNDING.check(1.5625e-4 / (1e-4 / 9 + 6.25e-6 / 19), product.df(), "df");
    }

    private static double[] limits(Proportion share, double confidence, double scale) {
        Interval i = share.exact(confidence);
        return new double[] {scale * i.lower(), scale * i.upper()};
    }
}
