package quadmean.estimate;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.json;
import static quadmean.support.ReferenceFiles.number;
import static quadmean.support.ReferenceFiles.numbers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import quadmean.model.EstimateRules;
import quadmean.model.Estimator;
import quadmean.model.EstimatorRules;
import quadmean.model.FinitePopulation;
import quadmean.model.IntervalRule;
import quadmean.stats.Bootstrap;
import quadmean.stats.BootstrapSample;
import quadmean.stats.ColumnMeans;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/** Each sampling design resampled by its own units. */
class ResampledDesignsTest {
    private static final JsonNode LONGLEAF = json("longleaf-estimates.json");
    private static final JsonNode EXPECTED = json("bootstrap-designs.json");
    private static final int REPLICATES = 20_000;
    private static final long SEED = 20_261_125;
    private static final ToDoubleFunction<SampledPlot> BASAL_AREA =
            PlotValue.of(new quadmean.model.PlotDesign.Fixed(Quadrats.HA), Attribute.BASAL_AREA, s -> true);

    private static BootstrapSample resample(Sample sample, int replicates) {
        Resampling r = sample.resampling().orElseThrow();
        double[][] values = r.plots().stream()
                .map(p -> new double[] {BASAL_AREA.applyAsDouble(p)})
                .toArray(double[][]::new);
        return Bootstrap.run(r.strata(), r.weights().of(ColumnMeans.of(values)), replicates, SEED);
    }

    private static Sample sample(Estimator estimator) {
        JsonNode phases = LONGLEAF.get("double_sampling_regression");
        double[] ids = estimator.isDouble()
                ? numbers(phases.get("phase2"))
                : LongleafSamplesTest.idsOf(LONGLEAF.get(
                        switch (estimator) {
                            case CLUSTER -> "cluster_one_stage";
                            case TWO_STAGE -> "two_stage";
                            case POST_STRATIFIED -> "post_stratified";
                            default -> "ratio";
                        }));
        EstimatorRules rules = LongleafSamplesTest.rules(estimator);
        // without their number there is no correction for clusters either
        EstimateSettings settings = Quadrats.settings(
                        estimator.isClustered() ? rules.withClusters(java.util.Map.of()) : rules,
                        FinitePopulation.IGNORE)
                .withListed(Quadrats.listed(numbers(phases.get("phase1"))));
        return Sample.of(Quadrats.WHOLE, Quadrats.plots(ids), settings);
    }

    /**
     * bootstrap-designs.json: 20 000 bootstrap weights of R's survey and the estimator worked out anew with each. Standard errors from
     * B resamples of kurtosis k vary by √((k-1)/(4B)) of themselves (by algebra), in R as here; four of those are allowed.
     */
    @ParameterizedTest
    @CsvSource({
        "RATIO",
        "REGRESSION",
        "POST_STRATIFIED",
        "CLUSTER",
        "TWO_STAGE",
        "DOUBLE_RATIO",
        "DOUBLE_REGRESSION",
        "DOUBLE_STRATIFIED"
    })
    void standardErrorsAsInR(Estimator estimator) {
        JsonNode r = EXPECTED.get("designs").get(estimator.name());
        BootstrapSample own = resample(sample(estimator), REPLICATES);
        Tolerance.R_SCRIPT.check(number(r.get("estimate")), own.estimate(0) * Quadrats.HA, "estimate");
        double varies = Math.sqrt((number(r.get("kurtosis")) - 1) / (4 * REPLICATES) * 2);
        Tolerance.relative("both by " + REPLICATES + " resamples", 4 * varies)
                .check(number(r.get("se")), own.se(0) * Quadrats.HA, "standard error");
    }

    /** With the sample's own weights the resampled statistic is the estimate itself. */
    @ParameterizedTest
    @EnumSource(value = Estimator.class, names = "HORVITZ_THOMPSON", mode = EnumSource.Mode.EXCLUDE)
    void theSampleItselfGivesTheEstimate(Estimator estimator) {
        Sample sample =
                Sample.of(Quadrats.WHOLE, LongleafSamplesTest.anyPlots(estimator), LongleafSamplesTest.any(estimator));
        Tolerance.ROUNDING.check(
                sample.mean(BASAL_AREA).mean(), resample(sample, 1).estimate(0), estimator.id());
    }

