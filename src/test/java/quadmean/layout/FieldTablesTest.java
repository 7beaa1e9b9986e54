package quadmean.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.design.Design;
import quadmean.support.SmallDesign;
import quadmean.support.Tolerance;
import quadmean.units.AngleScale;
import quadmean.units.DistanceTo;
import quadmean.units.Unit;

class FieldTablesTest {
    private static final double FOOT = Unit.FOOT.convert(1, Unit.METRE);
    private static final double INCH = Unit.INCH.convert(1, Unit.CENTIMETRE);

    @TempDir
    Path folder;

    private FieldTables tables(SmallDesign design) {
        return FieldTables.of(design.valid(folder));
    }

    private static SmallDesign us() {
        return new SmallDesign().with("\"metric\"", "\"us\"");
    }

    private static SmallDesign point(String units, String lines) {
        return new SmallDesign()
                .with("\"metric\"", '"' + units + '"')
                .with("kind = \"fixed\"\narea = 0.1\n", "kind = \"point\"\n" + lines + "\n");
    }

    /** Formulary 6.1: degrees and secants of slopes. */
    @ParameterizedTest
    @CsvSource({
        "5, 2.86, 1.0012",
        "10, 5.71, 1.0050",
        "20, 11.31, 1.0198",
        "30, 16.70, 1.0440",
        "40, 21.80, 1.0770",
        "50, 26.57, 1.1180",
        "60, 30.96, 1.1662",
        "80, 38.66, 1.2806",
        "100, 45.00, 1.4142"
    })
    void slopes(double percent, double degrees, double secant) {
        FieldTables.SlopeLine line = tables(us()).slopes().stream()
                .filter(s -> s.percent() == percent)
                .findFirst()
                .orElseThrow();
        Tolerance.printed(2).check(degrees, line.degrees(), "degrees");
        Tolerance.printed(4).check(secant, line.secant(), "secant");
        Tolerance.printed(2).check(100 * secant, line.tapeM() / FOOT, "ft of tape for 100 ft, from four decimals");
    }

    /** Formulary 4.1 (1/10 acre) and 4.2, r·√(1 + s²) along the line; R 4.2.2: sqrt(4356/pi)*sqrt(1+c(0,.3,.4)^2). */
    @ParameterizedTest
    @CsvSource({"0, 37.24", "30, 38.88", "40, 40.10"})
    void radiusAlongTheLineToTheTree(double percent, double feet) {
        FieldTables tables = tables(us());
        assertEquals(1, tables.circles().size());
        assertNull(tables.strip());
        Tolerance.printed(2).check(feet, tables.circles().get(0).limitsM().get((int) percent / 5) / FOOT, "limit (ft)");
    }

    /** USDA Forest Service, Common Stand Exam field guide, fixed-radius appendix, table 1 (formulary 4.2); slopes inside their classes. */
    @ParameterizedTest
    @CsvSource({"0, 37.2", "25, 37.8", "50, 39.4"})
    void largerRadiusOfTheAgencyTable(double percent, double feet) {
        FieldTables tables = tables(us().with("area = 0.1\n\n", "area = 0.1\non_slope = \"larger_radius\"\n\n"));
        Tolerance.printed(1)
                .check(feet, tables.circles().get(0).limitsM().get((int) percent / 5) / FOOT, "radius (ft)");
    }

    /** Formulary 4.1: 1/300 and 1/20 acre. */
    @Test
    void eachRingHasItsRadius() {
        FieldTables tables = tables(us().with("kind = \"fixed\"\narea = 0.1\n", """
                kind = "nested"
                [[plot.ring]]
                area = 0.00333333333333
                [[plot.ring]]
                min_dbh = 5
                area = 0.05
                """));
        assertEquals(2, tables.circles().size());
        Tolerance.printed(2).check(6.80, tables.circles().get(0).radiusM() / FOOT, "inner (ft)");
        Tolerance.printed(2).check(26.33, tables.circles().get(1).radiusM() / FOOT, "outer (ft)");
        Tolerance.ROUNDING.check(5 * INCH, tables.circles().get(1).minDbhCm(), "dbh (cm)");
    }

