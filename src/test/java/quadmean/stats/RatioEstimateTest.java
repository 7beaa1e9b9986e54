package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.number;
import static quadmean.support.ReferenceFiles.numbers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

class RatioEstimateTest {

    /** longleaf-estimates.json: R survey 4.1-1, script estimators.R; v2 takes the population mean of x. */
    @Test
    void basalAreaPerStemOfQuadrats() {
        JsonNode expected = ReferenceFiles.json("longleaf-estimates.json").get("ratio");
        double[] ids = numbers(expected.get("ids"));
        double[] stems = Samples.quadrats(ids, "stems");
        MeanEstimate r = ratio(64, Samples.quadrats(ids, "ba_m2"), stems);
        Tolerance.R_SCRIPT.check(number(expected.get("ratio")), r.mean(), "ratio");
        Tolerance.R_SCRIPT.check(number(expected.get("se_ratio")), r.se(), "its error");
        double v0 = r.times(Moments.of(stems).mean()).se();
        Tolerance.R_SCRIPT.check(number(expected.get("se_v0")), v0, "error of the mean, v0");
        double v2 = r.times(number(expected.get("mean_x"))).se();
        Tolerance.R_SCRIPT.check(number(expected.get("se_v2")), v2, "error of the mean, v2");
    }

    /**
     * Scheaffer, Mendenhall and Ott, Elementary Survey Sampling, exercises 6.1 and 6.9; the printed results are from
     * memory. Their bound is two standard errors of the total, by N²·(1 - n/N)·s²/n with the sample's own mean of x
     * taken out again.
     */
    @ParameterizedTest
    @CsvSource({
        "ratio-volume-basal-area,volume_ft3,basal_area_ft2,total_basal_area_known",
        "ratio-dead-firs-photo,ground_count,photo_count,total_photo_count"
    })
    void totalsOfTextbookExercises(String id, String y, String x, String total) {
        JsonNode e = ReferenceFiles.example(id);
        JsonNode in = e.get("inputs");
        double units = number(in.get("N"));
        double[] xs = numbers(in.get(x));
        MeanEstimate r = ratio(units, numbers(in.get(y)), xs);
        double estimate = r.mean() * number(in.get(total));
        double bound = 2 * r.se() * Moments.of(xs).mean() * units;
        Tolerance.printed(2).check(number(e.get("published").get("total")), estimate, "total");
        Tolerance.printed(2).check(number(e.get("published").get("bound")), bound, "bound");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void exactProportionHasNoError(long seed) {
        double[] x = Samples.positive(12, new Random(seed));
        MeanEstimate r = ratio(Double.POSITIVE_INFINITY, Samples.times(3, x), x);
        Tolerance.ROUNDING.check(3, r.mean(), "ratio, seed " + seed);
        Tolerance.absolute("rounding", 1e-14).check(0, r.se(), "error, seed " + seed);
    }

    /** With x = 1 for every unit a ratio is a mean (by algebra). */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void ratioToOneIsTheMean(long seed) {
        Random random = new Random(seed);
        List<StratumSample> y = List.of(
                new StratumSample(0.3, 40, Samples.positive(5, random)),
                new StratumSample(0.7, 90, Samples.positive(8, random)));
        List<StratumSample> ones =
                y.stream().map(s -> s.with(ones(s.values().length))).toList();
        MeanEstimate mean = StratifiedMean.estimate(y, DegreesOfFreedom.SATTERTHWAITE);
        MeanEstimate r = RatioEstimate.estimate(y, ones, DegreesOfFreedom.SATTERTHWAITE);
        Tolerance.ROUNDING.check(mean.mean(), r.mean(), "mean, seed " + seed);
        Tolerance.ROUNDING.check(mean.se(), r.se(), "error, seed " + seed);
        Tolerance.ROUNDING.check(mean.df(), r.df(), "df, seed " + seed);
    }

    @Test
    void nothingInTheDenominatorGivesNoRatio() {
        MeanEstimate r = ratio(Double.POSITIVE_INFINITY, new double[] {0, 0, 0}, new double[] {0, 0, 0});
        assertTrue(Double.isNaN(r.mean()));
        assertFalse(r.hasError());
        assertEquals(3, r.n());
    }

    private static double[] ones(int n) {
        double[] ones = new double[n];
        Arrays.fill(ones, 1);
        return ones;
    }

    private static MeanEstimate ratio(double units, double[] y, double[] x) {
        return RatioEstimate.estimate(
                List.of(new StratumSample(1, units, y)),
                List.of(new StratumSample(1, units, x)),
                DegreesOfFreedom.UNITS_MINUS_STRATA);
    }
}
