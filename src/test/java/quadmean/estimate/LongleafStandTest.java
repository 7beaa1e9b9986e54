package quadmean.estimate;

import static quadmean.support.ReferenceFiles.json;
import static quadmean.support.ReferenceFiles.number;
import static quadmean.support.ReferenceFiles.numbers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import quadmean.model.DegreesRule;
import quadmean.model.FinitePopulation;
import quadmean.model.PlotDesign;
import quadmean.model.Stratum;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/**
 * Tree by tree to stand: the mapped longleaf pines (Platt, Evans and Rathbun 1988, as in R spatstat.data) on quadrats of 25 m
 * x 25 m, sampled as plots of 0.0625 ha. Expected values from R survey 4.1-1, script estimators.R, per quadrat.
 */
class LongleafStandTest {
    private static final JsonNode EXPECTED = json("longleaf-estimates.json");

    @Test
    void simpleRandomWithAndWithoutFinitePopulationCorrection() {
        JsonNode e = EXPECTED.get("simple_random");
        check(e.get("with_fpc"), e, Longleaf.WHOLE, settings(FinitePopulation.CORRECT, DegreesRule.PLOTS_MINUS_STRATA));
        check(
                e.get("without_fpc"),
                e,
                Longleaf.WHOLE,
                settings(FinitePopulation.IGNORE, DegreesRule.PLOTS_MINUS_STRATA));
    }

    @Test
    void stratifiedWithBothCountsOfDegreesOfFreedom() {
        JsonNode e = EXPECTED.get("stratified");
        check(
                e.get("with_fpc_df_n_minus_strata"),
                e,
                Longleaf.QUARTERS,
                settings(FinitePopulation.CORRECT, DegreesRule.PLOTS_MINUS_STRATA));
        check(
                e.get("with_fpc_df_satterthwaite"),
                e,
                Longleaf.QUARTERS,
                settings(FinitePopulation.CORRECT, DegreesRule.SATTERTHWAITE));
    }

    /** All 64 quadrats: N 146/ha, G 12.109384 m²/ha, quadratic mean diameter 32.496730 cm, and no error at a census. */
    @Test
    void theCensusIsExact() {
        StandEstimate e = StandEstimator.estimate(
                Longleaf.WHOLE, Longleaf.all(0), settings(FinitePopulation.CORRECT, DegreesRule.PLOTS_MINUS_STRATA));
        EstimateRow trees = row(e, Attribute.TREES, Basis.PER_AREA);
        Tolerance.ROUNDING.check(146, trees.mean(), "trees per ha");
        Tolerance.absolute("a census has no error", 1e-12).check(0, trees.se(), "standard error");
        Tolerance.printed(6)
                .check(12.109384, row(e, Attribute.BASAL_AREA, Basis.PER_AREA).mean(), "basal area");
        Tolerance.printed(6)
                .check(
                        32.496730,
                        row(e, Attribute.QUADRATIC_MEAN_DIAMETER, Basis.RATIO).mean(),
                        "diameter");
    }

    private static void check(JsonNode expected, JsonNode sample, List<Stratum> strata, EstimateSettings settings) {
        List<SampledPlot> plots = Longleaf.plots(numbers(sample.get("ids")), strata);
        EstimateRow row = row(StandEstimator.estimate(strata, plots, settings), Attribute.BASAL_AREA, Basis.PER_AREA);
        Tolerance.R_SCRIPT.check(number(expected.get("mean")), row.mean() * Longleaf.QUADRAT_HA, "mean");
        Tolerance.R_SCRIPT.check(number(expected.get("se")), row.se() * Longleaf.QUADRAT_HA, "se");
        Tolerance.R_SCRIPT.check(number(expected.get("df")), row.df(), "df");
        Tolerance.R_SCRIPT.check(number(expected.get("lower")), row.lower() * Longleaf.QUADRAT_HA, "lower");
        Tolerance.R_SCRIPT.check(number(expected.get("upper")), row.upper() * Longleaf.QUADRAT_HA, "upper");
    }

    private static EstimateRow row(StandEstimate e, Attribute attribute, Basis basis) {
        return e.row(EstimateRow.ALL, EstimateRow.ALL, attribute, basis).orElseThrow();
    }

    private static EstimateSettings settings(FinitePopulation finite, DegreesRule degrees) {
        return new EstimateSettings(
                new PlotDesign.Fixed(Longleaf.QUADRAT_HA),
                finite,
                degrees,
                0.95,
                10,
                Attribute.BASAL_AREA,
                10,
                "no equation");
    }
}
