package quadmean.design;

import java.util.OptionalDouble;
import quadmean.model.Rule;

/** Reads {@code [instrument]}. */
final class InstrumentParser {
    private InstrumentParser() {}

    static InstrumentSettings parse(Section root) {
        if (!root.has("instrument")) {
            return InstrumentSettings.NONE;
        }
        Section s = root.table("instrument");
        OptionalDouble index = s.number("index_error", Range.INDEX_ERROR);
        OptionalDouble factor = s.number("distance_factor", Range.CORRECTION_FACTOR);
        if (!s.has("index_error") && !s.has("distance_factor")) {
            s.problem(
                    Rule.DESIGN_MISSING,
                    "index_error",
                    "",
                    "[instrument] corrects nothing: state index_error or distance_factor, or leave the table out");
        }
        InstrumentSettings settings = new InstrumentSettings(index, factor.orElse(1), s.requiredText("why"));
        s.close();
        return settings;
    }
}
