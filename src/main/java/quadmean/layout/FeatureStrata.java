package quadmean.layout;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quadmean.design.Nearest;
import quadmean.design.StratumEntry;
import quadmean.design.TractSettings;
import quadmean.model.Rule;
import quadmean.model.Stratum;

/** Which stratum each feature of a boundary file belongs to. */
final class FeatureStrata {
    private final List<Stratum> strata;
    private final boolean undivided;
    private final String outline;
    private final BoundaryLog log;
    private final Set<String> seen = new LinkedHashSet<>();

    FeatureStrata(List<StratumEntry> entries, TractSettings settings, BoundaryLog log) {
        this.strata = entries.stream().map(StratumEntry::stratum).toList();
        this.undivided = entries.size() == 1 && entries.get(0).isUndivided();
        this.outline = settings.outline();
        this.log = log;
    }

    /** Whether a feature bounds the whole tract. */
    boolean isOutline(RawFeature feature) {
        return !undivided
                && feature.code().equals(outline)
                && find(feature.code()).isEmpty();
    }

    /** The code of a feature's stratum, found by code or name; empty, and noted, if there is none. */
    Optional<String> of(RawFeature feature) {
        Optional<String> code =
                undivided || (strata.size() == 1 && feature.code().isEmpty())
                        ? Optional.of(strata.get(0).code())
                        : find(feature.code());
        if (code.isEmpty()) {
            log.add(Rule.BOUNDARY_STRATUM, feature, feature.code(), unknown(feature.code()));
        }
        code.ifPresent(seen::add);
        return code;
    }

    private Optional<String> find(String text) {
        return strata.stream()
                .filter(s -> s.code().equals(text))
                .findFirst()
                .or(() -> strata.stream().filter(s -> s.name().equals(text)).findFirst())
                .map(Stratum::code);
    }

    private String unknown(String text) {
        List<String> codes = strata.stream().map(Stratum::code).toList();
        if (text.isEmpty()) {
            return "it names no stratum; those of the design are " + String.join(", ", codes);
        }
        String hint = Nearest.to(text, codes)
                .map(c -> "; did you mean " + c + "?")
                .orElse("; those of the design are " + String.join(", ", codes) + ", and \"" + outline
                        + "\" marks the outline of the tract");
        return "the design has no stratum \"" + text + "\"" + hint;
    }

    /** Notes the strata that no feature belongs to. */
    void checkAll() {
        strata.stream()
                .filter(s -> !seen.contains(s.code()))
                .forEach(s -> log.add(
                        Rule.BOUNDARY_STRATUM,
                        0,
                        "",
                        s.code(),
                        "stratum " + s.code() + " of the design has no polygon"));
    }
}
