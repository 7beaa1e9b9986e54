package quadmean.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.ShippedCruises;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/** Stand statistics under sampling designs other than plain plots. */
class StatisticsOfDesignsTest {
    /** statistics-designs.json: clusters, two stages and post-strata by R's survey, with finite population correction. */
    @ParameterizedTest
    @CsvSource({"cluster", "two-stage", "post-stratified"})
    void errorsAsInR(String design) {
        JsonNode all = ReferenceFiles.json("statistics-designs.json").get(design);
        assertEquals(5, all.size());
        all.properties().forEach(expected -> {
            StandStatistic s = statistic(design, Statistic.valueOf(expected.getKey()));
            double value = expected.getValue().get("value").asDouble();
            double se = expected.getValue().get("se").asDouble();
            Tolerance.R_SCRIPT.check(value, s.value(), expected.getKey());
            Tolerance.R_SCRIPT.check(se, s.se(), "error of " + expected.getKey());
        });
    }

    /** The quadratic mean diameter stands in two tables, and is one number there. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "demo",
                "idaho-points",
                "cluster",
                "complete",
                "count-points",
                "double-sampling",
                "double-stratified",
                "half-sweep",
                "point-3p",
                "post-stratified",
                "ratio",
                "regression",
                "stratified",
                "strip",
                "systematic",
                "threep",
                "two-factors",
                "two-stage",
                "unequal-probability"
            })
    void theRowAndTheStatisticAgree(String design) {
        StandEstimate e =
                Objects.requireNonNull(ShippedCruises.run(design).result()).estimate();
        EstimateRow row = e.row(EstimateRow.ALL, EstimateRow.ALL, Attribute.QUADRATIC_MEAN_DIAMETER, Basis.RATIO)
                .orElseThrow();
        StandStatistic statistic = statistic(design, Statistic.QUADRATIC_MEAN_DIAMETER);
        assertEquals(row.mean(), statistic.value());
        assertEquals(row.se(), statistic.se());
    }

    private static StandStatistic statistic(String design, Statistic wanted) {
        return Objects.requireNonNull(ShippedCruises.run(design).result()).estimate().structure().statistics().stream()
                .filter(s -> s.stratum().equals(EstimateRow.ALL) && s.statistic() == wanted)
                .findFirst()
                .orElseThrow();
    }
}
