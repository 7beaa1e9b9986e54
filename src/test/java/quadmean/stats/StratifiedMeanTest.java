package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static quadmean.support.ReferenceFiles.example;
import static quadmean.support.ReferenceFiles.number;
import static quadmean.support.ReferenceFiles.numbers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

/** Published and R reference values; longleaf-estimates.json is from R survey 4.1-1, script estimators.R. */
class StratifiedMeanTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;
    private static final JsonNode LONGLEAF = ReferenceFiles.json("longleaf-estimates.json");

    /** Freese 1962, Agriculture Handbook 232, simple random sampling: 20 units of 100. */
    @Test
    void freeseSimpleRandomSample() {
        JsonNode e = example("srs-freese-20of100");
        double units = number(e.get("inputs").get("N"));
        MeanEstimate m = simple(units, numbers(e.get("inputs").get("values")));
        JsonNode published = e.get("published");
        Tolerance.ROUNDING.check(number(published.get("mean")), m.mean(), "mean");
        Tolerance.printed(4).check(number(published.get("s2")), m.sd() * m.sd(), "variance");
        Tolerance.printed(3).check(number(published.get("SE_mean")), m.se(), "standard error");
        Tolerance.printed(1)
                .check(number(published.get("SE_total")), m.times(units).se(), "error of the total");
        assertEquals(19, m.df());
    }

    /** The same sample, recomputed outside this program; limits are in no publication that was seen. */
    @Test
    void freeseSampleRecomputed() {
        JsonNode e = example("srs-freese-20of100");
        JsonNode own = e.get("recomputed");
        double[] values = numbers(e.get("inputs").get("values"));
        Interval limits = simple(100, values).interval(0.95);
        Tolerance.R_SCRIPT.check(
                numbers(own.get("CI95_mean")), new double[] {limits.lower(), limits.upper()}, "limits");
        double uncorrected = simple(INFINITE, values).se();
        Tolerance.ROUNDING.check(number(own.get("SE_mean_without_fpc")), uncorrected, "SE without correction");
    }

    /** Textbook exercise with 70 counts; error and CV recomputed outside this program. */
    @Test
    void seventyCounts() {
        JsonNode e = example("srs-70-squares-tree-count");
        MeanEstimate m = simple(INFINITE, numbers(e.get("inputs").get("counts")));
        Tolerance.ROUNDING.check(number(e.get("recomputed").get("SE_mean_no_fpc")), m.se(), "standard error");
        Tolerance.ROUNDING.check(number(e.get("recomputed").get("CV_percent")), m.cvPercent(), "CV");
    }

    /** Freese 1962, stratified sampling; stratum sizes, three values and the published results are from memory. */
    @Test
    void freeseThreeTypes() {
        JsonNode e = example("stratified-freese-3types");
        MeanEstimate corrected = stratified(freeseStrata(e, true), DegreesOfFreedom.UNITS_MINUS_STRATA);
        MeanEstimate plain = stratified(freeseStrata(e, false), DegreesOfFreedom.UNITS_MINUS_STRATA);
        JsonNode own = e.get("recomputed");
        Tolerance.printed(2).check(number(e.get("published").get("stratified_mean")), plain.mean(), "mean");
        Tolerance.ROUNDING.check(number(own.get("SE_with_fpc")), corrected.se(), "SE with correction");
        Tolerance.ROUNDING.check(number(own.get("SE_no_fpc")), plain.se(), "SE without correction");
        assertEquals(30, plain.n());
        assertEquals(27, plain.df());
    }

    @ParameterizedTest
    @CsvSource({"with_fpc,64", "without_fpc,Infinity"})
    void simpleRandomSampleOfQuadrats(String entry, double units) {
        JsonNode expected = LONGLEAF.get("simple_random");
        MeanEstimate m = simple(units, Samples.quadrats(numbers(expected.get("ids")), "ba_m2"));
        check(expected.get(entry), m);
        Tolerance.R_SCRIPT.check(number(expected.get("cv_percent")), m.cvPercent(), "CV");
    }

    @ParameterizedTest
    @CsvSource({"with_fpc_df_n_minus_strata,UNITS_MINUS_STRATA", "with_fpc_df_satterthwaite,SATTERTHWAITE"})
    void stratifiedSampleOfQuadrats(String entry, DegreesOfFreedom rule) {
        JsonNode expected = LONGLEAF.get("stratified");
        check(expected.get(entry), stratified(longleafStrata(numbers(expected.get("ids"))), rule));
    }

    @Test
    void stratumMomentsOfQuadrats() {
        JsonNode expected = LONGLEAF.get("stratified");
        List<String> names = List.of("SW", "SE", "NW", "NE");
        List<StratumSample> strata = longleafStrata(numbers(expected.get("ids")));
        for (int i = 0; i < names.size(); i++) {
            Moments m = Moments.of(strata.get(i).values());
            String name = names.get(i);
            Tolerance.R_SCRIPT.check(number(expected.get("stratum_means").get(name)), m.mean(), name);
            Tolerance.R_SCRIPT.check(number(expected.get("stratum_variances").get(name)), m.variance(), name);
        }
    }

    private static void check(JsonNode expected, MeanEstimate m) {
        Interval limits = m.interval(0.95);
        Tolerance.R_SCRIPT.check(number(expected.get("mean")), m.mean(), "mean");
        Tolerance.R_SCRIPT.check(number(expected.get("se")), m.se(), "standard error");
        Tolerance.R_SCRIPT.check(number(expected.get("df")), m.df(), "degrees of freedom");
        Tolerance.R_SCRIPT.check(number(expected.get("lower")), limits.lower(), "lower limit");
        Tolerance.R_SCRIPT.check(number(expected.get("upper")), limits.upper(), "upper limit");
    }

    /** Four strata of 16 quadrats each. */
    private static List<StratumSample> longleafStrata(double[] ids) {
        var rows = ReferenceFiles.csv("longleaf-quadrats.csv");
        List<StratumSample> strata = new ArrayList<>();
        for (String name : List.of("SW", "SE", "NW", "NE")) {
            double[] own = Arrays.stream(ids)
                    .filter(id -> rows.get((int) id - 1).getField("stratum").equals(name))
                    .toArray();
            strata.add(new StratumSample(0.25, 16, Samples.quadrats(own, "ba_m2")));
        }
        return strata;
    }

    private static List<StratumSample> freeseStrata(JsonNode e, boolean corrected) {
        JsonNode strata = e.get("inputs").get("strata");
        return IntStream.range(0, strata.size())
                .mapToObj(strata::get)
                .map(s -> new StratumSample(
                        number(s.get("N")) / 2500, corrected ? number(s.get("N")) : INFINITE, numbers(s.get("values"))))
                .toList();
    }

    private static MeanEstimate simple(double units, double[] values) {
        return stratified(List.of(new StratumSample(1, units, values)), DegreesOfFreedom.UNITS_MINUS_STRATA);
    }

    private static MeanEstimate stratified(List<StratumSample> strata, DegreesOfFreedom rule) {
        return StratifiedMean.estimate(strata, rule);
    }
}
