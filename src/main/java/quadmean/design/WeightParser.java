package quadmean.design;

import java.util.Map;
import java.util.Optional;
import quadmean.model.BiomassSpec;
import quadmean.model.CarbonFraction;
import quadmean.model.GreenWeight;
import quadmean.model.VolumeSpec;

/** Reads {@code [board_feet.CODE]}, {@code [biomass.CODE]}, {@code [green_weight.CODE]} and {@code [carbon]}. */
final class WeightParser {
    WeightParser(Section root, Map<String, SpeciesEntry> species) {}

    Map<String, VolumeSpec> boardFeet() {
        return Map.of();
    }

    Map<String, BiomassSpec> biomass() {
        return Map.of();
    }

    Map<String, GreenWeight> greenWeight() {
        return Map.of();
    }

    Optional<CarbonFraction> carbon() {
        return Optional.empty();
    }
}
