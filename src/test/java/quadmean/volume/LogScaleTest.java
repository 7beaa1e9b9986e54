package quadmean.volume;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.model.CubicRule;
import quadmean.model.LogRule;
import quadmean.model.Scaling;
import quadmean.model.Scaling.Diameters;
import quadmean.model.Scaling.Figures;
import quadmean.model.Scaling.Lengths;
import quadmean.support.Tolerance;
import quadmean.units.Unit;

/** Scaling conventions; sizes stand in inches and feet, figures by the log rules by hand. */
class LogScaleTest {
    @ParameterizedTest
    @CsvSource({
        "NEAREST_INCH, 12.49, 12",
        "NEAREST_INCH, 12.5, 13",
        "INCH_DOWN, 12.99, 12",
        "INCH_DOWN, 12, 12",
        "INCH_DOWN, 13, 13",
    })
    void diametersAreRoundedAsTheConventionSays(Diameters diameters, double inches, double expected) {
        LogScale scale = scale(LogRule.DOYLE, diameters, Lengths.AS_IS, Figures.AS_TABLED, 40);
        ScaledPiece piece = only(scaled(scale, inches, 16));
        assertEquals(expected, piece.inches());
        assertEquals(Math.pow((expected - 4) / 4, 2) * 16, piece.boardFeet());
    }

    @ParameterizedTest
    @CsvSource({
        "EVEN_FOOT_DOWN, 17.9, 16",
        "EVEN_FOOT_DOWN, 16, 16",
        "EVEN_FOOT_DOWN, 15.99, 14",
        "FOOT_DOWN, 17.9, 17",
        "FOOT_DOWN, 17, 17",
    })
    void lengthsAreRoundedAsTheConventionSays(Lengths lengths, double feet, double expected) {
        LogScale scale = scale(LogRule.DOYLE, Diameters.NEAREST_INCH, lengths, Figures.UNROUNDED, 40);
        ScaledPiece piece = only(scaled(scale, 12, feet));
        assertEquals(expected, piece.feet());
        assertEquals(4 * expected, piece.boardFeet());
    }

    @Test
    void wholeFeetAndInchesSurviveTheWayThroughMetres() {
        LogScale scale = scale(LogRule.DOYLE, Diameters.INCH_DOWN, Lengths.FOOT_DOWN, Figures.UNROUNDED, 200);
        for (int n = 1; n <= 200; n++) {
            ScaledPiece piece = only(scaled(scale, n, n));
            assertEquals(n, piece.inches());
            assertEquals(n, piece.feet());
        }
    }

    @Test
    void asIsNothingIsRounded() {
        LogScale scale = scale(LogRule.DOYLE, Diameters.AS_IS, Lengths.AS_IS, Figures.UNROUNDED, 40);
        Tolerance.ROUNDING.check(2.125 * 2.125 * 15.3, scaled(scale, 12.5, 15.3).boardFeet(), "12.5 in, 15.3 ft");
    }

    /** 0.79·169 - 26 - 4 = 103.51; Doyle (9/4)²·10 = 50.625; International 12 in, 16 ft 96.918. */
    @ParameterizedTest
    @CsvSource({
        "SCRIBNER_FORMULA, 13, 16, 104",
        "DOYLE, 13, 10, 51",
        "DOYLE, 14, 10, 63",
        "INTERNATIONAL_QUARTER, 12, 16, 95",
        "SCRIBNER_DECIMAL_C, 12, 16, 80",
    })
    void figuresAreRoundedAsTablesAre(LogRule rule, double inches, double feet, double expected) {
        LogScale scale = scale(rule, Diameters.NEAREST_INCH, Lengths.EVEN_FOOT_DOWN, Figures.AS_TABLED, 20);
        assertEquals(expected, scaled(scale, inches, feet).boardFeet());
    }

    @Test
    void aLengthUnderTheFirstStepIsNoPieceAndNoBoardFeet() {
        LogScale scale = scale(LogRule.DOYLE, Diameters.NEAREST_INCH, Lengths.EVEN_FOOT_DOWN, Figures.AS_TABLED, 20);
        assertEquals(new ScaledLog(List.of()), scaled(scale, 20, 1.9));
        assertEquals(0, scaled(scale, 20, 1.9).boardFeet());
    }

