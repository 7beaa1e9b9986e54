package quadmean.design;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quadmean.model.BiomassSpec;
import quadmean.model.CarbonFraction;
import quadmean.model.GreenWeight;
import quadmean.model.LogSettings;
import quadmean.model.PriceList;
import quadmean.model.TaperSpec;
import quadmean.model.VolumeSpec;
import quadmean.units.Attribute;

/**
 * What a design says of wood besides the cubic volume of trees; each map by species code, group or {@code *}.
 *
 * @param boardFeet equations for board feet of whole trees
 * @param tapers stem profiles
 * @param logs how stems are cut into logs; empty if they are not
 * @param prices prices of products; empty if there are none
 * @param biomass equations of dry biomass
 * @param greenWeight factors of green weight
 * @param carbon share of dry biomass that is carbon; empty without biomass
 */
public record WoodSettings(
        Map<String, VolumeSpec> boardFeet,
        Map<String, TaperSpec> tapers,
        Optional<LogSettings> logs,
        Optional<PriceList> prices,
        Map<String, BiomassSpec> biomass,
        Map<String, GreenWeight> greenWeight,
        Optional<CarbonFraction> carbon) {
    /** A design that asks for cubic volume alone. */
    public static final WoodSettings NONE = new WoodSettings(
            Map.of(), Map.of(), Optional.empty(), Optional.empty(), Map.of(), Map.of(), Optional.empty());

    public WoodSettings {
        // as the file has them: the order of a hashed map changes from run to run, and outputs must not
        boardFeet = Collections.unmodifiableMap(new LinkedHashMap<>(boardFeet));
        tapers = Collections.unmodifiableMap(new LinkedHashMap<>(tapers));
        biomass = Collections.unmodifiableMap(new LinkedHashMap<>(biomass));
        greenWeight = Collections.unmodifiableMap(new LinkedHashMap<>(greenWeight));
    }

    /** The tables that a design needs to give an attribute of wood. */
    static String needs(Attribute attribute) {
        return switch (attribute) {
            case LOG_VOLUME, NET_LOG_VOLUME -> "the tables [logs], [[product]] and [taper.CODE]";
            case BOARD_FEET, NET_BOARD_FEET -> "logs.rule in a table [logs], or [board_feet.CODE] tables";
            case VALUE -> "the tables [logs], [prices] and [[price]]";
            case GREEN_WEIGHT -> "a [green_weight.CODE] table";
            case BIOMASS, CARBON -> "a [biomass.CODE] table";
            case TREES, BASAL_AREA, VOLUME, QUADRATIC_MEAN_DIAMETER -> "the tables that give it";
        };
    }

    /** Adds the attributes that the design asks for. */
    void addAttributes(List<Attribute> all) {
        if (logs.isPresent()) {
            all.addAll(List.of(Attribute.LOG_VOLUME, Attribute.NET_LOG_VOLUME));
        }
        if (logs.flatMap(LogSettings::scaling).isPresent() || !boardFeet.isEmpty()) {
            all.addAll(List.of(Attribute.BOARD_FEET, Attribute.NET_BOARD_FEET));
        }
        if (prices.isPresent()) {
            all.add(Attribute.VALUE);
        }
        if (!greenWeight.isEmpty()) {
            all.add(Attribute.GREEN_WEIGHT);
        }
        if (!biomass.isEmpty()) {
            all.addAll(List.of(Attribute.BIOMASS, Attribute.CARBON));
        }
    }
}
