package quadmean.design;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quadmean.model.GreenWeight;
import quadmean.model.LogSettings;
import quadmean.model.Price.PriceUnit;
import quadmean.model.Rule;
import quadmean.units.UnitSystem;

/** What tables on logs, prices, board feet and weight must agree on. */
final class WoodChecks {
    private static final Map<String, PriceUnit> UNITS = Options.of(PriceUnit.values(), PriceUnit::id);

    private WoodChecks() {}

    static void check(Section root, WoodSettings wood, Map<String, SpeciesEntry> species, UnitSystem units) {
        wood.logs().ifPresent(logs -> checkBoardFeet(root, logs, wood, units));
        checkUnits(root, wood, species);
    }

    /** Board feet come from logs or from equations of whole trees, never from both. */
    private static void checkBoardFeet(Section root, LogSettings logs, WoodSettings wood, UnitSystem units) {
        boolean equations = !wood.boardFeet().isEmpty();
        Section s = root.table("logs");
        if (equations && logs.scaling().isPresent()) {
            s.problem(
                    Rule.DESIGN_VALUE,
                    "rule",
                    logs.scaling().get().rule().id(),
                    "board feet come either from the logs or from [board_feet.CODE]; take logs.rule out, or those"
                            + " tables");
        }
        if (!equations && !s.has("rule") && units == UnitSystem.US) {
            s.problem(
                    Rule.DESIGN_MISSING,
                    "rule",
                    "",
                    "name the log rule that gives board feet, or write [board_feet.CODE]; a metric design may do"
                            + " without");
        }
    }

    private static void checkUnits(Section root, WoodSettings wood, Map<String, SpeciesEntry> species) {
        boolean ruled = root.table("logs").has("rule");
        for (Section s : root.tableList("price")) {
            @Nullable PriceUnit unit = UNITS.get(s.text("per").orElse(""));
            if (wood.logs().isPresent() && !ruled && unit == PriceUnit.THOUSAND_BOARD_FEET) {
                s.problem(
                        Rule.DESIGN_VALUE,
                        "per",
                        "mbf",
                        "a price per thousand board feet needs a log rule; name it in logs.rule");
            }
            Set<String> unweighed = unit == PriceUnit.TONNE || unit == PriceUnit.SHORT_TON
                    ? unweighed(s.text("species").orElse(CodeCheck.REST), wood.greenWeight(), species)
                    : Set.of();
            if (!unweighed.isEmpty()) {
                s.problem(
                        Rule.DESIGN_VALUE,
                        "per",
                        s.text("per").orElse(""),
                        "a price by weight needs a green weight: write [green_weight.CODE] for "
                                + String.join(", ", unweighed));
            }
        }
    }

    /** Species under a price that have no green weight, be it their own, their group's or that for all the rest. */
    private static Set<String> unweighed(
            String priced, Map<String, GreenWeight> weights, Map<String, SpeciesEntry> species) {
        if (weights.containsKey(CodeCheck.REST)) {
            return Set.of();
        }
        if (species.isEmpty()) {
            return Set.of("\"*\"");
        }
        return species.values().stream()
                .filter(e -> priced.equals(CodeCheck.REST) || priced.equals(e.code()) || priced.equals(e.group()))
                .filter(e -> !weights.containsKey(e.code()) && !weights.containsKey(e.group()))
                .map(SpeciesEntry::code)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
