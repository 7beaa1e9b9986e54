package quadmean.design;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import quadmean.model.Rule;

/** Tables such as {@code [volume.CODE]}, CODE being a species, a group, or {@code "*"} for all the rest. */
final class CodeTables {
    private CodeTables() {}

    /** Reads every table under a key; a code that the design does not know is noted. */
    static <T> Map<String, T> read(
            Section root, String key, Map<String, SpeciesEntry> species, BiFunction<String, Section, T> reader) {
        Set<String> codes = codes(species);
        Map<String, T> entries = new LinkedHashMap<>();
        root.tables(key).forEach((code, s) -> {
            if (!codes.contains(code)) {
                String hint = Nearest.to(code, codes)
                        .map(c -> "; did you mean " + c + "?")
                        .orElse("");
                String first = s.keys().stream().findFirst().orElse("library");
                String detail = "\"" + code + "\" is no species or group of this design" + hint;
                s.problem(Rule.DESIGN_VALUE, first, code, detail);
            }
            entries.put(code, reader.apply(code, s));
            s.close();
        });
        return entries;
    }

    private static Set<String> codes(Map<String, SpeciesEntry> species) {
        Set<String> codes = new LinkedHashSet<>(species.keySet());
        species.values().stream()
                .map(SpeciesEntry::group)
                .filter(g -> !g.isEmpty())
                .forEach(codes::add);
        codes.add("*");
        return codes;
    }
}
