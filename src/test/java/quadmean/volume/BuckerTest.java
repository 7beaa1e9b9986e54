package quadmean.volume;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.model.CubicRule;
import quadmean.model.LogRule;
import quadmean.model.LogSettings;
import quadmean.model.LogSettings.Method;
import quadmean.model.Price;
import quadmean.model.Price.PriceUnit;
import quadmean.model.PriceList;
import quadmean.model.Product;
import quadmean.model.Provenance;
import quadmean.model.Scaling;
import quadmean.model.Standing;
import quadmean.support.Tolerance;

class BuckerTest {
    private static final Scaling DOYLE =
            new Scaling(LogRule.DOYLE, Scaling.Diameters.AS_IS, Scaling.Lengths.AS_IS, Scaling.Figures.UNROUNDED, 6);

    /** Smalian's volume, and a log rule of the test's own: ten board feet a metre. */
    static final LogMeasure MEASURE = new LogMeasure() {
        @Override
        public double cubicMetres(double largeEndCm, double middleCm, double smallEndCm, double lengthM) {
            return Math.PI / 40_000 * (largeEndCm * largeEndCm + smallEndCm * smallEndCm) / 2 * lengthM;
        }

        @Override
        public double boardFeet(double smallEndCm, double largeEndCm, double lengthM) {
            return 10 * lengthM;
        }
    };

    static Product product(String code, double minCm, double maxCm, Double... lengths) {
        return new Product(code, code, Set.of(), Set.of(), List.of(lengths), minCm, maxCm, 0);
    }

    private static final Product SAW = product("saw", 24, Double.POSITIVE_INFINITY, 5.0, 4.0);
    private static final Product PULP = product("pulp", 8, Double.POSITIVE_INFINITY, 3.0);

    static PriceList prices(Price... prices) {
        return new PriceList("USD", "", List.of(prices), new Provenance("test", Standing.INVENTED));
    }

    private static final PriceList PER_CUBIC_METRE =
            prices(new Price("saw", "*", 60, PriceUnit.CUBIC_METRE), new Price("pulp", "*", 25, PriceUnit.CUBIC_METRE));

    static LogSettings settings(Method method, double wasteStepM, Product... products) {
        return new LogSettings(method, Optional.empty(), CubicRule.SMALIAN, 0.3, 0.1, wasteStepM, List.of(products));
    }

    /** A cone, 40 cm at 1.3 m and 31.3 m high, with a tenth of defect. */
    private static StemToCut cone(double topM) {
        return new StemToCut(new OrmerodProfile(40, 1, 31.3, 1.3), "DF", "firs", "", topM, 0.1, 800);
    }

    private static Bucked buck(LogSettings settings, double topM) {
        return Bucker.of(settings, Optional.of(PER_CUBIC_METRE), MEASURE).buck(cone(topM));
    }

    private static String cuts(Bucked bucked) {
        return bucked.logs().stream()
                .map(l -> l.product() + Math.round(l.lengthM()))
                .collect(Collectors.joining(" "));
    }

    private static double value(Bucked bucked) {
        return bucked.logs().stream().mapToDouble(CutLog::value).sum();
    }

    /** Lists and values of both methods: R, src/test/resources/reference/stems.R. */
    @Test
    void theConeIsCutAsInR() {
        Bucked byLengths = buck(settings(Method.LENGTHS, 0.3, SAW, PULP), 31.3);
        assertEquals("saw5 saw5 pulp3 pulp3 pulp3 pulp3", cuts(byLengths));
        Tolerance.R_SCRIPT.check(60.3636293875765, value(byLengths), "value by lengths");
        CutLog second = byLengths.logs().get(1);
        assertEquals(2, second.number());
        Tolerance.ROUNDING.check(5.4, second.fromM(), "large end above ground (m)");
        Tolerance.R_SCRIPT.check(34.5333333333333, second.largeEndCm(), "large end (cm)");
        Tolerance.R_SCRIPT.check(27.8666666666667, second.smallEndCm(), "small end, trim beyond it (cm)");
        Tolerance.R_SCRIPT.check(0.386632317218792, second.cubicM3(), "gross (m³)");
        Tolerance.R_SCRIPT.check(0.386632317218792 * 0.9, second.netM3(), "net (m³)");
        assertEquals(Double.NaN, second.boardFeet(), "no log rule");

        Bucked best = buck(settings(Method.BEST_VALUE, 100, SAW, PULP), 31.3);
        assertEquals("saw4 saw4 saw4 pulp3 pulp3 pulp3 pulp3", cuts(best));
        Tolerance.R_SCRIPT.check(63.9484379327348, value(best), "best value");
    }

