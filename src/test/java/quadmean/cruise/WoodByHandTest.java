package quadmean.cruise;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.Part;
import quadmean.support.SmallWoodlot;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.UnitSystem;

/**
 * The wood of {@link SmallWoodlot} worked out by hand from the definitions: cones, Smalian (B + b)/2·L, Doyle
 * (d - 4)²·L/16, International 1/4-inch as 0.905·Σ(0.22·d² - 0.71·d) over 4-ft sections widening by half an inch, rounded
 * to fives. Stump and trim are half a foot, so that large ends lie at 0.5, 17, 33.5 and 50 ft; diameters in inches:
 *
 * <pre>
 * tree   log  product  large  small   D²+d²/2·L   Doyle       International
 * 1-1    1    SAW      20.8   17.6    5939.20     18: 196     230
 *        2    SAW      17.5   14.3    4085.92     14: 100     135
 *        3    SAW      14.2   11.0    2581.12     11:  49      80
 *        4-7  PULP     10.9, 9.2, 7.5, 5.8 to 9.3, 7.6, 5.9, 4.2: 821.20 + 569.60 + 364.24 + 205.12 = 1960.16
 * 1-2    1-4  PULP     10.8, 9.1, 7.4, 5.7 to 9.2, 7.5, 5.8, 4.1: 805.12 + 556.24 + 353.60 + 197.20 = 1912.16
 * 2-1    1    SAW      16.8   13.6    3737.60     14: 100     135
 *        2    SAW      13.5   10.3    2306.72     10:  36      65
 *        3-5  PULP     10.2, 8.5, 6.8 to 8.6, 6.9, 5.2: 712.00 + 479.44 + 293.12 = 1484.56
 * </pre>
 *
 * Cubic feet are π/576 of these sums. Sawlogs lose 5 % to hidden defect, tree 1-1 another 10 %: 0.9·0.95 is left.
 */
class WoodByHandTest {
    /** Square inches times feet to cubic feet, and a tree of a plot to trees an acre. */
    private static final double K = Math.PI / 576 * 10;

    private static final double LB_PER_TON = 2000;
    private static final double KG_PER_TON = 2000 * 0.45359237;

    @TempDir
    private Path folder;

    /**
     * What an acre has by each of the two plots.
     *
     * @param first by plot 1
     * @param second by plot 2
     */
    record Acre(Attribute attribute, String species, Part part, double first, double second) {}

    private static Acre all(Attribute attribute, double first, double second) {
        return new Acre(attribute, "*", Part.ALL, first, second);
    }

    static Stream<Acre> acres() {
        Part saw = Part.ofProduct("SAW");
        Part pulp = Part.ofProduct("PULP");
        double pulp1 = (0.9 * 1960.16 + 1912.16) * K * 50 / LB_PER_TON * 10;
        double pulp2 = 1484.56 * K * 50 / LB_PER_TON * 10;
        double saw1 = 0.855 * 345 * 10 * 0.5;
        double saw2 = 0.95 * 136 * 10 * 0.5;
        return Stream.of(
                all(Attribute.VOLUME, 836 + 109, 432.64),
                all(Attribute.LOG_VOLUME, (12606.24 + 1960.16 + 1912.16) * K, (6044.32 + 1484.56) * K),
                all(
                        Attribute.NET_LOG_VOLUME,
                        (0.855 * 12606.24 + 0.9 * 1960.16 + 1912.16) * K,
                        (0.95 * 6044.32 + 1484.56) * K),
                all(Attribute.BOARD_FEET, 3450, 1360),
                all(Attribute.NET_BOARD_FEET, 0.855 * 3450, 0.95 * 1360),
                all(Attribute.VALUE, saw1 + pulp1, saw2 + pulp2),
                all(Attribute.GREEN_WEIGHT, 945 * 50 / LB_PER_TON, 432.64 * 50 / LB_PER_TON),
                all(
                        Attribute.BIOMASS,
                        (50.8 * 50.8 + 25.4 * 25.4) * 0.1 * 10 / KG_PER_TON,
                        40.64 * 40.64 * 0.1 * 10 / KG_PER_TON),
                all(
                        Attribute.CARBON,
                        (50.8 * 50.8 + 25.4 * 25.4) * 0.05 * 10 / KG_PER_TON,
                        40.64 * 40.64 * 0.05 * 10 / KG_PER_TON),
                new Acre(Attribute.LOG_VOLUME, "*", saw, 12606.24 * K, 6044.32 * K),
                new Acre(Attribute.NET_LOG_VOLUME, "*", saw, 0.855 * 12606.24 * K, 0.95 * 6044.32 * K),
                new Acre(Attribute.VALUE, "*", saw, saw1, saw2),
                new Acre(Attribute.VALUE, "*", pulp, pulp1, pulp2),
                new Acre(Attribute.BOARD_FEET, "*", pulp, 0, 0),
                new Acre(Attribute.LOG_VOLUME, "PSME", pulp, 1960.16 * K, 1484.56 * K),
                new Acre(Attribute.LOG_VOLUME, "ABGR", pulp, 1912.16 * K, 0),
                new Acre(Attribute.LOG_VOLUME, "ABGR", Part.ALL, 1912.16 * K, 0),
                new Acre(Attribute.NET_BOARD_FEET, "*", Part.ofLog(1), 0.855 * 1960, 0.95 * 1000),
                new Acre(Attribute.LOG_VOLUME, "*", Part.ofLog(1), (5939.2 + 805.12) * K, 3737.6 * K),
                new Acre(Attribute.LOG_VOLUME, "*", Part.ofLog(7), 205.12 * K, 0));
    }

