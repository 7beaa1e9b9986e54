package quadmean.design;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import quadmean.model.EstateOnePlot;
import quadmean.units.Unit;

/**
 * An estate: many stands in one tally, each sampled by plots of its own.
 *
 * @param stands the table of stands
 * @param columns names of its columns
 * @param areaUnit unit of the areas in it
 * @param curves a file of height curves to fill from; empty if they are fitted
 * @param heightsPerCurve most heights that the curves of a species in a region are fitted to
 * @param onePlot what becomes of stands with a single plot
 */
public record EstateSettings(
        Path stands,
        Map<StandColumn, String> columns,
        Unit areaUnit,
        Optional<Path> curves,
        int heightsPerCurve,
        EstateOnePlot onePlot) {
    /** Heights enough for a curve; more of them change it little: common practice, no source. */
    public static final int USUAL_HEIGHTS = 500;

    public EstateSettings {
        columns = Map.copyOf(columns);
    }

    /** What a column of the table of stands means. */
    public enum StandColumn {
        STAND("stand"),
        AREA("area"),
        /** Stands of a region share height curves. */
        REGION("region"),
        /** Stands of a stratum are reported together. */
        STRATUM("stratum");

        private final String key;

        StandColumn(String key) {
            this.key = key;
        }

        /** The key under {@code [estate.columns]}. */
        public String key() {
            return key;
        }
    }
}