    /** 10.5 m holds stump and two logs of 5 m with their trim to the millimetre, 10.499 m does not. */
    @Test
    void noCutLiesAboveTheTop() {
        LogSettings settings = settings(Method.LENGTHS, 0.3, SAW);
        assertEquals("saw5 saw5", cuts(buck(settings, 10.5)));
        assertEquals("saw5 saw4", cuts(buck(settings, 10.499)));
    }

    /** Halves of one cone: 20.4 cm is reached at 16 m, so a least diameter of 20.4 holds a cut there and 20.41 does not. */
    @Test
    void endsExactlyOnTheirLimitsFit() {
        LogSettings exact = settings(Method.LENGTHS, 0.3, product("x", 20.4, 41.3333333333333333, 15.7));
        LogSettings small = settings(Method.LENGTHS, 0.3, product("x", 20.41, 100, 15.7));
        LogSettings large = settings(Method.LENGTHS, 0.3, product("x", 8, 41.33, 15.7));
        assertEquals("x16", cuts(buck(exact, 31.3)));
        assertEquals(Optional.of(NoLogs.TOO_SMALL), buck(small, 31.3).reason());
        assertEquals(Optional.of(NoLogs.TOO_LARGE), buck(large, 31.3).reason());
    }

    /** A stem too thick at the butt for any product gives logs higher up, once a piece is left below them. */
    @Test
    void theBestValueMayLeaveAPieceBelow() {
        Product thin = product("saw", 24, 38, 5.0);
        Bucked best = buck(settings(Method.BEST_VALUE, 0.5, thin), 31.3);
        assertEquals(
                Optional.of(NoLogs.TOO_LARGE),
                buck(settings(Method.LENGTHS, 0.5, thin), 31.3).reason());
        assertEquals("saw5 saw5", cuts(best));
        // 38 cm is at 2.8 m (algebra): 0.3 m and five steps of 0.5 m
        Tolerance.ROUNDING.check(2.8, best.logs().get(0).fromM(), "large end above ground (m)");
    }

    @Test
    void speciesGroupAndGradeDecideWhatAStemIsCutInto() {
        Product firs = new Product("saw", "saw", Set.of("firs"), Set.of(), List.of(5.0), 24, 99, 0);
        Product pine = new Product("pine", "pine", Set.of("PP"), Set.of(), List.of(5.0), 24, 99, 0);
        Product graded = new Product("peel", "peel", Set.of("DF"), Set.of("1"), List.of(5.0), 24, 99, 0);
        LogSettings all = settings(Method.LENGTHS, 0.3, pine, graded, firs);
        assertEquals("saw5 saw5", cuts(buck(all, 31.3)));
        StemToCut good = new StemToCut(cone(31.3).profile(), "DF", "firs", "1", 31.3, 0, 800);
        assertEquals(
                "peel5 peel5", cuts(Bucker.of(all, Optional.empty(), MEASURE).buck(good)));
        LogSettings none = settings(Method.LENGTHS, 0.3, pine, graded);
        assertEquals(Optional.of(NoLogs.NO_PRODUCT), buck(none, 31.3).reason());
    }

    @Test
    void aStemWithoutLogsSaysWhy() {
        LogSettings lengths = settings(Method.LENGTHS, 0.3, SAW, PULP);
        assertEquals(Optional.of(NoLogs.TOO_SHORT), buck(lengths, 3.39).reason());
        assertEquals(Optional.of(NoLogs.TOO_SHORT), buck(lengths, 0.1).reason(), "top below the stump");
        LogSettings thick = settings(Method.LENGTHS, 0.3, product("saw", 45, 99, 5.0));
        assertEquals(Optional.of(NoLogs.TOO_SMALL), buck(thick, 31.3).reason(), "merchantable top above dbh");
        LogSettings unpriced = settings(Method.BEST_VALUE, 0.3, product("post", 5, 99, 2.0));
        assertEquals(Optional.of(NoLogs.NO_VALUE), buck(unpriced, 31.3).reason());
        assertThrows(IllegalArgumentException.class, () -> new Bucked(List.of(), Optional.empty()));
        assertEquals(
                Optional.of(NoLogs.NO_PROFILE), Bucked.none(NoLogs.NO_PROFILE).reason());
    }

