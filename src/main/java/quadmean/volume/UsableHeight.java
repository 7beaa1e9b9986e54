package quadmean.volume;

import java.util.OptionalDouble;
import quadmean.model.LogSettings;
import quadmean.units.Unit;

/** How far up a stem is used. */
public final class UsableHeight {
    private static final double COUNTED_LOG_M = Unit.FOOT.convert(16, Unit.METRE);

    private UsableHeight() {}

    /**
     * The lowest of the limits that are known.
     *
     * @param totalM total height (m)
     * @param breakM height of the break of a broken top (m)
     * @param merchantableM height to the merchantable top (m)
     * @param countedLogs number of 16-ft logs counted from the stump, in halves; each begun log has one trim
     * @param settings height of the stump, and trim
     * @return height above ground (m)
     */
    public static double topM(
            double totalM,
            OptionalDouble breakM,
            OptionalDouble merchantableM,
            OptionalDouble countedLogs,
            LogSettings settings) {
        double counted = countedLogs.isPresent()
                ? settings.stumpM()
                        + countedLogs.getAsDouble() * COUNTED_LOG_M
                        + Math.ceil(countedLogs.getAsDouble()) * settings.trimM()
                : totalM;
        return Math.min(Math.min(totalM, counted), Math.min(breakM.orElse(totalM), merchantableM.orElse(totalM)));
    }
}
