package quadmean.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;
import quadmean.units.DistanceTo;
import quadmean.units.Unit;

class PointGaugeTest {
    private static final double FOOT = Unit.FOOT.convert(1, Unit.METRE);
    private static final double INCH_CM = Unit.INCH.convert(1, Unit.CENTIMETRE);
    private static final double FEET_PER_INCH = INCH_CM / FOOT;

    /** Formulary 4.3: factor (ft²/ac), plot radius factor to centre and face (ft per in), angle (minutes). */
    @ParameterizedTest
    @CsvSource({
        "5, 3.8891, 3.8474, 73.66",
        "10, 2.7500, 2.7083, 104.18",
        "20, 1.9445, 1.9029, 147.34",
        "40, 1.3750, 1.3333, 208.38"
    })
    void plotRadiusFactorsInFeetPerInch(double factor, double centre, double face, double minutes) {
        PointGauge gauge = us(factor);
        Tolerance.printed(4).check(centre, gauge.plotRadiusFactor(DistanceTo.CENTRE) * FEET_PER_INCH, "centre");
        Tolerance.printed(4).check(face, gauge.plotRadiusFactor(DistanceTo.FACE) * FEET_PER_INCH, "face");
        Tolerance.printed(2).check(minutes, 60 * Math.toDegrees(gauge.angle()), "angle (min)");
    }

    /** Formulary 4.3: factor (m²/ha), metres per cm to the centre, angle (minutes). */
    @ParameterizedTest
    @CsvSource({"1, 0.5, 68.76", "2, 0.35355, 97.24", "4, 0.25, 137.52", "8, 0.17678, 194.49"})
    void plotRadiusFactorsInMetresPerCentimetre(double factor, double centre, double minutes) {
        PointGauge gauge = new PointGauge(factor);
        Tolerance.printed(5).check(centre, gauge.plotRadiusFactor(DistanceTo.CENTRE), "centre");
        Tolerance.printed(2).check(minutes, 60 * Math.toDegrees(gauge.angle()), "angle (min)");
    }

    /** General reference entry 'Borderline tree' (factors 5, 10, 20) and Iles, on plot radius factors (40). */
    @Test
    void publishedPlotRadiusFactors() {
        JsonNode published = ReferenceFiles.example("prf-table").get("published");
        // the entry prints 0.33 with two decimals; it is exact
        for (int factor : new int[] {5, 10, 20}) {
            JsonNode printed = published.get(Integer.toString(factor));
            double metric = us(factor).plotRadiusFactor(DistanceTo.CENTRE);
            Tolerance.printed(3).check(ReferenceFiles.number(printed.get("m_per_cm")), metric, factor + ", m/cm");
            Tolerance.printed(2)
                    .check(ReferenceFiles.number(printed.get("ft_per_in")), metric * FEET_PER_INCH, factor + ", ft/in");
        }
        JsonNode forty = published.get("40");
        double centre = us(40).plotRadiusFactor(DistanceTo.CENTRE) * FEET_PER_INCH;
        double face = us(40).plotRadiusFactor(DistanceTo.FACE) * FEET_PER_INCH;
        Tolerance.printed(3).check(ReferenceFiles.number(forty.get("centre")), centre, "40, centre");
        Tolerance.printed(4).check(ReferenceFiles.number(forty.get("face")), face, "40, face");
    }

    /** 'Point sampling or variable plot cruising' lecture (Kentucky), slides 13-14: constant over √factor. */
    @Test
    void publishedConstant() {
        double printed = ReferenceFiles.number(ReferenceFiles.example("prf-constant-fifth-acre")
                .get("published")
                .get("constant"));
        double constant = us(1).plotRadiusFactor(DistanceTo.CENTRE) * FEET_PER_INCH;
        Tolerance.printed(3).check(printed, constant, "constant (ft per in)");
    }

    /** Formulary 4.3: 14 in at 20 ft²/ac, 30 cm at 4 m²/ha. */
    @Test
    void limitingDistances() {
        double dbh = 14 * INCH_CM;
        Tolerance.printed(2).check(27.22, us(20).limitingDistance(dbh, DistanceTo.CENTRE) / FOOT, "centre (ft)");
        Tolerance.printed(2).check(26.64, us(20).limitingDistance(dbh, DistanceTo.FACE) / FOOT, "face (ft)");
        Tolerance.printed(3).check(7.500, new PointGauge(4).limitingDistance(30, DistanceTo.CENTRE), "centre (m)");
        Tolerance.printed(3).check(7.350, new PointGauge(4).limitingDistance(30, DistanceTo.FACE), "face (m)");
    }

    /** Formulary, traps, 3: mixing centre and face changes the factor by about 6 % at 40 and 3 % at 10 ft²/ac. */
    @ParameterizedTest
    @CsvSource({"40, 6", "10, 3"})
    void mixingCentreAndFaceChangesTheFactor(double factor, double percent) {
        double share =
                us(factor).plotRadiusFactor(DistanceTo.CENTRE) / us(factor).plotRadiusFactor(DistanceTo.FACE);
        Tolerance.printed(0).check(percent, 100 * (share * share - 1), "change of the factor (%)");
    }

