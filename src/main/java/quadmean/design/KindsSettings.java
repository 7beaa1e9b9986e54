package quadmean.design;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * The {@code [plan.kinds]} table: the kinds of plot to compare.
 *
 * @param plotAreasHa areas of fixed plots (ha), ascending
 * @param factors basal area factors of points (m²/ha), ascending
 * @param cvPercent coefficient of variation between plots (percent), if not the plan's
 * @param cvAreaHa area of the plot that it is for (ha), if not the design's own plot
 * @param density what stands on a hectare, if the design says
 * @param times what the work takes
 * @param map a map of stems, if there is one
 */
public record KindsSettings(
        List<Double> plotAreasHa,
        List<Double> factors,
        OptionalDouble cvPercent,
        OptionalDouble cvAreaHa,
        Optional<Density> density,
        Times times,
        Optional<StemMapFile> map) {
    public KindsSettings {
        plotAreasHa = plotAreasHa.stream().sorted().toList();
        factors = factors.stream().sorted().toList();
    }

    /**
     * What stands on a hectare.
     *
     * @param basalArea basal area (m²/ha), above 0
     * @param trees stems (trees/ha), above 0
     */
    public record Density(double basalArea, double trees) {}

    /**
     * What the work takes.
     *
     * @param given values of the design: minutes, percent, and m/h for the pace
     * @param assumed values that it leaves to the defaults
     */
    public record Times(Map<KindInput, Double> given, Map<KindInput, Double> assumed) {
        public Times {
            given = Collections.unmodifiableMap(new TreeMap<>(given));
            assumed = Collections.unmodifiableMap(new TreeMap<>(assumed));
        }

        /** The value of an input, given or assumed. */
        public double of(KindInput input) {
            Double stated = given.get(input);
            return stated == null ? assumed.getOrDefault(input, Double.NaN) : stated;
        }

        /** Minutes that go with each tree counted on a plot: counting, measuring its share, and its share of a height. */
        public double minutesPerTree() {
            return of(KindInput.COUNT)
                    + of(KindInput.MEASURED) / 100 * of(KindInput.MEASURE)
                    + of(KindInput.HEIGHTS) / 100 * of(KindInput.HEIGHT);
        }
    }

    /**
     * A map of stems.
     *
     * @param table the file; its columns stand under the roles {@link #X}, {@link #Y} and {@link ColumnRole#DBH}
     * @param corners x and y of the lower left and the upper right corner (m); empty for the rectangle around the stems
     */
    public record StemMapFile(TallyFile table, List<Double> corners) {
        /** Role of the column of x; a tally has none of its own for it. */
        public static final ColumnRole X = ColumnRole.DISTANCE;
        /** Role of the column of y. */
        public static final ColumnRole Y = ColumnRole.BASE_DISTANCE;

        public StemMapFile {
            corners = List.copyOf(corners);
        }
    }
}
