package quadmean.cruise;

import java.util.Collection;
import java.util.Optional;
import java.util.TreeMap;
import quadmean.design.Design;
import quadmean.model.BiomassSpec;
import quadmean.model.GreenWeight;
import quadmean.model.VolumeSpec;

/** What the wood of an estate is worked out with, by what the design says of the species found. No stems are cut. */
final class EstateWood {
    private EstateWood() {}

    static WoodUsed of(Design design, Collection<String> species) {
        WoodBooks books = WoodBooks.of(design);
        TreeMap<String, VolumeSpec> volumes = new TreeMap<>();
        TreeMap<String, VolumeSpec> boardFeet = new TreeMap<>();
        TreeMap<String, BiomassSpec> biomass = new TreeMap<>();
        TreeMap<String, GreenWeight> greenWeights = new TreeMap<>();
        for (String code : species) {
            books.volumes().find(code).ifPresent(e -> volumes.put(code, e.spec()));
            books.boardFeet().find(code).ifPresent(e -> boardFeet.put(code, e.spec()));
            books.biomass().find(code).ifPresent(b -> biomass.put(code, b));
            books.greenWeights().find(code).ifPresent(g -> greenWeights.put(code, g));
        }
        return new WoodUsed(
                volumes,
                boardFeet,
                new TreeMap<>(),
                Optional.empty(),
                Optional.empty(),
                biomass,
                greenWeights,
                design.wood().carbon());
    }
}
