package quadmean.volume;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.model.Provenance;
import quadmean.model.Standing;
import quadmean.model.ValidRange;
import quadmean.model.VolumeForm;
import quadmean.model.VolumeSpec;
import quadmean.model.VolumeSpec.LogBase;
import quadmean.model.VolumeTable;
import quadmean.model.VolumeTable.Entry;
import quadmean.support.Tolerance;
import quadmean.units.Unit;
import quadmean.volume.TreeEquation.Gap;

/** Interpolation in a table whose volumes are V = 1 + 2·D + 3·H + 0.5·D·H, which straight lines reproduce exactly. */
class VolumeTableTest {
    private static final List<Double> DBH = List.of(6.0, 8.0, 12.0);
    private static final List<Double> HEIGHT = List.of(40.0, 50.0, 70.0, 75.0);

    private static double bilinear(double d, double h) {
        return 1 + 2 * d + 3 * h + 0.5 * d * h;
    }

    private static VolumeTable table(Entry entry) {
        return new VolumeTable(
                DBH,
                entry,
                HEIGHT,
                DBH.stream()
                        .map(d -> HEIGHT.stream().map(h -> bilinear(d, h)).toList())
                        .toList());
    }

    private static TreeEquation equation(Entry entry, Unit volume) {
        return TreeEquation.of(new VolumeSpec(
                "X",
                VolumeForm.TABLE,
                List.of(),
                Optional.of(table(entry)),
                LogBase.E,
                0,
                Unit.INCH,
                Unit.FOOT,
                volume,
                ValidRange.NOT_STATED,
                new Provenance("test", Standing.INVENTED),
                ""));
    }

    @ParameterizedTest
    @CsvSource({"6, 40", "6, 75", "12, 40", "12, 75", "8, 50", "7, 45", "9.5, 50", "8, 61", "11.9, 74.9", "12, 72"})
    void straightLinesBetweenThePointsAndTheEdgesBelongToIt(double inches, double feet) {
        double m3 = equation(Entry.HEIGHT, Unit.CUBIC_FOOT)
                .volumeM3(Unit.INCH.convert(inches, Unit.CENTIMETRE), Unit.FOOT.convert(feet, Unit.METRE));
        double ft3 = Unit.CUBIC_METRE.convert(m3, Unit.CUBIC_FOOT);
        Tolerance.relative("a hair of the table at its edge", 1e-8).check(bilinear(inches, feet), ft3, "ft³");
    }

    @ParameterizedTest
    @CsvSource({"5.99, 50", "12.01, 50", "8, 39.9", "8, 75.1", "30, 150"})
    void outsideTheTableThereIsNoVolumeAndItIsSaid(double inches, double feet) {
        double cm = Unit.INCH.convert(inches, Unit.CENTIMETRE);
        double m = Unit.FOOT.convert(feet, Unit.METRE);
        TreeEquation equation = equation(Entry.HEIGHT, Unit.CUBIC_FOOT);
        assertEquals(Double.NaN, equation.volumeM3(cm, m));
        assertEquals(Optional.of(Gap.OUTSIDE_TABLE), equation.gap(cm, m, Double.NaN));
    }

    @Test
    void aTableByLogsNeedsNoHeight() {
        TreeEquation equation = equation(Entry.LOGS, Unit.BOARD_FOOT);
        assertTrue(equation.spec().needsLogs() && !equation.spec().needsHeight());
        double boardFeet = equation.volume(Unit.INCH.convert(7, Unit.CENTIMETRE), Double.NaN, 45);
        Tolerance.ROUNDING.check(bilinear(7, 45), boardFeet, "board feet");
        assertEquals(Optional.of(Gap.NO_LOGS), equation.gap(18, 20, Double.NaN));
    }

    @Test
    void pointsIncreaseAndTheTableIsFull() {
        List<Double> two = List.of(1.0, 2.0);
        List<List<Double>> full = List.of(two, two);
        for (List<Double> wrong : List.of(List.of(1.0), List.of(2.0, 1.0), List.of(1.0, 1.0))) {
            assertThrows(IllegalArgumentException.class, () -> new VolumeTable(wrong, Entry.HEIGHT, two, full));
            assertThrows(IllegalArgumentException.class, () -> new VolumeTable(two, Entry.HEIGHT, wrong, full));
        }
        List<List<Double>> ragged = List.of(two, List.of(1.0));
        assertThrows(IllegalArgumentException.class, () -> new VolumeTable(two, Entry.HEIGHT, two, ragged));
        assertThrows(IllegalArgumentException.class, () -> new VolumeTable(two, Entry.HEIGHT, two, List.of(two)));
    }
}
