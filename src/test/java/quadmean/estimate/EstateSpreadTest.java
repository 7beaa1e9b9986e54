package quadmean.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import quadmean.cruise.EstateResult;
import quadmean.estimate.EstateSpread.StandLine;
import quadmean.support.SmallEstate;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/** On the shipped estate; expected values are sorted and counted from the rows of the stands. */
class EstateSpreadTest {
    private static EstateResult result;
    private static EstateSpread spread;

    @BeforeAll
    static void work() throws IOException {
        result = SmallEstate.run(Path.of("designs/estate.toml"));
        spread = result.spread();
    }

    private static double[] errors() {
        double[] errors = new double[result.stands().size()];
        for (int i = 0; i < errors.length; i++) {
            errors[i] = result.stands().plots(i) < 2
                    ? Double.NaN
                    : row(i, Basis.PER_AREA).samplingErrorPercent();
        }
        return errors;
    }

    private static EstimateRow row(int stand, Basis basis) {
        return result.stands().rows(stand, EstimateRow.ALL).stream()
                .filter(r -> r.attribute() == Attribute.VOLUME && r.basis() == basis)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void standsWithoutErrorsAreCountedApart() {
        assertEquals(Attribute.VOLUME, spread.attribute());
        assertEquals(39, spread.stands());
        assertEquals(38, spread.known());
        assertEquals(
                38,
                spread.errors().counts().stream().mapToLong(c -> c).sum()
                        + spread.errors().beyond());
        assertEquals(
                39,
                spread.means().counts().stream().mapToLong(c -> c).sum()
                        + spread.means().beyond());
        assertEquals(Arrays.stream(errors()).filter(e -> e <= 10).count(), spread.withinTarget());
    }

    @Test
    void medianLiesInTheMiddleOfTheKnownErrors() {
        double[] sorted =
                Arrays.stream(errors()).filter(Double::isFinite).sorted().toArray();
        Tolerance.ROUNDING.check((sorted[18] + sorted[19]) / 2, spread.medianErrorPercent(), "median");
    }

    @Test
    void listsAreThoseOfTheLargestNumbers() {
        double[] totals = new double[result.stands().size()];
        for (int i = 0; i < totals.length; i++) {
            totals[i] = result.stands().plots(i) == 0 ? -1 : row(i, Basis.TOTAL).mean();
        }
        assertEquals(
                largest(totals),
                spread.largest().stream().map(l -> l.total().mean()).toList());
        assertEquals(
                largest(errors()),
                spread.worst().stream()
                        .map(l -> l.perArea().samplingErrorPercent())
                        .toList());
    }

    private static List<Double> largest(double[] values) {
        return Arrays.stream(values)
                .filter(Double::isFinite)
                .map(v -> -v)
                .sorted()
                .map(v -> -v)
                .limit(EstateSpread.LISTED)
                .boxed()
                .toList();
    }

    @Test
    void lineIsOfItsStand() {
        StandLine first = spread.largest().get(0);
        Tolerance.ROUNDING.check(
                first.perArea().mean() * first.stand().areaHa(), first.total().mean(), "total");
        assertEquals(first.stand().code(), first.perArea().stratum());
    }
}
