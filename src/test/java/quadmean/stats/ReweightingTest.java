package quadmean.stats;

import static quadmean.support.ReferenceFiles.csv;
import static quadmean.support.ReferenceFiles.json;
import static quadmean.support.ReferenceFiles.number;
import static quadmean.support.ReferenceFiles.numbers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.stats.Reweighting.Target;
import quadmean.support.Tolerance;

class ReweightingTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    private static double[] column(double[] ids, String name) {
        return Arrays.stream(ids)
                .map(id -> number(csv("longleaf-quadrats.csv").get((int) id - 1), name))
                .toArray();
    }

    private static double[][] rows(double[] values) {
        return Arrays.stream(values).mapToObj(v -> new double[] {v}).toArray(double[][]::new);
    }

    /** bootstrap-designs.json: BCa limits of R's boot for the ratio and the line, from 999 resamples that the file holds. */
    @ParameterizedTest
    @CsvSource({"RATIO", "REGRESSION"})
    void limitsFromTheSameResamplesAreThoseOfR(String design) {
        JsonNode expected = json("bootstrap-designs.json").get("limits").get(design);
        JsonNode sample = json("longleaf-estimates.json").get("ratio");
        double[] ids = numbers(sample.get("ids"));
        double[] stems = column(ids, "stems");
        Target known = Target.known(number(sample.get("mean_x")));
        Reweighting same = Reweighting.same(ids.length);
        Reweighting weights = design.equals("RATIO") ? same.scaled(stems, known) : same.onLine(stems, known);
        ResampledStratum[] units = {new ResampledStratum(1, INFINITE, ids.length)};
        Jackknife jackknife = Jackknife.of(units, weights.of(ColumnMeans.of(rows(column(ids, "ba_m2")))));
        double a = jackknife.accelerations()[0];
        Tolerance.R_SCRIPT.check(number(expected.get("estimate")), jackknife.estimates()[0], "estimate");
        Tolerance.R_SCRIPT.check(number(expected.get("acceleration")), a, "acceleration");
        double[] sorted = numbers(expected.get("t"));
        Arrays.sort(sorted);
        ReplicateLimits limits = new ReplicateLimits(sorted);
        double bias = limits.bias(jackknife.estimates()[0]);
        double[] bca = {
            limits.quantile(ReplicateLimits.corrected(0.05, bias, a)),
            limits.quantile(ReplicateLimits.corrected(0.95, bias, a))
        };
        Tolerance.R_SCRIPT.check(numbers(expected.get("bca")), bca, "BCa");
    }

    /** All 5·5·5·5 ways to draw 4 of 5 units: their variance is the design's own, s²/n, for clusters of one size and for draws. */
    @ParameterizedTest
    @CsvSource({"clusters", "draws"})
    void overAllResamplesALinearDesignVariesAsItsFormulaSays(String design) {
        double[] y = {3, 8, 1, 6, 7, 2, 9, 4, 4, 5};
        int[] unit = IntStream.range(0, 10).map(i -> i / 2).toArray();
        double[] expansion = {0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5};
        if (design.equals("draws")) {
            unit = IntStream.range(0, 5).toArray();
            y = Arrays.copyOf(y, 5);
            expansion = new double[] {1 / 0.1, 1 / 0.3, 1 / 0.2, 1 / 0.25, 1 / 0.15};
        }
        Reweighting weights = Reweighting.expanded(unit, expansion);
        if (design.equals("clusters")) {
            weights = weights.scaled(new double[] {1, 1, 1, 1, 1, 1, 1, 1, 1, 1}, Target.known(1));
        }
        double[] perUnit = new double[5];
        for (int i = 0; i < y.length; i++) {
            perUnit[unit[i]] += expansion[i] * y[i];
        }
        double sum = 0;
        double squares = 0;
        for (int draw = 0; draw < 625; draw++) {
            double[] units = new double[5];
            for (int k = 0, rest = draw; k < 4; k++, rest /= 5) {
                units[rest % 5] += 0.25;
            }
            double[] items = weights.apply(units);
            double t = 0;
            for (int i = 0; i < y.length; i++) {
                t += items[i] * y[i];
            }
            sum += t;
            squares += t * t;
        }
        Moments m = Moments.of(perUnit);
        Tolerance.ROUNDING.check(m.mean(), sum / 625, "mean");
        Tolerance.ROUNDING.check(m.variance() / 5, squares / 625 - (sum / 625) * (sum / 625), "variance");
    }

    /** Two strata of shares ¼ and ¾ with ratios of their own: the estimate is the sum of the shares times their estimates. */
    @Test
    void strataAreSideBySide() {
        Reweighting first = Reweighting.same(2).scaled(new double[] {1, 3}, Target.known(4));
        Reweighting second = Reweighting.same(3).scaled(new double[] {2, 2, 5}, Target.known(6));
        List<ResampledStratum> design =
                List.of(new ResampledStratum(0.25, INFINITE, 2), new ResampledStratum(0.75, INFINITE, 3));
        UnitStatistic means = Reweighting.joined(List.of(first, second), design)
                .of(ColumnMeans.of(rows(new double[] {2, 4, 1, 7, 1})));
        double expected = 0.25 * 4 * 6 / 4 + 0.75 * 6 * 9 / 9;
        Tolerance.ROUNDING.check(expected, Bootstrap.run(design, means, 1, 1).estimate(0), "ratio by strata");
    }

    /** A group that draws leave empty has no weights to scale. */
    @Test
    void anEmptyGroupHasNoValue() {
        Reweighting classes =
                Reweighting.same(3).scaled(new int[] {0, 0, 1}, 2, new double[] {1, 1, 1}, Target.known(0.5, 0.5));
        double[] items = classes.apply(new double[] {0.5, 0.5, 0});
        org.junit.jupiter.api.Assertions.assertTrue(Arrays.stream(items).allMatch(Double::isNaN));
        Tolerance.ROUNDING.check(
                new double[] {0.25, 0.25, 0.5}, classes.apply(new double[] {0.4, 0.4, 0.2}), "class weights");
    }
}
