package quadmean.cruise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quadmean.cruise.ErrorPart.Kind;
import quadmean.cruise.ErrorPart.Source;
import quadmean.stats.MeanEstimate;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;

/** Sums, shares and words of a budget made by hand. */
class ErrorBudgetTest {
    private static ErrorPart part(Source source, Kind kind, double variance) {
        return new ErrorPart(source, kind, variance, "words");
    }

    private static ErrorBudget budget(String units, ErrorPart... more) {
        MeanEstimate sampling = new MeanEstimate(13, 12, 200, 8, Double.NaN);
        List<ErrorPart> parts = new java.util.ArrayList<>(List.of(part(Source.PLOTS, Kind.SAMPLING, 64)));
        parts.addAll(List.of(more));
        return new ErrorBudget(Attribute.VOLUME, sampling, units, 0.95, parts);
    }

    /** 64 between plots and 16 + 20 added make 100; 30 inside and the unknown count for nothing (by definition). */
    @Test
    void whatLiesInsideIsNotCountedAgain() {
        ErrorPart inside = part(Source.HEIGHT_READINGS, Kind.INSIDE, 30);
        ErrorBudget b = budget(
                "plots",
                inside,
                part(Source.CURVES, Kind.ADDED, 16),
                part(Source.EQUATIONS, Kind.ADDED, 20),
                part(Source.DBH_BIAS, Kind.UNKNOWN, Double.NaN));
        Tolerance.ROUNDING.check(100, b.totalVariance(), "total variance");
        Tolerance.ROUNDING.check(10, b.totalSe(), "total standard error");
        Tolerance.ROUNDING.check(0.30, b.share(inside), "share of a part inside");
        double counted = b.parts().stream()
                .filter(ErrorPart::isCounted)
                .mapToDouble(b::share)
                .sum();
        Tolerance.ROUNDING.check(1, counted, "shares that count");
        // Satterthwaite with the added parts known: (100/64)²·12
        Tolerance.ROUNDING.check(12 * (100 / 64.0) * (100 / 64.0), b.df(), "degrees of freedom");
        assertEquals("instrument and crew: dbh", b.notKnown());
        assertEquals("", b.offsets());
    }

    /** Half of 64, half of 16, and three quarters of 30, of 80. */
    @Test
    void remediesAreWeighedAgainstEachOther() {
        ErrorBudget b =
                budget("plots", part(Source.HEIGHT_READINGS, Kind.INSIDE, 30), part(Source.CURVES, Kind.ADDED, 16));
        Tolerance.ROUNDING.check(32 / 80.0, b.gain(Remedy.MORE_PLOTS), "plots");
        Tolerance.ROUNDING.check(8 / 80.0, b.gain(Remedy.MORE_HEIGHTS), "heights");
        Tolerance.ROUNDING.check(22.5 / 80, b.gain(Remedy.BETTER_READINGS), "readings");
        assertEquals(Optional.of(Remedy.MORE_PLOTS), b.best());
        assertEquals(
                "More plots would help most: twice as many plots would take 40 % off the total variance; errors of reading,"
                        + " instrument and crew half as large would take 28 % off the total variance; twice as many heights would"
                        + " take 10 % off the total variance.",
                b.advice());
    }

    @Test
    void clustersAreCalledClusters() {
        ErrorBudget b = budget("clusters");
        assertTrue(b.advice().startsWith("More clusters would help most: twice as many clusters"), b.advice());
        assertEquals("between clusters", b.label(b.parts().get(0)));
    }

    @Test
    void aNegativePartIsSaidInWords() {
        ErrorBudget b = budget("plots", part(Source.CURVES, Kind.ADDED, -4));
        Tolerance.ROUNDING.check(60, b.totalVariance(), "total variance");
        assertTrue(
                b.offsets().contains("height curves takes 6.7 % off the total variance instead of adding"),
                b.offsets());
        Tolerance.ROUNDING.check(0, b.gain(Remedy.MORE_HEIGHTS), "nothing to gain");
    }

    @Test
    void withoutAnErrorThereIsNothingToLessen() {
        ErrorBudget none = new ErrorBudget(
                Attribute.VOLUME, new MeanEstimate(13, 12, 200, 8, Double.NaN), "plots", 0.95, List.of());
        assertTrue(none.best().isEmpty());
        assertTrue(none.advice().startsWith("There is no error here"), none.advice());
    }
}
