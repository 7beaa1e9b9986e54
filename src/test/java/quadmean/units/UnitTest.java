package quadmean.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;

class UnitTest {
    /** Names in conversions.csv that pair up with units here; its other rows are about units we do not have. */
    private static final Map<String, Unit> NAMES = Map.ofEntries(
            Map.entry("ft", Unit.FOOT),
            Map.entry("m", Unit.METRE),
            Map.entry("in", Unit.INCH),
            Map.entry("cm", Unit.CENTIMETRE),
            Map.entry("chain (66 ft)", Unit.CHAIN),
            Map.entry("acre", Unit.ACRE),
            Map.entry("ha", Unit.HECTARE),
            Map.entry("ft2", Unit.SQUARE_FOOT),
            Map.entry("m2", Unit.SQUARE_METRE),
            Map.entry("ft3", Unit.CUBIC_FOOT),
            Map.entry("m3", Unit.CUBIC_METRE),
            Map.entry("m2/ha", Unit.SQUARE_METRES_PER_HECTARE),
            Map.entry("ft2/ac", Unit.SQUARE_FEET_PER_ACRE),
            Map.entry("m3/ha", Unit.CUBIC_METRES_PER_HECTARE),
            Map.entry("ft3/ac", Unit.CUBIC_FEET_PER_ACRE),
            Map.entry("trees/ha", Unit.TREES_PER_HECTARE),
            Map.entry("trees/ac", Unit.TREES_PER_ACRE));

    static Stream<Arguments> knownConversions() {
        return ReferenceFiles.csv("conversions.csv").stream()
                .filter(r -> NAMES.containsKey(r.getField("from")) && NAMES.containsKey(r.getField("to")))
                .map(r -> {
                    Unit from = NAMES.get(r.getField("from"));
                    Unit to = NAMES.get(r.getField("to"));
                    boolean ground = from == Unit.ACRE && to == Unit.SQUARE_METRE;
                    return Arguments.of(
                            from, ground ? Unit.SQUARE_METRE_OF_GROUND : to, ReferenceFiles.number(r, "multiply_by"));
                });
    }

    @ParameterizedTest
    @MethodSource("knownConversions")
    void convertsByThePublishedFactor(Unit from, Unit to, double factor) {
        Tolerance.ROUNDING.check(factor, from.convert(1, to), from + " to " + to);
        Tolerance.ROUNDING.check(1, to.convert(factor, from), to + " back to " + from);
    }

    /** 14 of the rows of conversions.csv: a renamed row must not drop out unseen. */
    @Test
    void everyExpectedRowOfTheTableIsChecked() {
        assertEquals(14, knownConversions().count());
    }

    /** By definition of the prefixes. */
    @ParameterizedTest
    @CsvSource({"MILLIMETRE,305,30.5", "DECIMETRE,34,340", "CENTIMETRE,57.5,57.5", "METRE,1.3,130"})
    void recordedLengthsConvertToCentimetres(Unit from, double value, double centimetres) {
        Tolerance.ROUNDING.check(centimetres, from.convert(value, Unit.CENTIMETRE), from.toString());
    }

    /** conversions.csv, "breast height US": 1.3716 m exactly, not 1.30 m. */
    @Test
    void breastHeightDiffersBetweenTheSystems() {
        Tolerance.ROUNDING.check(
                1.3716, Unit.FOOT.convert(UnitSystem.US.breastHeight(), Unit.METRE), "US breast height (m)");
        assertEquals(1.30, UnitSystem.METRIC.breastHeight());
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void convertingToItselfChangesNothing(Unit unit) {
        assertEquals(0.1 + 0.2, unit.convert(0.1 + 0.2, unit));
    }

    @Test
    void incompatibleUnitsAreRefusedNamingBoth() {
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> Unit.FOOT.convert(1, Unit.HECTARE));
        assertTrue(e.getMessage().contains("ft (LENGTH)"), e.getMessage());
        assertTrue(e.getMessage().contains("ha (GROUND_AREA)"), e.getMessage());
    }

    @Test
    void groundAndStemAreaDoNotMix() {
        assertThrows(IllegalArgumentException.class, () -> Unit.SQUARE_METRE.convert(1, Unit.SQUARE_METRE_OF_GROUND));
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void everyUnitIsFoundByItsSymbol(Unit unit) {
        assertEquals(Optional.of(unit), Unit.parse(unit.quantity(), unit.symbol()));
    }

    @Test
    void unknownSymbolsAndSymbolsOfOtherQuantitiesAreNotFound() {
        assertEquals(Optional.empty(), Unit.parse(Quantity.LENGTH, "yd"));
        assertEquals(Optional.empty(), Unit.parse(Quantity.LENGTH, "ha"));
    }

    @Test
    void labelsRaiseDigits() {
        assertEquals("m²/ha", Unit.SQUARE_METRES_PER_HECTARE.label());
        assertEquals("ft³/ac", Unit.CUBIC_FEET_PER_ACRE.label());
        assertEquals("cm", Unit.CENTIMETRE.label());
    }
}
