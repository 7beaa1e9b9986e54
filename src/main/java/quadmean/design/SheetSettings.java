package quadmean.design;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quadmean.units.AngleScale;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/**
 * What stands on the field sheets.
 *
 * @param paper the paper they are printed on
 * @param distancesM horizontal distances of the clinometer tables (m), increasing
 * @param scale the scale that the crew reads; null if the tally says it
 * @param heightEvery k, where the crew measures the height of every k-th tree of a species
 */
public record SheetSettings(
        Paper paper, List<Double> distancesM, @Nullable AngleScale scale, int heightEvery) {
    /** Common practice, no source. */
    private static final int EVERY_FIFTH = 5;

    public SheetSettings {
        distancesM = List.copyOf(distancesM);
    }

    /**
     * What a design gets that says nothing of sheets: 50, 66, 80 and 100 ft, or 15, 20, 25 and 30 m; every fifth tree.
     * Common practice, no source.
     */
    public static SheetSettings usual(UnitSystem units) {
        List<Double> distances =
                units == UnitSystem.US ? List.of(50.0, 66.0, 80.0, 100.0) : List.of(15.0, 20.0, 25.0, 30.0);
        return new SheetSettings(Paper.usual(units), metres(distances, units), null, EVERY_FIFTH);
    }

    static List<Double> metres(List<Double> distances, UnitSystem units) {
        return distances.stream()
                .map(d -> units.length().convert(d, Unit.METRE))
                .toList();
    }
}
