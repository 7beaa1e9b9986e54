package quadmean.design;

import java.util.Map;
import java.util.Optional;
import quadmean.model.LogSettings;
import quadmean.model.PriceList;
import quadmean.model.TaperSpec;
import quadmean.units.UnitSystem;

/** Reads {@code [taper.CODE]}, {@code [logs]}, {@code [[product]]}, {@code [prices]} and {@code [[price]]}. */
final class LogsParser {
    LogsParser(Section root, Map<String, SpeciesEntry> species, UnitSystem units) {}

    Map<String, TaperSpec> tapers() {
        return Map.of();
    }

    Optional<LogSettings> settings() {
        return Optional.empty();
    }

    Optional<PriceList> prices() {
        return Optional.empty();
    }
}
