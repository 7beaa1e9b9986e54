package quadmean.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quadmean.model.BiomassSpec;
import quadmean.model.EquationSpec;
import quadmean.model.Provenance;
import quadmean.model.VolumeSpec;

/**
 * Reads the library: collections, each with what its sets have in common and the sets themselves, under the keys of
 * {@code [volume.CODE]} and {@code [biomass.CODE]}. {@code gives}, {@code region} and {@code checked} are the library's own.
 */
final class LibraryParser {
    private static final Map<String, Boolean> KINDS = Options.of(List.of(false, true), b -> b ? "biomass" : "volume");

    private LibraryParser() {}

    static List<EquationLibrary.Entry> parse(Section root) {
        List<EquationLibrary.Entry> entries = new ArrayList<>();
        for (String collection : root.keys()) {
            Section shared = root.table(collection);
            shared.tables("set").forEach((set, own) -> {
                entry(collection + "/" + set, new Stated(own, shared)).ifPresent(entries::add);
                own.close();
            });
            shared.close();
        }
        root.close();
        return entries;
    }

    private static Optional<EquationLibrary.Entry> entry(String name, Stated s) {
        String species = s.at("species").requiredText("species");
        String region = s.at("region").requiredText("region");
        String gives = s.at("gives").requiredText("gives");
        String checked = s.at("checked").requiredText("checked");
        boolean biomass = s.required("kind", KINDS).orElse(false);
        Optional<? extends EquationSpec> equation = biomass
                ? Optional.of(withCheck(BiomassParser.spec(name, s, name), checked))
                : EquationParser.parse(name, s, VolumeKind.EITHER, name).map(v -> withCheck(v, checked));
        return equation.map(e -> new EquationLibrary.Entry(name, species, region, gives, e));
    }

    private static VolumeSpec withCheck(VolumeSpec v, String checked) {
        return v.with(withCheck(v.provenance(), checked));
    }

    private static BiomassSpec withCheck(BiomassSpec b, String checked) {
        return b.with(withCheck(b.provenance(), checked));
    }

    /** How it was checked belongs to the source, which is printed wherever the equation is used. */
    private static Provenance withCheck(Provenance p, String checked) {
        return new Provenance(p.source() + " (" + checked + ")", p.standing());
    }
}