    /** By definition: half of a chain is 33 ft; formulary 6.1: times 1.0198 at 20 %. */
    @Test
    void halfTheWidthOfAStrip() {
        FieldTables tables =
                tables(us().with("kind = \"fixed\"\narea = 0.1\n", "kind = \"strip\"\nwidth = 66\nlength = 660\n"));
        FieldTables.StripLine strip = tables.strip();
        assertNotNull(strip);
        Tolerance.ROUNDING.check(33, strip.halfWidthsM().get(0) / FOOT, "level (ft)");
        Tolerance.printed(2).check(33.65, strip.halfWidthsM().get(4) / FOOT, "at 20 % (ft)");
        assertTrue(tables.circles().isEmpty());
    }

    /** Formulary 4.3: 14 in at 20 ft²/ac; both parts of the stem where the design leaves it open. */
    @Test
    void limitsInFeet() {
        FieldTables tables = tables(point("us", "basal_area_factor = 20"));
        List<LimitTable> limits = tables.limits();
        assertEquals(
                List.of(DistanceTo.CENTRE, DistanceTo.FACE),
                limits.stream().map(LimitTable::to).toList());
        double[] printed = {27.22, 26.64};
        for (int i = 0; i < printed.length; i++) {
            LimitTable.Row row = limits.get(i).rows().get(10);
            Tolerance.ROUNDING.check(14 * INCH, row.dbhCm(), "dbh (cm)");
            Tolerance.printed(2).check(printed[i], row.limitsM().get(0) / FOOT, "limit (ft)");
        }
        assertEquals(37, limits.get(0).rows().size(), "4 to 40 in");
    }

    /** Formulary 4.3: 30 cm at 4 m²/ha, 7.500 m to the centre; 4.2 (c): times √(1 + 0.2²) = 1.0198 at 20 %. */
    @Test
    void limitsInMetres() {
        LimitTable table = tables(point("metric", "basal_area_factor = 4\nlimiting_distance = \"centre\""))
                .limits()
                .get(0);
        LimitTable.Row row = table.rows().get(10);
        assertEquals(30, row.dbhCm());
        Tolerance.printed(3).check(7.500, row.limitsM().get(0), "level (m)");
        Tolerance.printed(3).check(7.649, row.limitsM().get(2), "at 20 % (m)");
        Tolerance.printed(5).check(0.25, table.plotRadiusFactor(), "m per cm");
        assertEquals(10, table.rows().get(0).dbhCm());
        assertEquals(100, table.rows().get(table.rows().size() - 1).dbhCm());
    }

    /** Formulary 4.3: 40 ft²/ac, 1.3750 ft per in to the centre. */
    @Test
    void theLargerFactorHasItsOwnTable() {
        List<LimitTable> limits = tables(
                        point("us", "basal_area_factor = 10\nmeasure_factor = 40\nlimiting_distance = \"centre\""))
                .limits();
        assertEquals(
                List.of(LimitTable.Purpose.TALLY, LimitTable.Purpose.MEASURE),
                limits.stream().map(LimitTable::purpose).toList());
        Tolerance.printed(4).check(1.3750, limits.get(1).plotRadiusFactor() * INCH / FOOT, "ft per in");
    }

    /** By definition: the first line is the step at or below the smallest dbh of the tally. */
    @ParameterizedTest
    @CsvSource({"us, 6, 6", "us, 5.5, 5", "us, 0.4, 1", "metric, 7, 6", "metric, 12, 12"})
    void limitsStartAtTheSmallestDbh(String units, double smallest, double first) {
        Design design = point(units, "basal_area_factor = 4")
                .plus("[output]\nsmallest_dbh = " + smallest)
                .valid(folder);
        double cm = FieldTables.of(design).limits().get(0).rows().get(0).dbhCm();
        Tolerance.ROUNDING.check(
                first, Unit.CENTIMETRE.convert(cm, design.units().diameter()), "first dbh");
    }

