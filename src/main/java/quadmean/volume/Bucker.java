package quadmean.volume;

import java.util.List;
import java.util.Optional;
import quadmean.model.LogSettings;
import quadmean.model.PriceList;

/** Cuts stems into logs, by the lists of lengths or to the best value. */
public final class Bucker {
    private final LogSettings settings;
    private final LogMaker maker;

    private Bucker(LogSettings settings, LogMaker maker) {
        this.settings = settings;
        this.maker = maker;
    }

    /**
     * A way to cut stems.
     *
     * @param settings method, stump, trim and products
     * @param prices what products fetch; empty if logs are not valued
     * @param measure how logs are measured; asked for board feet only where the settings have a log rule
     * @throws IllegalArgumentException if the best value is asked for without prices
     */
    public static Bucker of(LogSettings settings, Optional<PriceList> prices, LogMeasure measure) {
        if (settings.method() == LogSettings.Method.BEST_VALUE && prices.isEmpty()) {
            throw new IllegalArgumentException("the best value needs prices");
        }
        return new Bucker(settings, new LogMaker(settings, prices, measure));
    }

    /** Cuts a stem; where no log comes of it the result says why. */
    public Bucked buck(StemToCut stem) {
        StemCuts cuts = StemCuts.of(stem, settings, maker);
        if (cuts.choices().isEmpty()) {
            return Bucked.none(NoLogs.NO_PRODUCT);
        }
        List<CutLog> logs = switch (settings.method()) {
            case LENGTHS -> ListBucking.logs(cuts);
            case BEST_VALUE -> BestBucking.logs(cuts, StemCuts.micrometres(settings.wasteStepM()));
        };
        return logs.isEmpty() ? Bucked.none(cuts.reasonForNone()) : Bucked.into(logs);
    }
}
