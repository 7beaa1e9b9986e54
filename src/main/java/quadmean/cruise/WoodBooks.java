package quadmean.cruise;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import quadmean.design.Design;
import quadmean.design.SpeciesEntry;
import quadmean.design.WoodSettings;
import quadmean.model.BiomassSpec;
import quadmean.model.GreenWeight;
import quadmean.model.LogSettings;
import quadmean.units.Unit;
import quadmean.volume.Bucker;
import quadmean.volume.CodeBook;
import quadmean.volume.CubicScale;
import quadmean.volume.EquationBook;
import quadmean.volume.LogMeasure;
import quadmean.volume.LogScale;
import quadmean.volume.ProfileBook;

/**
 * What a design says of the wood of trees, ready to be looked up by species.
 *
 * @param volumes equations of cubic volume
 * @param boardFeet equations of board feet
 * @param profiles stem profiles
 * @param biomass equations of dry biomass
 * @param greenWeights factors of green weight
 * @param scale how logs are scaled in board feet; empty if they are not
 * @param bucker how stems are cut; empty if they are not
 * @param groupOf group of each species that has one
 */
record WoodBooks(
        EquationBook volumes,
        EquationBook boardFeet,
        ProfileBook profiles,
        CodeBook<BiomassSpec> biomass,
        CodeBook<GreenWeight> greenWeights,
        Optional<LogScale> scale,
        Optional<Bucker> bucker,
        Map<String, String> groupOf) {

    static WoodBooks of(Design design) {
        WoodSettings wood = design.wood();
        Map<String, String> groups = groups(design);
        double breastHeight = design.units().length().convert(design.height().breastHeight(), Unit.METRE);
        ProfileBook profiles = ProfileBook.of(wood.tapers(), groups, breastHeight);
        Optional<LogScale> scale =
                wood.logs().flatMap(logs -> logs.scaling().map(scaling -> LogScale.of(scaling, logs.cubic())));
        return new WoodBooks(
                EquationBook.of(design.volumes(), groups, profiles::stem),
                EquationBook.of(wood.boardFeet(), groups),
                profiles,
                CodeBook.of(wood.biomass(), groups),
                CodeBook.of(wood.greenWeight(), groups),
                scale,
                wood.logs().map(logs -> Bucker.of(logs, wood.prices(), measure(logs, scale))),
                groups);
    }

    private static LogMeasure measure(LogSettings logs, Optional<LogScale> scale) {
        return scale.isPresent() ? scale.get() : new CubicScale(logs.cubic());
    }

    static Map<String, String> groups(Design design) {
        Map<String, String> groups = new HashMap<>();
        for (SpeciesEntry s : design.species().values()) {
            if (!s.group().isEmpty()) {
                groups.put(s.code(), s.group());
            }
        }
        return groups;
    }
}
