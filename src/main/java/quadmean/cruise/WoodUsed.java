package quadmean.cruise;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import quadmean.model.BiomassSpec;
import quadmean.model.CarbonFraction;
import quadmean.model.GreenWeight;
import quadmean.model.LogRule;
import quadmean.model.PriceList;
import quadmean.model.Provenance;
import quadmean.model.Standing;
import quadmean.model.TaperSpec;
import quadmean.model.VolumeSpec;
import quadmean.units.Attribute;

/**
 * What the wood of the trees was worked out with, by species that occurs.
 *
 * @param volumes equations of cubic volume
 * @param boardFeet equations of board feet
 * @param tapers stem profiles
 * @param rule log rule; empty if logs have no board feet
 * @param prices prices; empty if there are none
 * @param biomass equations of dry biomass
 * @param greenWeights factors of green weight
 * @param carbon share of carbon; empty without biomass
 */
public record WoodUsed(
        SortedMap<String, VolumeSpec> volumes,
        SortedMap<String, VolumeSpec> boardFeet,
        SortedMap<String, TaperSpec> tapers,
        Optional<LogRule> rule,
        Optional<PriceList> prices,
        SortedMap<String, BiomassSpec> biomass,
        SortedMap<String, GreenWeight> greenWeights,
        Optional<CarbonFraction> carbon) {
    public WoodUsed {
        volumes = sorted(volumes);
        boardFeet = sorted(boardFeet);
        tapers = sorted(tapers);
        biomass = sorted(biomass);
        greenWeights = sorted(greenWeights);
    }

    /** Equations of cubic volume and nothing else. */
    public static WoodUsed ofVolumes(Map<String, VolumeSpec> volumes) {
        return new WoodUsed(
                new TreeMap<>(volumes),
                new TreeMap<>(),
                new TreeMap<>(),
                Optional.empty(),
                Optional.empty(),
                new TreeMap<>(),
                new TreeMap<>(),
                Optional.empty());
    }

    private static <T> SortedMap<String, T> sorted(SortedMap<String, T> map) {
        return Collections.unmodifiableSortedMap(new TreeMap<>(map));
    }

    /**
     * How far what stands behind an attribute can be trusted.
     *
     * @param species species code, or {@code *} for all
     */
    public Stream<Standing> standings(Attribute attribute, String species) {
        return switch (attribute) {
            case TREES, BASAL_AREA, QUADRATIC_MEAN_DIAMETER -> Stream.empty();
            case VOLUME -> of(volumes, species).map(VolumeSpec::standing);
            case LOG_VOLUME, NET_LOG_VOLUME -> tapers(species);
            case BOARD_FEET, NET_BOARD_FEET -> boardFeet(species);
            case VALUE ->
                Stream.concat(
                        boardFeet(species),
                        prices.stream().map(p -> p.provenance().standing()));
            case GREEN_WEIGHT ->
                Stream.concat(
                        of(volumes, species).map(VolumeSpec::standing),
                        of(greenWeights, species).map(g -> g.provenance().standing()));
            case BIOMASS -> of(biomass, species).map(b -> b.provenance().standing());
            case CARBON ->
                Stream.concat(
                        of(biomass, species).map(b -> b.provenance().standing()),
                        carbon.stream().map(c -> c.provenance().standing()));
        };
    }

    private Stream<Standing> boardFeet(String species) {
        Stream<Standing> equations = of(boardFeet, species).map(VolumeSpec::standing);
        return Stream.of(equations, tapers(species), rule.stream().map(LogRule::standing))
                .flatMap(s -> s);
    }

    private Stream<Standing> tapers(String species) {
        return of(tapers, species)
                .flatMap(t -> Stream.concat(
                        Stream.of(t.provenance()), t.bark().stream().map(b -> b.provenance())))
                .map(Provenance::standing);
    }

    private static <T> Stream<T> of(Map<String, T> map, String species) {
        return map.entrySet().stream()
                .filter(e -> species.equals("*") || e.getKey().equals(species))
                .map(Map.Entry::getValue);
    }
}
