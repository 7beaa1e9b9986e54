package quadmean.design;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiFunction;

/** Tables such as {@code [volume.CODE]}, CODE being a species, a group, or {@code "*"} for all the rest. */
final class CodeTables {
    private CodeTables() {}

    /** Reads every table under a key; a code that the design does not know is noted. */
    static <T> Map<String, T> read(
            Section root, String key, Map<String, SpeciesEntry> species, BiFunction<String, Section, T> reader) {
        CodeCheck codes = new CodeCheck(species);
        Map<String, T> entries = new LinkedHashMap<>();
        root.tables(key).forEach((code, s) -> {
            codes.checkOrRest(s, s.keys().stream().findFirst().orElse("library"), code);
            entries.put(code, reader.apply(code, s));
            s.close();
        });
        return entries;
    }
}