    /**
     * The topographic scale reads feet at 66 ft and the metric ones metres at their distance, by definition; 45° shows the
     * distance; formulary 6.1 has 110 % at 80 ft within 78.4 ft = 88.0 - 9.6; 25·tan 41° and 30·tan 56° by R 4.2.2.
     */
    @ParameterizedTest
    @CsvSource({
        "us, topo, 66, 99, 99",
        "us, topo, 66, 12, 12",
        "us, percent, 80, 110, 88.0",
        "us, percent, 100, 35, 35",
        "metric, m15, 15, 22, 22",
        "metric, m20, 20, 17, 17",
        "metric, deg, 25, 45, 25",
        "metric, deg, 25, 41, 21.7321684454",
        "metric, deg, 30, 56, 44.4768290554"
    })
    void heightsAboveTheEye(String units, String scale, double distance, double reading, double height) {
        Design design = new SmallDesign()
                .with("\"metric\"", '"' + units + '"')
                .plus("[output]\nsheet_scale = \"" + scale + "\"\nsheet_distances = [" + distance + "]")
                .valid(folder);
        ClinometerTable table = FieldTables.of(design).clinometer();
        double metres = table.rows().stream()
                .filter(r -> r.reading() == reading)
                .findFirst()
                .orElseThrow()
                .heightsM()
                .get(0);
        assertEquals(ClinometerTable.From.DESIGN, table.from());
        Tolerance.R_SCRIPT.check(
                height, Unit.METRE.convert(metres, design.units().length()), "height");
    }

    @Test
    void theScaleComesFromTheTallyOrIsAssumed() {
        assertEquals(ClinometerTable.From.ASSUMED, tables(us()).clinometer().from());
        SmallDesign read = us().with("height = { name = \"height\", unit = \"m\" }", """
                top = { name = "top", unit = "topo" }
                base = { name = "base", unit = "topo" }
                distance = { name = "dist", unit = "ft" }""");
        ClinometerTable table = tables(read).clinometer();
        assertEquals(ClinometerTable.From.TALLY, table.from());
        assertEquals(AngleScale.TOPOGRAPHIC, table.scale());
    }

    /** Percent readings by definition: 60 % and 5 % of 100 ft. */
    @Test
    void examplesAddUp() {
        List<SightingExample> examples = tables(us()).examples();
        Tolerance.ROUNDING.check(65, examples.get(0).heightM() / FOOT, "base below the eye (ft)");
        Tolerance.ROUNDING.check(60, examples.get(1).heightM() / FOOT, "base above the eye (ft)");
        assertTrue(examples.get(0).baseM() < 0 && examples.get(1).baseM() > 0);
    }

    /** Formulary 6.2, with these errors: the best distance lies between 0.88 and 1.11 heights; 25 m: 0.25 m at the best. */
    @Test
    void whereToStand() {
        List<StandingPlace> places = tables(new SmallDesign()).standing();
        assertEquals(5, places.size());
        for (StandingPlace p : places) {
            if (p.heightM() >= 15 && p.heightM() <= 40) {
                assertTrue(p.bestM() > 0.88 * p.heightM() && p.bestM() < 1.11 * p.heightM(), p.toString());
            }
            assertTrue(p.nearestM() < p.bestM() && p.bestM() < p.farthestM(), p.toString());
        }
        StandingPlace middle = places.get(2);
        assertEquals(25, middle.heightM());
        Tolerance.printed(2).check(0.25, middle.heightSdM(), "sd (m)");
    }

    /** Definition: each of the five starts is as likely; chi-square of 4 degrees of freedom, 0.1 % point 18.47 (R qchisq). */
    @Test
    void theFirstTreeIsDrawnWithTheSeed() {
        int seeds = 1000;
        int[] counts = new int[5];
        for (int seed = 1; seed <= seeds; seed++) {
            HeightSubsample some =
                    tables(us().with("units =", "seed = " + seed + "\nunits =")).heights();
            assertEquals(5, some.every());
            counts[some.first() - 1]++;
        }
        double chi = 0;
        for (int count : counts) {
            chi += (count - seeds / 5.0) * (count - seeds / 5.0) / (seeds / 5.0);
        }
        assertTrue(chi < 18.47, "chi-square " + chi);
    }
}
