package quadmean.design;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import quadmean.model.CurveForm;
import quadmean.model.Rule;

/** Reads {@code [species.CODE]}. */
final class SpeciesParser {
    private SpeciesParser() {}

    static Map<String, SpeciesEntry> parse(Section root) {
        Map<String, Section> sections = root.tables("species");
        Map<String, SpeciesEntry> species = new LinkedHashMap<>();
        Map<String, String> recodes = new HashMap<>();
        sections.forEach((code, s) -> {
            SpeciesEntry entry = new SpeciesEntry(
                    code, s.text("name").orElse(code), s.text("group").orElse(""), s.texts("recode_from"), curve(s));
            for (String from : entry.recodeFrom()) {
                String other = recodes.put(from, code);
                if (other != null || sections.containsKey(from)) {
                    s.problem(
                            Rule.DESIGN_VALUE,
                            "recode_from",
                            from,
                            "\"" + from + "\" already means " + (other == null ? "itself" : other));
                }
            }
            if (code.equals("*")) {
                s.problem(Rule.DESIGN_VALUE, "name", code, "* stands for all species; use a code of its own");
            }
            s.close();
            species.put(code, entry);
        });
        return species;
    }

    private static @org.jspecify.annotations.Nullable CurveForm curve(Section s) {
        if (s.text("curve").filter("auto"::equals).isPresent()) {
            return null;
        }
        Map<String, CurveForm> forms = Options.of(CurveForm.values(), CurveForm::id);
        return s.choice("curve", forms).orElse(null);
    }
}
