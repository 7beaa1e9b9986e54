package quadmean.units;

import org.junit.jupiter.api.Test;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

class BasalAreaTest {

    /** Avery & Burkhart 1994, p. 290, in a SUNY-ESF note: worked-examples.json qmd-constant-0.005454. */
    @Test
    void oneInchOfDbhIsTheConstantOfTheTradeInSquareFeet() {
        double oneInch = BasalArea.ofTree(Unit.INCH.convert(1, Unit.CENTIMETRE));
        double squareFeet = Unit.SQUARE_METRE.convert(oneInch, Unit.SQUARE_FOOT);
        double printed = ReferenceFiles.number(
                ReferenceFiles.example("qmd-constant-0.005454").get("published").get("constant"));
        Tolerance.printed(6).check(printed, squareFeet, "ft² per in²");
        // π/4/144 by definition
        Tolerance.ROUNDING.check(Math.PI / 576, squareFeet, "ft² per in²");
    }

    /** conversions.csv, "BA constant cm->m2", and by definition of the circle. */
    @Test
    void metricConstantIsTheOneInTheTable() {
        Tolerance.ROUNDING.check(7.853981633974483e-05, BasalArea.M2_PER_CM2, "m² per cm²");
        // a stem of 1 m: π/4 m²
        Tolerance.ROUNDING.check(Math.PI / 4, BasalArea.ofTree(100), "basal area of dbh 100 cm");
    }

    /** dbh 10, 20 and 30 cm: √(1400/3) = 21.6025, by the definition of the quadratic mean. */
    @Test
    void quadraticMeanDiameterOfThreeStems() {
        double sum = BasalArea.ofTree(10) + BasalArea.ofTree(20) + BasalArea.ofTree(30);
        double qmd = BasalArea.quadraticMeanDiameter(sum, 3);
        Tolerance.printed(4).check(21.6025, qmd, "quadratic mean diameter (cm)");
        Tolerance.ROUNDING.check(Math.sqrt(1400 / 3.0), qmd, "quadratic mean diameter (cm)");
    }

    /** idaho-points-1-72.json: basal area and stems per hectare and their quadratic mean diameter, by idaho.R. */
    @Test
    void quadraticMeanDiameterOfARealStand() {
        var idaho = ReferenceFiles.json("idaho-points-1-72.json");
        double basalArea = ReferenceFiles.number(idaho.get("basal_area_m2_ha").get("mean"));
        double stems = ReferenceFiles.number(idaho.get("stems_ha").get("mean"));
        double expected = ReferenceFiles.number(idaho.get("qmd_cm"));
        Tolerance.R_SCRIPT.check(expected, BasalArea.quadraticMeanDiameter(basalArea, stems), "qmd (cm)");
    }
}
