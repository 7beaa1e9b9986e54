package quadmean.design;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import quadmean.model.Rule;

/** Reads the keys of {@code [[tally]]} that say how the file is written. */
final class FormatParser {
    private static final Map<String, Character> SEPARATORS =
            Options.of(List.of(',', ';', '\t', '|'), c -> c == '\t' ? "tab" : c.toString());
    private static final Map<String, Character> DECIMALS = Options.of(List.of('.', ','), Object::toString);
    private static final Map<String, Encoding> ENCODINGS = Options.of(Encoding.values(), Encoding::id);

    private FormatParser() {}

    static TallyFormat parse(Section s, String fileName) {
        TallyFormat format = new TallyFormat(
                s.choice("encoding", ENCODINGS).orElse(null),
                s.choice("separator", SEPARATORS).orElse(null),
                s.choice("decimal", DECIMALS).orElse(null),
                s.text("sheet").orElse(""),
                s.text("plots_sheet").orElse(""));
        if (Character.valueOf(',').equals(format.decimal())
                && Character.valueOf(',').equals(format.separator())) {
            s.problem(Rule.DESIGN_VALUE, "decimal", ",", "separator and decimal mark cannot both be a comma");
        }
        boolean workbook = fileName.toLowerCase(Locale.ROOT).endsWith(".xlsx");
        for (String key : workbook ? List.of("encoding", "separator") : List.of("sheet", "plots_sheet")) {
            if (s.has(key)) {
                String kind = workbook ? "a text file; this is a workbook" : "a workbook (.xlsx)";
                s.problem(Rule.DESIGN_VALUE, key, "", key + " is said of " + kind);
            }
        }
        if (!format.plotsSheet().isEmpty() && format.plotsSheet().equals(format.sheet())) {
            s.problem(Rule.DESIGN_VALUE, "plots_sheet", format.plotsSheet(), "trees and plots have a sheet each");
        }
        return format;
    }
}
