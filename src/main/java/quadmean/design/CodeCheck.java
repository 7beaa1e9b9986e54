package quadmean.design;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import quadmean.model.Rule;

/** Species and groups that tables on wood may name. */
final class CodeCheck {
    /** All the rest. */
    static final String REST = "*";

    private final Set<String> codes = new LinkedHashSet<>();

    CodeCheck(Map<String, SpeciesEntry> species) {
        codes.addAll(species.keySet());
        species.values().stream()
                .map(SpeciesEntry::group)
                .filter(g -> !g.isEmpty())
                .forEach(codes::add);
    }

    /** Reports a code that is no species or group, {@code *} among them. */
    void check(Section s, String key, String code) {
        if (!codes.contains(code)) {
            String hint = Nearest.to(code, codes)
                    .map(c -> "; did you mean " + c + "?")
                    .orElse("; name it in [species.CODE]");
            s.problem(Rule.DESIGN_VALUE, key, code, "\"" + code + "\" is no species or group of this design" + hint);
        }
    }

    /** The same where {@code *} stands for all the rest. */
    void checkOrRest(Section s, String key, String code) {
        if (!code.equals(REST)) {
            check(s, key, code);
        }
    }
}