    /** Two plots: the mean is theirs, its standard error half their difference. */
    @ParameterizedTest
    @MethodSource("acres")
    void meansTotalsAndErrorsAreThoseOfTheTwoPlots(Acre acre) {
        CruiseResult result = new SmallWoodlot().run(folder);
        double mean = (acre.first + acre.second) / 2;
        double se = Math.abs(acre.first - acre.second) / 2;
        EstimateRow perAcre = row(result, acre, Basis.PER_AREA);
        EstimateRow total = row(result, acre, Basis.TOTAL);
        Tolerance.ROUNDING.check(mean, perAcre.in(UnitSystem.US, perAcre.mean()), "mean an acre");
        Tolerance.ROUNDING.check(se, perAcre.in(UnitSystem.US, perAcre.se()), "its error");
        Tolerance.ROUNDING.check(40 * mean, total.in(UnitSystem.US, total.mean()), "total");
        Tolerance.ROUNDING.check(40 * se, total.in(UnitSystem.US, total.se()), "its error");
    }

    @ParameterizedTest
    @CsvSource({"doyle, 345, 136", "international_quarter, 445, 200"})
    void boardFeetFollowTheRule(String rule, double first, double second) {
        CruiseResult result = new SmallWoodlot().with("doyle", rule).run(folder);
        assertEquals(first, result.wood().get(0).boardFeet(), 1e-9);
        assertEquals(0, result.wood().get(1).boardFeet());
        assertEquals(second, result.wood().get(2).boardFeet(), 1e-9);
    }

    @Test
    void logsLieWhereStumpAndTrimPutThem() {
        var logs = new SmallWoodlot().run(folder).wood().get(0).logs();
        double[] feet = {0.5, 17, 33.5, 50, 58.5, 67, 75.5};
        assertEquals(feet.length, logs.size());
        for (int i = 0; i < feet.length; i++) {
            assertEquals(i + 1, logs.get(i).number());
            assertEquals(i < 3 ? "SAW" : "PULP", logs.get(i).product());
            assertEquals(feet[i] * 0.3048, logs.get(i).fromM(), 1e-9);
            assertEquals((i < 3 ? 16 : 8) * 0.3048, logs.get(i).lengthM(), 1e-12);
        }
    }

    private static EstimateRow row(CruiseResult result, Acre acre, Basis basis) {
        return result.estimate().rows().stream()
                .filter(r -> r.stratum().equals("*")
                        && r.species().equals(acre.species)
                        && r.part().equals(acre.part)
                        && r.attribute() == acre.attribute
                        && r.basis() == basis)
                .findFirst()
                .orElseThrow();
    }
}
