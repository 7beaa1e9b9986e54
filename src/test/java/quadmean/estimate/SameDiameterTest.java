package quadmean.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.ShippedCruises;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/** The quadratic mean diameter stands in two tables, and is one number there, under every sampling design. */
class SameDiameterTest {
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
        StandStatistic statistic = e.structure().statistics().stream()
                .filter(s -> s.stratum().equals(EstimateRow.ALL) && s.statistic() == Statistic.QUADRATIC_MEAN_DIAMETER)
                .findFirst()
                .orElseThrow();
        assertEquals(row.mean(), statistic.value());
        assertEquals(row.se(), statistic.se());
    }
}
