package quadmean.estimate;

import static quadmean.support.ReferenceFiles.csv;
import static quadmean.support.ReferenceFiles.json;
import static quadmean.support.ReferenceFiles.number;
import static quadmean.support.ReferenceFiles.numbers;

import com.fasterxml.jackson.databind.JsonNode;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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
    private static final double QUADRAT_HA = 0.0625;
    private static final List<Stratum> WHOLE = List.of(new Stratum("stand", "stand", 4));
    private static final List<Stratum> QUARTERS = List.of(
            new Stratum("SW", "SW", 1),
            new Stratum("SE", "SE", 1),
            new Stratum("NW", "NW", 1),
            new Stratum("NE", "NE", 1));
    private static final JsonNode EXPECTED = json("longleaf-estimates.json");

    @Test
    void simpleRandomWithAndWithoutFinitePopulationCorrection() {
        JsonNode e = EXPECTED.get("simple_random");
        check(e.get("with_fpc"), e, WHOLE, settings(FinitePopulation.CORRECT, DegreesRule.PLOTS_MINUS_STRATA));
        check(e.get("without_fpc"), e, WHOLE, settings(FinitePopulation.IGNORE, DegreesRule.PLOTS_MINUS_STRATA));
    }

    @Test
    void stratifiedWithBothCountsOfDegreesOfFreedom() {
        JsonNode e = EXPECTED.get("stratified");
        check(
                e.get("with_fpc_df_n_minus_strata"),
                e,
                QUARTERS,
                settings(FinitePopulation.CORRECT, DegreesRule.PLOTS_MINUS_STRATA));
        check(
                e.get("with_fpc_df_satterthwaite"),
                e,
                QUARTERS,
                settings(FinitePopulation.CORRECT, DegreesRule.SATTERTHWAITE));
    }

    /** All 64 quadrats: N 146/ha, G 12.109384 m²/ha, quadratic mean diameter 32.496730 cm, and no error at a census. */
    @Test
    void theCensusIsExact() {
        double[] all = new double[64];
        for (int i = 0; i < 64; i++) {
            all[i] = i + 1;
        }
        StandEstimate e = StandEstimator.estimate(
                WHOLE, plots(all, WHOLE), settings(FinitePopulation.CORRECT, DegreesRule.PLOTS_MINUS_STRATA));
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
        List<SampledPlot> plots = plots(numbers(sample.get("ids")), strata);
        EstimateRow row = row(StandEstimator.estimate(strata, plots, settings), Attribute.BASAL_AREA, Basis.PER_AREA);
        Tolerance.R_SCRIPT.check(number(expected.get("mean")), row.mean() * QUADRAT_HA, "mean");
        Tolerance.R_SCRIPT.check(number(expected.get("se")), row.se() * QUADRAT_HA, "se");
        Tolerance.R_SCRIPT.check(number(expected.get("df")), row.df(), "df");
        Tolerance.R_SCRIPT.check(number(expected.get("lower")), row.lower() * QUADRAT_HA, "lower");
        Tolerance.R_SCRIPT.check(number(expected.get("upper")), row.upper() * QUADRAT_HA, "upper");
    }

    private static EstimateRow row(StandEstimate e, Attribute attribute, Basis basis) {
        return e.row(EstimateRow.ALL, EstimateRow.ALL, attribute, basis).orElseThrow();
    }

    private static EstimateSettings settings(FinitePopulation finite, DegreesRule degrees) {
        return new EstimateSettings(
                new PlotDesign.Fixed(QUADRAT_HA), finite, degrees, 0.95, 10, Attribute.BASAL_AREA, 10, "no equation");
    }

    private static List<SampledPlot> plots(double[] ids, List<Stratum> strata) {
        Map<Integer, List<Stem>> stems = new TreeMap<>();
        for (NamedCsvRecord tree : csv("longleaf.csv")) {
            int column = (int) Math.min(7, Math.floor(number(tree, "x_m") / 25));
            int row = (int) Math.min(7, Math.floor(number(tree, "y_m") / 25));
            stems.computeIfAbsent(1 + column + 8 * row, k -> new ArrayList<>())
                    .add(new Stem("longleaf pine", number(tree, "dbh_cm"), Double.NaN));
        }
        List<NamedCsvRecord> quadrats = csv("longleaf-quadrats.csv");
        List<SampledPlot> plots = new ArrayList<>();
        for (double id : ids) {
            String stratum =
                    strata.size() == 1 ? "stand" : quadrats.get((int) id - 1).getField("stratum");
            plots.add(new SampledPlot(String.valueOf((int) id), stratum, stems.getOrDefault((int) id, List.of())));
        }
        return plots;
    }
}
