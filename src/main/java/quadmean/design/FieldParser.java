package quadmean.design;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quadmean.model.Rule;
import quadmean.model.SizeRules;
import quadmean.model.TopHeight;
import quadmean.model.TreeStatus;
import quadmean.units.Attribute;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Reads what the design says of the field work: who and where, what counts, plots that are not like the others. */
final class FieldParser {
    private static final Map<String, TreeStatus> STATUSES = Options.of(TreeStatus.values(), TreeStatus::id);

    private FieldParser() {}

    static CruiseNotes notes(Section cruise) {
        return new CruiseNotes(
                cruise.text("crew").orElse(""),
                cruise.text("place").orElse(""),
                cruise.number("declination", Range.FINITE));
    }

    static Counting counting(Section output, Section cruise, UnitSystem units) {
        Map<Attribute, Set<TreeStatus>> statuses = new EnumMap<>(Counting.STANDARD.statuses());
        for (Attribute attribute : List.of(Attribute.TREES, Attribute.BASAL_AREA, Attribute.VOLUME)) {
            String key = "counts_" + attribute.id();
            if (output.has(key)) {
                statuses.put(attribute, statuses(output, key));
            }
        }
        double smallest = output.number("merchantable_dbh", Range.NOT_NEGATIVE, 0);
        Map<String, TreeStatus> codes = new LinkedHashMap<>();
        Section table = cruise.table("status_codes");
        table.keys().forEach(code -> table.choice(code, STATUSES).ifPresent(s -> codes.put(code, s)));
        return new Counting(statuses, units.diameter().convert(smallest, Unit.CENTIMETRE), codes);
    }

    static SizeRules sizes(Section output, UnitSystem units) {
        boolean metric = units == UnitSystem.METRIC;
        double width = output.number("diameter_class", Range.CLASS_WIDTH, metric ? 5 : 2);
        TopHeight top = output.choice("top_height", Options.of(TopHeight.values(), TopHeight::id))
                .orElse(metric ? TopHeight.HUNDRED_PER_HECTARE : TopHeight.FORTY_PER_ACRE);
        double smallest = output.number("smallest_dbh", Range.NOT_NEGATIVE, 0);
        return new SizeRules(
                units.diameter().convert(width, Unit.CENTIMETRE),
                top,
                units.diameter().convert(smallest, Unit.CENTIMETRE));
    }

    private static Set<TreeStatus> statuses(Section output, String key) {
        Set<TreeStatus> found = new HashSet<>();
        for (String word : output.texts(key)) {
            TreeStatus status = STATUSES.get(word);
            if (status == null) {
                output.problem(
                        Rule.DESIGN_VALUE,
                        key,
                        word,
                        "\"" + word + "\" is not one of " + String.join(", ", STATUSES.keySet()));
            } else {
                found.add(status);
            }
        }
        return found;
    }

    static PlotExceptions exceptions(Section selection, Path designFile) {
        Set<String> notReached = new HashSet<>(PlotNumbers.expand(selection, "not_reached"));
        Map<String, Double> cut = new HashMap<>();
        for (Section s : selection.tableList("cut")) {
            String plot = s.requiredText("plot");
            double inside = s.number("inside", Range.SHARE).orElse(1);
            if (!s.has("inside")) {
                s.problem(
                        Rule.DESIGN_MISSING,
                        "inside",
                        "",
                        "the share of plot " + plot + " inside its stratum is missing");
            }
            cut.put(plot, inside);
            s.close();
        }
        return new PlotExceptions(notReached, cut, plotList(selection, designFile));
    }

    private static @Nullable Path plotList(Section selection, Path designFile) {
        String name = selection.text("plot_list").orElse("");
        if (name.isEmpty()) {
            return null;
        }
        try {
            return designFile.toAbsolutePath().resolveSibling(name).normalize();
        } catch (InvalidPathException e) {
            selection.problem(Rule.DESIGN_VALUE, "plot_list", name, "this is no file name: " + e.getReason());
            return null;
        }
    }
}
