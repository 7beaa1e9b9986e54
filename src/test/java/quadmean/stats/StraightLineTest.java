package quadmean.stats;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.number;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

class StraightLineTest {

    /** idaho-mixed-naslund.json, {@code ols}: R lm of d/√(h - 1.3) on d, script idaho.R, ten digits. */
    @ParameterizedTest
    @ValueSource(strings = {"DF", "GF"})
    void linearNaslundFormOfTheIdahoHeights(String species) {
        var ols = ReferenceFiles.json("idaho-mixed-naslund.json").get(species).get("ols");
        var rows = ReferenceFiles.csv("idaho-heights.csv").stream()
                .filter(r -> r.getField("species").equals(species))
                .toList();
        double[] d = rows.stream().mapToDouble(r -> number(r, "dbh_cm")).toArray();
        double[] y = rows.stream()
                .mapToDouble(r -> number(r, "dbh_cm") / Math.sqrt(number(r, "height_m") - 1.3))
                .toArray();
        StraightLine line = StraightLine.through(d, y);
        Tolerance.R_SCRIPT.check(number(ols.get("(Intercept)")), line.intercept(), "intercept");
        Tolerance.R_SCRIPT.check(number(ols.get("dbh_cm")), line.slope(), "slope");
    }

    @Test
    void equalPredictorsHaveNoSlope() {
        assertTrue(Double.isNaN(
                StraightLine.through(new double[] {2, 2}, new double[] {1, 5}).slope()));
    }

    @Test
    void onePointIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> StraightLine.through(new double[] {1}, new double[] {1}));
    }
}