    /** Defect of the tree and of the product: sound is 0.9·0.8; each unit by its definition, 1 ton = 907.18474 kg. */
    @ParameterizedTest
    @CsvSource({
        "THOUSAND_BOARD_FEET, 0.05",
        "CUBIC_METRE, 0.571420797102943",
        "CUBIC_FOOT, 20.179535007417783",
        "HUNDRED_CUBIC_FEET, 0.20179535007417783",
        "TONNE, 0.4571366376823544",
        "SHORT_TON, 0.503906886355203"
    })
    void aLogFetchesPriceTimesNetAmount(PriceUnit unit, double grossAmount) {
        Product saw = new Product("saw", "saw", Set.of(), Set.of(), List.of(5.0), 30, 99, 0.2);
        LogSettings scaled =
                new LogSettings(Method.LENGTHS, Optional.of(DOYLE), CubicRule.SMALIAN, 0.3, 0.1, 0.3, List.of(saw));
        PriceList list = prices(new Price("saw", "*", 1, unit), new Price("saw", "firs", 100, unit));
        CutLog log = Bucker.of(scaled, Optional.of(list), MEASURE)
                .buck(cone(31.3))
                .logs()
                .get(0);
        Tolerance.ROUNDING.check(0.28, log.defect(), "defect");
        Tolerance.ROUNDING.check(36, log.netBoardFeet(), "net board feet");
        Tolerance.R_SCRIPT.check(100 * 0.72 * grossAmount, log.value(), "value");
    }

    @Test
    void withoutPricesOrWeightTheValueIsNotKnown() {
        LogSettings settings = settings(Method.LENGTHS, 0.3, SAW);
        Bucker free = Bucker.of(settings, Optional.empty(), MEASURE);
        assertEquals(Double.NaN, free.buck(cone(31.3)).logs().get(0).value());
        PriceList byWeight = prices(new Price("saw", "*", 30, PriceUnit.TONNE));
        StemToCut unweighed = new StemToCut(cone(31.3).profile(), "DF", "", "", 31.3, 0, Double.NaN);
        CutLog log = Bucker.of(settings, Optional.of(byWeight), MEASURE)
                .buck(unweighed)
                .logs()
                .get(0);
        assertEquals(Double.NaN, log.value());
        LogSettings best = settings(Method.BEST_VALUE, 0.3, SAW);
        assertEquals(
                Optional.of(NoLogs.NO_VALUE),
                Bucker.of(best, Optional.of(byWeight), MEASURE).buck(unweighed).reason());
        assertThrows(IllegalArgumentException.class, () -> Bucker.of(best, Optional.empty(), MEASURE));
    }

    /** A product without a price of its own fetches nothing, and a tree that is all defect has logs of no net volume. */
    @Test
    void nothingIsNeverNegative() {
        LogSettings settings = settings(Method.LENGTHS, 0.3, product("post", 8, 99, 5.0));
        assertEquals(0, value(buck(settings, 31.3)));
        StemToCut rotten = new StemToCut(cone(31.3).profile(), "DF", "", "", 31.3, 1, 800);
        Bucked bucked = Bucker.of(settings(Method.LENGTHS, 0.3, SAW), Optional.of(PER_CUBIC_METRE), MEASURE)
                .buck(rotten);
        assertTrue(bucked.logs().stream().allMatch(l -> l.netM3() == 0 && l.value() == 0), bucked.toString());
    }

    /** Of ways that fetch the same, fewer logs first, then the product named first. */
    @Test
    void tiesGoToFewerLogsThenToTheProductNamedFirst() {
        Scaling scaling = DOYLE; // the rule of this test gives ten board feet a metre, whatever the diameter
        Product two = product("a", 8, 99, 2.0);
        Product four = product("b", 8, 99, 4.0);
        Product same = product("c", 8, 99, 4.0);
        PriceList list = prices(
                new Price("a", "*", 1, PriceUnit.THOUSAND_BOARD_FEET),
                new Price("b", "*", 1, PriceUnit.THOUSAND_BOARD_FEET),
                new Price("c", "*", 1, PriceUnit.THOUSAND_BOARD_FEET));
        LogSettings settings = new LogSettings(
                Method.BEST_VALUE, Optional.of(scaling), CubicRule.SMALIAN, 0.3, 0, 0.5, List.of(two, four, same));
        Bucked bucked = Bucker.of(settings, Optional.of(list), MEASURE).buck(cone(8.3));
        assertEquals("b4 b4", cuts(bucked));
        assertEquals(0.3, bucked.logs().get(0).fromM(), "no piece is left where none pays");
    }

    /** 16-ft logs with a trim of 0.1 m over a stump of 0.3 m: two are 10.2536 m, two and a half 12.79 m (algebra). */
    @ParameterizedTest
    @CsvSource({
        "25, , , , 25",
        "25, 20, , , 20",
        "25, 20, 15, , 15",
        "25, 20, 15, 2, 10.2536",
        "25, , , 2.5, 12.792",
        "9, , , 2, 9",
        "25, , , 0, 0.3"
    })
    void theLowestLimitIsTheTop(double total, Double broken, Double merchantable, Double logs, double expected) {
        double top = UsableHeight.topM(
                total, optional(broken), optional(merchantable), optional(logs), settings(Method.LENGTHS, 0.3, SAW));
        Tolerance.ROUNDING.check(expected, top, "top (m)");
    }

    private static OptionalDouble optional(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