    /** Formulary 4.2 (c): along the line to the tree, √(1 + s²). */
    @ParameterizedTest
    @EnumSource(DistanceTo.class)
    void onASlopeTheLimitGrowsAlongTheLine(DistanceTo to) {
        PointGauge gauge = new PointGauge(4);
        double level = gauge.limitingDistance(30, to);
        Tolerance.ROUNDING.check(level * 1.25, gauge.limitingDistance(30, to, new Slope(0.75)), "limit (m)");
        Tolerance.ROUNDING.check(level, gauge.limitingDistance(30, to, Slope.LEVEL), "limit (m)");
    }

    /** A tenth of an inch of dbh at 20 ft²/ac is 0.19 ft (formulary 4.3: a tenth of 1.9445 ft per in). */
    @Test
    void aTenthOfAnInchMovesTheLimit() {
        BorderlineErrors dbhOnly = new BorderlineErrors(0, 0.1 * INCH_CM, 0);
        BorderlineTree tree = new BorderlineTree(us(20), 14 * INCH_CM, 8, DistanceTo.CENTRE, Slope.LEVEL);
        Tolerance.printed(2).check(0.19, tree.marginSd(dbhOnly) / FOOT, "sd of the margin (ft)");
    }

    /** Limits of 27.22 ft to the centre and 26.64 ft to the face, as above. */
    @ParameterizedTest
    @CsvSource({"CENTRE, 27.2, IN", "CENTRE, 27.3, OUT", "FACE, 26.6, IN", "FACE, 26.7, OUT"})
    void inAndOut(DistanceTo to, double feet, BorderlineTree.Verdict verdict) {
        BorderlineTree tree = new BorderlineTree(us(20), 14 * INCH_CM, feet * FOOT, to, Slope.LEVEL);
        assertEquals(verdict, tree.verdict());
        assertEquals(verdict == BorderlineTree.Verdict.IN, tree.margin() > 0);
    }

    /** A tree at the limit is in: common practice, no source. 4 m²/ha and 30 cm give 7.5 m exactly. */
    @Test
    void atTheLimitIsIn() {
        BorderlineTree tree = new BorderlineTree(new PointGauge(4), 30, 7.5, DistanceTo.CENTRE, Slope.LEVEL);
        assertEquals(0, tree.margin());
        assertEquals(BorderlineTree.Verdict.IN, tree.verdict());
    }

    /** 10 ft²/ac give 2.75 ft per in exactly: each whole inch ties at a distance that metres cannot hold exactly. */
    @Test
    void tiesSurviveTheConversionOfUnits() {
        for (int inches = 1; inches <= 60; inches++) {
            double limit = 2.75 * inches * FOOT;
            BorderlineTree tree = new BorderlineTree(us(10), inches * INCH_CM, limit, DistanceTo.CENTRE, Slope.LEVEL);
            assertEquals(BorderlineTree.Verdict.IN, tree.verdict(), inches + " in");
            BorderlineTree beyond =
                    new BorderlineTree(us(10), inches * INCH_CM, limit + 1e-6, DistanceTo.CENTRE, Slope.LEVEL);
            assertEquals(BorderlineTree.Verdict.OUT, beyond.verdict(), inches + " in");
        }
    }

    /** The error of the margin by formula against its spread over fixed random errors. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.2, -0.6})
    void theMarginErrorAgreesWithSimulation(double slope) {
        int n = 40_000;
        BorderlineErrors errors = BorderlineErrors.commonPractice();
        SplittableRandom random = new SplittableRandom(43);
        double squares = 0;
        double sum = 0;
        double exact = tree(30, 7.4, slope).margin();
        for (int i = 0; i < n; i++) {
            double angle = Math.atan(slope) + errors.slopeSd() * random.nextGaussian();
            double off = tree(
                                    30 + errors.dbhSd() * random.nextGaussian(),
                                    7.4 + errors.distanceSd() * random.nextGaussian(),
                                    Math.tan(angle))
                            .margin()
                    - exact;
            sum += off;
            squares += off * off;
        }
        double simulated = Math.sqrt((squares - sum * sum / n) / (n - 1));
        Tolerance.relative("four Monte Carlo errors", 4 / Math.sqrt(2.0 * n))
                .check(tree(30, 7.4, slope).marginSd(errors), simulated, "sd of the margin (m)");
    }

    @Test
    void defaultErrorsCanBeChanged() {
        assertEquals(new BorderlineErrors(0.03, 0.254, Math.toRadians(0.5)), BorderlineErrors.commonPractice());
        BorderlineErrors changed = BorderlineErrors.commonPractice()
                .withDistanceSd(0.1)
                .withDbhSd(0.5)
                .withSlopeSd(0.02);
        assertEquals(new BorderlineErrors(0.1, 0.5, 0.02), changed);
        assertThrows(IllegalArgumentException.class, () -> changed.withDbhSd(-1));
    }

    @Test
    void sizesAreAboveZero() {
        assertThrows(IllegalArgumentException.class, () -> new PointGauge(0));
        assertThrows(IllegalArgumentException.class, () -> us(20).limitingDistance(-1, DistanceTo.CENTRE));
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> tree(30, Double.NaN, 0));
        assertTrue(e.getMessage().contains("distance"), e.getMessage());
    }

    private static BorderlineTree tree(double dbh, double distance, double slope) {
        return new BorderlineTree(new PointGauge(4), dbh, distance, DistanceTo.CENTRE, new Slope(slope));
    }

    private static PointGauge us(double factor) {
        return new PointGauge(Unit.SQUARE_FEET_PER_ACRE.convert(factor, Unit.SQUARE_METRES_PER_HECTARE));
    }
}
