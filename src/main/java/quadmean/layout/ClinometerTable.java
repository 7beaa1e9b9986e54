package quadmean.layout;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quadmean.design.ColumnRole;
import quadmean.design.ColumnSpec;
import quadmean.design.Design;
import quadmean.design.TallyFile;
import quadmean.measure.TreeHeight;
import quadmean.units.AngleScale;

/**
 * What a clinometer reading means in height above the eye, at the distances that a crew stands at. Below the eye the
 * same numbers count downward.
 *
 * @param scale scale that is read
 * @param from where the scale was taken from
 * @param distancesM horizontal distances (m)
 * @param rows one for each reading
 */
public record ClinometerTable(AngleScale scale, From from, List<Double> distancesM, List<Row> rows) {
    public ClinometerTable {
        distancesM = List.copyOf(distancesM);
        rows = List.copyOf(rows);
    }

    /** Where the scale was taken from. */
    public enum From {
        /** The design's key for it. */
        DESIGN,
        /** The tally's column of top readings. */
        TALLY,
        /** Nothing said; percent is taken. */
        ASSUMED
    }

    /**
     * A reading.
     *
     * @param reading units of the scale above the horizontal
     * @param heightsM height of the mark above the eye at each distance (m)
     */
    public record Row(double reading, List<Double> heightsM) {
        public Row {
            heightsM = List.copyOf(heightsM);
        }
    }

    static ClinometerTable of(Design design) {
        AngleScale stated = design.sheets().scale();
        AngleScale tallied = stated == null ? ofTally(design) : stated;
        AngleScale scale = tallied == null ? AngleScale.PERCENT : tallied;
        From from = stated != null ? From.DESIGN : tallied != null ? From.TALLY : From.ASSUMED;
        return of(scale, from, design.sheets().distancesM());
    }

    /** The table of a scale for some distances (m, above 0). */
    static ClinometerTable of(AngleScale scale, From from, List<Double> distancesM) {
        List<Row> rows = new ArrayList<>();
        for (int reading = step(scale); reading <= last(scale); reading += step(scale)) {
            double r = reading;
            rows.add(new Row(
                    r,
                    distancesM.stream()
                            .map(d -> TreeHeight.fromReadings(scale, r, 0, d))
                            .toList()));
        }
        return new ClinometerTable(scale, from, distancesM, rows);
    }

    /** Two heights from the longest distance of the table: with the base below the eye, and above it. */
    List<SightingExample> examples() {
        double distance = distancesM.get(distancesM.size() - 1);
        int step = step(scale);
        double base = scale == AngleScale.DEGREES ? 4 * step : step;
        double top = 12 * base;
        return List.of(
                SightingExample.of(scale, top, -base, distance), SightingExample.of(scale, top + base, base, distance));
    }

    private static @Nullable AngleScale ofTally(Design design) {
        for (TallyFile tally : design.tallies()) {
            ColumnSpec top = tally.columns().get(ColumnRole.TOP);
            if (top != null && top.scale() != null) {
                return top.scale();
            }
        }
        return null;
    }

    /** On the scales that divide the vertical evenly readings in between are in proportion; in degrees they are not. */
    private static int step(AngleScale scale) {
        return switch (scale) {
            case PERCENT -> 5;
            case TOPOGRAPHIC -> 3;
            case DEGREES, METRES_AT_15, METRES_AT_20 -> 1;
        };
    }

    /** Up to some 56° above the eye; steeper sights say little of a height. */
    private static int last(AngleScale scale) {
        return switch (scale) {
            case PERCENT -> 150;
            case TOPOGRAPHIC -> 99;
            case DEGREES -> 56;
            case METRES_AT_15 -> 22;
            case METRES_AT_20 -> 30;
        };
    }
}
