package quadmean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import quadmean.design.EquationLibrary;
import quadmean.estimate.StandStatistic;
import quadmean.estimate.Statistic;
import quadmean.measure.FixedPlot;
import quadmean.measure.PointGauge;
import quadmean.measure.Slope;
import quadmean.model.BiomassSpec;
import quadmean.model.LogRule;
import quadmean.model.Scaling.Figures;
import quadmean.support.ShippedCruises;
import quadmean.support.Tolerance;
import quadmean.units.AngleScale;
import quadmean.units.DistanceTo;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;
import quadmean.volume.BiomassEquation;
import quadmean.volume.BoardFootRule;

/** Where tables and formulas of the trade are mixed up, one test each; values from the formulary and its sources. */
class KnownTrapsTest {
    @Test
    void breastHeightIsNotTheSameInBothSystems() {
        double us = Unit.FOOT.convert(UnitSystem.US.breastHeight(), Unit.METRE);
        Tolerance.ROUNDING.check(1.3716, us, "4.5 ft in m (by definition)");
        assertEquals(1.3, UnitSystem.METRIC.breastHeight());
    }

    /** 1/10 acre on 50 %: 39.4 ft in the agency's slope table (Common Stand Exam guide), where the other rule gives 41.6. */
    @Test
    void aCircleLaidOnASlopeGrowsByTheFourthRoot() {
        FixedPlot plot = FixedPlot.ofArea(Unit.ACRE.convert(0.1, Unit.HECTARE));
        Slope half = Slope.of(AngleScale.PERCENT, 50);
        double radius = Unit.METRE.convert(plot.radiusOnSlope(half), Unit.FOOT);
        Tolerance.printed(1).check(39.4, radius, "radius (ft)");
        double alongFallLine = Unit.METRE.convert(plot.lengthAlongFallLine(half), Unit.FOOT);
        Tolerance.printed(1).check(41.6, alongFallLine, "length along the fall line (ft)");
    }

    /** Factor 40 ft²/ac: 1.375 ft/in to the centre, 1.3333 to the face (Iles); mixed up, the factor is off by 6 %. */
    @Test
    void limitingDistancesReachTheCentreOrTheFace() {
        PointGauge gauge = new PointGauge(Unit.SQUARE_FEET_PER_ACRE.convert(40, Unit.SQUARE_METRES_PER_HECTARE));
        double centre = gauge.limitingDistance(2.54, DistanceTo.CENTRE);
        double face = gauge.limitingDistance(2.54, DistanceTo.FACE);
        Tolerance.printed(3).check(1.375, Unit.METRE.convert(centre, Unit.FOOT), "ft to the centre of 1 in");
        Tolerance.printed(4).check(1.3333, Unit.METRE.convert(face, Unit.FOOT), "ft to the face of 1 in");
        Tolerance.printed(2).check(1.06, Math.pow(centre / face, 2), "factor by the wrong one over the right one");
    }

    /** Statutes of Michigan and Massachusetts: 0.904762 of 0.22·D² - 0.71·D for a section of 4 ft. */
    @Test
    void theInternationalRuleHasAQuarterAndAnEighthOfAnInch() {
        double eighth = board(LogRule.INTERNATIONAL_EIGHTH, 20, 4);
        Tolerance.ROUNDING.check(0.22 * 400 - 0.71 * 20, eighth, "1/8-inch");
        Tolerance.ROUNDING.check(0.904762 * eighth, board(LogRule.INTERNATIONAL_QUARTER, 20, 4), "1/4-inch");
    }

    /** 12 in, 16 ft: the formula gives 86, to tens 90; the table 80 (from memory). */
    @Test
    void decimalCIsNotTheScribnerFormulaInTens() {
        assertEquals(86, Math.round(board(LogRule.SCRIBNER_FORMULA, 12, 16)));
        assertEquals(80, board(LogRule.SCRIBNER_DECIMAL_C, 12, 16));
    }

    /** 6 in, 8 ft: 0.5 in the column of tens, 5 board feet (Bailey, Farm and Garden Rule-Book). */
    @Test
    void theColumnOfDecimalCCountsTens() {
        assertEquals(5, board(LogRule.SCRIBNER_DECIMAL_C, 6, 8));
    }

    @Test
    void densityIndicesHaveUnits() {
        StandStatistic sdi = statistic(Statistic.SDI_REINEKE);
        Tolerance.printed(3)
                .check(2.471, sdi.value() / sdi.in(UnitSystem.US, sdi.value()), "SDI, metric over imperial");
        StandStatistic density = statistic(Statistic.RELATIVE_DENSITY);
        Tolerance.printed(3)
                .check(
                        6.942,
                        density.in(UnitSystem.US, density.value()) / density.value(),
                        "Curtis, imperial over metric");
    }

    /** Douglas-fir of 20 cm: 162.34 kg (coefficients from memory); a dbh in inches would be taken for a sapling. */
    @Test
    void biomassTakesDbhInCentimetresAndNoHeight() {
        BiomassSpec spec = (BiomassSpec) EquationLibrary.shipped()
                .find("jenkins-2003/douglas-fir")
                .orElseThrow()
                .equation();
        BiomassEquation equation = BiomassEquation.of(spec);
        Tolerance.printed(2).check(162.34, equation.dryKg(20), "kg");
        assertTrue(equation.dryKg(20 / 2.54) < 20, "kg by inches");
    }

    @Test
    void meanLoreyAndTopHeightDiffer() {
        double mean = statistic(Statistic.MEAN_HEIGHT).value();
        double lorey = statistic(Statistic.LOREY_HEIGHT).value();
        double top = statistic(Statistic.TOP_HEIGHT).value();
        assertTrue(mean + 1 < lorey && lorey + 1 < top, mean + ", " + lorey + ", " + top);
    }

    private static double board(LogRule rule, double inches, double feet) {
        return BoardFootRule.of(rule).figure(inches, feet, Figures.UNROUNDED).boardFeet();
    }

    private static StandStatistic statistic(Statistic statistic) {
        return Objects.requireNonNull(ShippedCruises.run("demo").result())
                .estimate()
                .structure()
                .statistic("*", statistic)
                .orElseThrow();
    }
}