    /** As few pieces as the longest allows, as equal as the steps allow, the longer at the butt. */
    @ParameterizedTest
    @CsvSource({
        "EVEN_FOOT_DOWN, 20, 20, 20",
        "EVEN_FOOT_DOWN, 20, 21.9, 20",
        "EVEN_FOOT_DOWN, 20, 22, 12 10",
        "EVEN_FOOT_DOWN, 20, 34, 18 16",
        "EVEN_FOOT_DOWN, 20, 40, 20 20",
        "EVEN_FOOT_DOWN, 20, 44, 16 14 14",
        "EVEN_FOOT_DOWN, 19, 38, 14 12 12",
        "FOOT_DOWN, 20, 33.5, 17 16",
        "FOOT_DOWN, 16, 33, 11 11 11",
        "AS_IS, 20, 20, 20",
        "AS_IS, 20, 45, 15 15 15",
    })
    void longLogsAreScaledInPieces(Lengths lengths, double longest, double feet, String expected) {
        LogScale scale = scale(LogRule.DOYLE, Diameters.NEAREST_INCH, lengths, Figures.AS_TABLED, longest);
        double[] pieces = scaled(scale, 20, feet).pieces().stream()
                .mapToDouble(ScaledPiece::feet)
                .toArray();
        double[] lengthsFt = Arrays.stream(expected.split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        Tolerance.ROUNDING.check(lengthsFt, pieces, feet + " ft");
    }

    /** 34 ft from 14 to 10 in: the joint at 16 ft is 10 + 4·16/34 = 11.88 in; Doyle 4·18 + 2.25·16 = 108. */
    @Test
    void jointsLieOnTheStraightLineBetweenTheEnds() {
        LogScale scale = scale(LogRule.DOYLE, Diameters.NEAREST_INCH, Lengths.EVEN_FOOT_DOWN, Figures.AS_TABLED, 20);
        ScaledLog log = scale.scale(cm(10), cm(14), m(34));
        assertEquals(
                List.of(12.0, 10.0),
                log.pieces().stream().map(ScaledPiece::inches).toList());
        assertEquals(72 + 36, log.boardFeet());
        assertEquals(108, scale.boardFeet(cm(10), cm(14), m(34)));
        LogScale down = scale(LogRule.DOYLE, Diameters.INCH_DOWN, Lengths.EVEN_FOOT_DOWN, Figures.AS_TABLED, 20);
        assertEquals(11, down.scale(cm(10), cm(14), m(34)).pieces().get(0).inches());
    }

    /** Top 30 in · 20 ft 820 from the table; butt 36 in · 20 ft by the formula (1023.84 - 76)·20/16 = 1184.8, to tens. */
    @Test
    void whatLiesBesideTheTableIsCountedApart() {
        LogScale scale = scale(
                LogRule.SCRIBNER_DECIMAL_C, Diameters.NEAREST_INCH, Lengths.EVEN_FOOT_DOWN, Figures.AS_TABLED, 20);
        ScaledLog log = scale.scale(cm(30), cm(42), m(40));
        assertTrue(log.besideTable());
        assertEquals(820 + 1180, log.boardFeet());
        assertEquals(1180, log.boardFeetBesideTable());
        assertEquals(Coverage.OVER_LARGEST_DIAMETER, log.pieces().get(0).coverage());
        assertEquals(0, scaled(scale, 30, 20).boardFeetBesideTable());
    }

    @ParameterizedTest
    @EnumSource
    void logsUpToTheLongestPieceAreScaledInOneWhateverTheirLargeEnd(LogRule rule) {
        for (long seed = 1; seed <= 20; seed++) {
            Random random = new Random(seed);
            double longest = 12 + random.nextInt(20);
            double feet = 2 + random.nextDouble() * (longest - 2);
            double inches = 3 + 40 * random.nextDouble();
            for (Lengths lengths : Lengths.values()) {
                LogScale pieces = scale(rule, Diameters.NEAREST_INCH, lengths, Figures.UNROUNDED, longest);
                LogScale whole =
                        scale(rule, Diameters.NEAREST_INCH, lengths, Figures.UNROUNDED, Double.POSITIVE_INFINITY);
                assertEquals(
                        whole.boardFeet(cm(inches), cm(inches), m(feet)),
                        pieces.boardFeet(cm(inches), cm(1.4 * inches), m(feet)),
                        "seed " + seed + " " + lengths);
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void piecesAddUpToTheScaledLengthAndNoneIsTooLong(Lengths lengths) {
        for (long seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            double longest = 2 + 30 * random.nextDouble();
            double feet = 2 + 150 * random.nextDouble();
            LogScale scale = scale(LogRule.DOYLE, Diameters.AS_IS, lengths, Figures.UNROUNDED, longest);
            LogScale whole = scale(LogRule.DOYLE, Diameters.AS_IS, lengths, Figures.UNROUNDED, 400);
            List<ScaledPiece> pieces = scaled(scale, 20, feet).pieces();
            double sum = pieces.stream().mapToDouble(ScaledPiece::feet).sum();
            Tolerance.ROUNDING.check(only(scaled(whole, 20, feet)).feet(), sum, "seed " + seed);
            for (int i = 0; i < pieces.size(); i++) {
                assertTrue(pieces.get(i).feet() <= longest * (1 + 1e-9), "seed " + seed);
                assertTrue(i == 0 || pieces.get(i).feet() <= pieces.get(i - 1).feet(), "seed " + seed);
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void boardFeetNeverFallWithDiameterAndAreNeverNegative(LogRule rule) {
        LogScale scale = scale(rule, Diameters.NEAREST_INCH, Lengths.EVEN_FOOT_DOWN, Figures.AS_TABLED, 20);
        for (double feet = 3; feet < 70; feet += 3.3) {
            double before = 0;
            for (double small = 0.2; small < 50; small += 0.3) {
                double now = scale.boardFeet(cm(small), cm(small + 3), m(feet));
                assertTrue(now >= before, rule + " " + small + " in, " + feet + " ft: " + now + " after " + before);
                before = now;
            }
        }
    }

    @Test
    void cubicVolumeTakesSizesAsTheyAre() {
        LogScale scale = scale(LogRule.DOYLE, Diameters.NEAREST_INCH, Lengths.EVEN_FOOT_DOWN, Figures.AS_TABLED, 20);
        assertEquals(
                CubicVolume.ofDiameters(CubicRule.NEWTON, 30.3, 25.2, 20.1, 5.07),
                scale.cubicMetres(30.3, 25.2, 20.1, 5.07));
    }

    @Test
    void theConventionsAreSaidInWords() {
        String words = String.join(
                "\n",
                scale(LogRule.SCRIBNER_DECIMAL_C, Diameters.NEAREST_INCH, Lengths.EVEN_FOOT_DOWN, Figures.UNROUNDED, 20)
                        .statement());
        for (String part : List.of(
                "Scribner Decimal C",
                "of its 175 cells 5 were seen in print, the others are from memory",
                "outside that table are scaled by the Scribner formula",
                "nearest inch, halves up (common practice, no source)",
                "down to even feet (common practice, no source)",
                "rounded to tens of board feet",
                "over 20.0 ft",
                "the longer at the butt",
                "V = (B + 4M + b)/6·L")) {
            assertTrue(words.contains(part), part + " in\n" + words);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "INCH_DOWN, FOOT_DOWN, down to whole inches, down to whole feet, as equal as whole feet allow",
        "AS_IS, AS_IS, diameters are not rounded, without trim are not rounded, of equal length",
    })
    void otherConventionsAreSaidInWordsToo(
            Diameters diameters, Lengths lengths, String first, String second, String third) {
        String words = String.join(
                "\n",
                scale(LogRule.DOYLE, diameters, lengths, Figures.UNROUNDED, 16).statement());
        for (String part : List.of(first, second, third, "each log or piece are not rounded", "Doyle")) {
            assertTrue(words.contains(part), part + " in\n" + words);
        }
        double unlimited = Double.POSITIVE_INFINITY;
        assertTrue(scale(LogRule.DOYLE, diameters, lengths, Figures.UNROUNDED, unlimited).statement().stream()
                .anyMatch(s -> s.contains("scaled in one piece")));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, -1, Double.POSITIVE_INFINITY})
    void sizesOutOfTheirDomainAreRefusedByName(double bad) {
        LogScale scale = scale(LogRule.DOYLE, Diameters.NEAREST_INCH, Lengths.EVEN_FOOT_DOWN, Figures.AS_TABLED, 20);
        refused("small-end diameter (cm)", bad, () -> scale.boardFeet(bad, 30, 5));
        refused("large-end diameter (cm)", bad, () -> scale.boardFeet(20, bad, 5));
        refused("length (m)", bad, () -> scale.boardFeet(20, 30, bad));
        refused("middle diameter (cm)", bad, () -> scale.cubicMetres(30, bad, 20, 5));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, -1, 0.6})
    void aLongestPieceUnderTheStepIsRefused(double metres) {
        Scaling scaling =
                new Scaling(LogRule.DOYLE, Diameters.AS_IS, Lengths.EVEN_FOOT_DOWN, Figures.UNROUNDED, metres);
        String message = assertThrows(IllegalArgumentException.class, () -> LogScale.of(scaling, CubicRule.HUBER))
                .getMessage();
        assertEquals("longest piece must be at least 2.0 ft, got " + metres + " m", message);
    }

    private static void refused(String start, double value, Runnable call) {
        String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
        assertTrue(message.startsWith(start) && message.endsWith("got " + value), message);
    }

    private static LogScale scale(
            LogRule rule, Diameters diameters, Lengths lengths, Figures figures, double longestFt) {
        return LogScale.of(new Scaling(rule, diameters, lengths, figures, m(longestFt)), CubicRule.NEWTON);
    }

    private static ScaledLog scaled(LogScale scale, double inches, double feet) {
        return scale.scale(cm(inches), cm(inches), m(feet));
    }

    private static ScaledPiece only(ScaledLog log) {
        assertEquals(1, log.pieces().size());
        return log.pieces().get(0);
    }

    private static double cm(double inches) {
        return Unit.INCH.convert(inches, Unit.CENTIMETRE);
    }

    private static double m(double feet) {
        return Unit.FOOT.convert(feet, Unit.METRE);
    }
}