    private static EstimateSettings bootstrap(EstimateSettings settings, IntervalRule rule) {
        EstimateRules usual = settings.rules();
        return new EstimateSettings(
                        settings.plot(),
                        settings.finitePopulation(),
                        settings.degreesRule(),
                        settings.confidence(),
                        settings.targetErrorPercent(),
                        settings.target(),
                        settings.sizes(),
                        settings.attributes(),
                        settings.products(),
                        settings.missing(),
                        new EstimateRules(rule, 400, usual.estimation(), usual.errors(), usual.product()))
                .withListed(settings.listed());
    }

    private static StandEstimate estimate(Estimator estimator, IntervalRule rule, List<SampledPlot> plots) {
        return StandEstimator.estimate(
                Quadrats.WHOLE, plots, bootstrap(LongleafSamplesTest.any(estimator), rule), SEED);
    }

    private static EstimateRow row(StandEstimate e) {
        return e.row(EstimateRow.ALL, EstimateRow.ALL, Attribute.BASAL_AREA, Basis.PER_AREA)
                .orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(value = Estimator.class, names = "HORVITZ_THOMPSON", mode = EnumSource.Mode.EXCLUDE)
    void theOrderOfPlotsChangesNoLimit(Estimator estimator) {
        List<SampledPlot> plots = LongleafSamplesTest.anyPlots(estimator);
        List<SampledPlot> shuffled = new ArrayList<>(plots);
        Collections.shuffle(shuffled, new Random(4));
        EstimateRow one = row(estimate(estimator, IntervalRule.BCA, plots));
        EstimateRow other = row(estimate(estimator, IntervalRule.BCA, shuffled));
        assertTrue(one.lower() < one.mean() && one.mean() < one.upper(), one.toString());
        Tolerance.ROUNDING.check(one.lower(), other.lower(), "lower");
        Tolerance.ROUNDING.check(one.upper(), other.upper(), "upper");
    }

    @Test
    void drawsWithoutReplacementAreRefusedInWords() {
        Estimator unequal = Estimator.HORVITZ_THOMPSON;
        EstimateRow row = row(estimate(unequal, IntervalRule.BCA, LongleafSamplesTest.anyPlots(unequal)));
        assertTrue(row.se() > 0);
        assertTrue(Double.isNaN(row.lower()) && Double.isNaN(row.samplingErrorPercent()), row.toString());
        assertTrue(row.reason().contains("take interval = \"t\" or \"log\""), row.reason());
    }

    /** How often some class is missing from n - 1 of n plots drawn with replacement: inclusion and exclusion over the classes. */
    @Test
    void resamplesWithoutAnEstimateAreCounted() {
        double[] ids = numbers(LONGLEAF.get("post_stratified").get("ids"));
        List<SampledPlot> plots = new ArrayList<>(Quadrats.plots(ids));
        String kept = only(plots);
        plots.removeIf(p -> p.facts().group().equals("NE") && !p.id().equals(kept));
        EstimateSettings settings =
                Quadrats.settings(LongleafSamplesTest.rules(Estimator.POST_STRATIFIED), FinitePopulation.IGNORE);
        int undefined = resample(Sample.of(Quadrats.WHOLE, plots, settings), REPLICATES)
                .percentile(0, 0.95)
                .undefined();
        double share = shareWithoutSomeClass(plots);
        double sd = Math.sqrt(share * (1 - share) / REPLICATES);
        Tolerance.absolute("four standard deviations of a share", 4 * sd)
                .check(share, undefined / (double) REPLICATES, "undefined");
    }

    private static double shareWithoutSomeClass(List<SampledPlot> plots) {
        List<String> classes = List.of("SW", "SE", "NW", "NE");
        double all = 0;
        for (int subset = 0; subset < 1 << classes.size(); subset++) {
            int missing = subset;
            long left = plots.stream()
                    .filter(p -> (missing >> classes.indexOf(p.facts().group()) & 1) == 0)
                    .count();
            double chance = Math.pow(left / (double) plots.size(), plots.size() - 1);
            all += Integer.bitCount(subset) % 2 == 0 ? chance : -chance;
        }
        return 1 - all;
    }

    private static String only(List<SampledPlot> plots) {
        return plots.stream()
                .filter(p -> p.facts().group().equals("NE"))
                .map(SampledPlot::id)
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "CLUSTER, resamples of the clusters",
        "TWO_STAGE, plots are not drawn again within them",
        "RATIO, resamples of the plots"
    })
    void theNotesNameTheUnits(Estimator estimator, String words) {
        String notes = String.join(
                " ",
                estimate(estimator, IntervalRule.PERCENTILE, LongleafSamplesTest.anyPlots(estimator))
                        .notes());
        assertTrue(notes.contains(words), notes);
    }
}
