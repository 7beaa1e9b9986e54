package quadmean.design;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quadmean.model.GreenWeight;
import quadmean.model.LogSettings;
import quadmean.model.Price.PriceUnit;
import quadmean.model.Product;
import quadmean.model.Rule;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** What tables on logs, prices, board feet and weight must agree on. */
final class WoodChecks {
    private static final Map<String, PriceUnit> UNITS = Options.of(PriceUnit.values(), PriceUnit::id);

    private WoodChecks() {}

    static void check(Section root, WoodSettings wood, Map<String, SpeciesEntry> species, UnitSystem units) {
        wood.logs().ifPresent(logs -> {
            checkBoardFeet(root, logs, wood, units);
            checkTops(root, logs, units);
        });
        checkUnits(root, wood, species);
        checkIdleTaper(root, wood);
    }

    /** A stem profile that nothing uses is a table forgotten, most likely [logs]. */
    private static void checkIdleTaper(Section root, WoodSettings wood) {
        boolean gives = root.tables("volume").values().stream()
                .anyMatch(s -> s.text("form").orElse("").equals("taper"));
        boolean asks =
                !root.tableList("product").isEmpty() || !root.tableList("price").isEmpty(); // and says so by itself
        if (wood.logs().isEmpty() && !root.table("taper").keys().isEmpty() && !gives && !asks) {
            root.problem(
                    Rule.DESIGN_VALUE,
                    "taper",
                    "",
                    "nothing uses this stem profile: add [logs] to cut stems by it, or form = \"taper\" to a"
                            + " [volume.CODE], or take it out");
        }
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
            if (unit == PriceUnit.THOUSAND_BOARD_FEET
                    && isCubic(wood, s.text("product").orElse(""))) {
                s.problem(
                        Rule.DESIGN_VALUE,
                        "per",
                        "mbf",
                        "this product is measured in cubic volume alone, so that it has no board feet to pay for; write"
                                + " another unit, or measure = \"board_feet\" for the product");
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

    private static boolean isCubic(WoodSettings wood, String product) {
        return wood.logs().stream()
                .flatMap(l -> l.products().stream())
                .anyMatch(p -> p.code().equals(product) && p.measure() == Product.Measure.CUBIC);
    }

    /** A tree at the smallest dbh that counts in volume must be thick enough for some product. */
    private static void checkTops(Section root, LogSettings logs, UnitSystem units) {
        Section output = root.table("output");
        double dbh = output.number("merchantable_dbh", Range.NOT_NEGATIVE, 0);
        double thinnest = logs.products().stream()
                .mapToDouble(Product::minSmallEndCm)
                .min()
                .orElse(0);
        double top = Unit.CENTIMETRE.convert(thinnest, units.diameter());
        if (dbh > 0 && top > dbh) {
            output.problem(
                    Rule.DESIGN_VALUE,
                    "merchantable_dbh",
                    Section.show(dbh),
                    "the top diameter lies above the dbh: no product takes a small end under "
                            + Section.show(Math.round(top * 100) / 100.0) + " "
                            + units.diameter().symbol()
                            + ", and trees count in volume from a dbh of " + Section.show(dbh) + " on; raise"
                            + " merchantable_dbh, or lower a min_small_end");
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
