package quadmean.design;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import quadmean.model.CubicRule;
import quadmean.model.LogRule;
import quadmean.model.LogSettings;
import quadmean.model.LogSettings.Method;
import quadmean.model.PriceList;
import quadmean.model.Product;
import quadmean.model.Rule;
import quadmean.model.Scaling;
import quadmean.model.Scaling.Diameters;
import quadmean.model.Scaling.Figures;
import quadmean.model.Scaling.Lengths;
import quadmean.model.TaperSpec;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Reads {@code [taper.CODE]}, {@code [logs]}, {@code [[product]]}, {@code [prices]} and {@code [[price]]}. */
final class LogsParser {
    /** Longest length scaled in one piece (m): 20 ft; common practice, no source. */
    private static final double LONGEST_PIECE_M = Unit.FOOT.convert(20, Unit.METRE);

    private final UnitSystem units;
    private final Map<String, TaperSpec> tapers;
    private final Optional<LogSettings> settings;
    private final Optional<PriceList> prices;

    LogsParser(Section root, Map<String, SpeciesEntry> species, UnitSystem units) {
        this.units = units;
        CodeCheck codes = new CodeCheck(species);
        tapers = TaperParser.parse(root, codes, units);
        boolean cut = root.has("logs");
        Section logs = root.table("logs");
        List<Section> products = root.tableList("product");
        double trim = logs.number("trim", Range.HUNDREDTHS_OR_ZERO, usual(0.5, 0.15));
        List<Product> all = new ProductParser(codes, units, trim).parse(products);
        prices = PriceParser.parse(root, codes, all);
        settings = cut ? Optional.of(settings(logs, trim, all)) : Optional.empty();
        if (!cut && (!products.isEmpty() || prices.isPresent())) {
            String table = products.isEmpty() ? "prices" : "product";
            root.problem(
                    Rule.DESIGN_MISSING,
                    table,
                    "",
                    "products and prices need a table [logs]; it says how stems are cut");
        }
        if (cut) {
            checkComplete(root, logs, products);
        }
    }

    Map<String, TaperSpec> tapers() {
        return tapers;
    }

    Optional<LogSettings> settings() {
        return settings;
    }

    Optional<PriceList> prices() {
        return prices;
    }

    /** Defaults of stump, trim and waste are common practice, no source. */
    private LogSettings settings(Section s, double trim, List<Product> products) {
        Method method = word(s, "method", Method.values(), Method::id, Method.LENGTHS);
        LogSettings read = new LogSettings(
                method,
                scaling(s),
                word(s, "cubic", CubicRule.values(), CubicRule::id, CubicRule.SMALIAN),
                metres(s.number("stump", Range.HUNDREDTHS_OR_ZERO, usual(1, 0.3))),
                metres(trim),
                metres(s.number("waste_step", Range.HUNDREDTHS, usual(1, 0.3))),
                products);
        if (method == Method.LENGTHS && s.has("waste_step")) {
            s.problem(
                    Rule.DESIGN_VALUE,
                    "waste_step",
                    "",
                    "waste_step goes with method = \"best_value\": by the lists of lengths no piece is left between"
                            + " logs");
        }
        s.close();
        return read;
    }

    private Optional<Scaling> scaling(Section s) {
        Optional<LogRule> rule = s.choice("rule", Options.of(LogRule.values(), LogRule::id));
        Diameters diameters = word(s, "diameters", Diameters.values(), Diameters::id, Diameters.NEAREST_INCH);
        Lengths lengths = word(s, "lengths", Lengths.values(), Lengths::id, Lengths.FOOT_DOWN);
        Figures figures = word(s, "figures", Figures.values(), Figures::id, Figures.AS_TABLED);
        OptionalDouble piece = s.number("longest_piece", Range.TWO_OR_MORE);
        if (!s.has("rule")) {
            List.of("diameters", "lengths", "figures", "longest_piece").stream()
                    .filter(s::has)
                    .forEach(k -> s.problem(
                            Rule.DESIGN_VALUE,
                            k,
                            "",
                            k + " says how a log rule is used; name the rule too, or take " + k + " out"));
        }
        double pieceM = piece.isPresent() ? metres(piece.getAsDouble()) : LONGEST_PIECE_M;
        return rule.map(r -> new Scaling(r, diameters, lengths, figures, pieceM));
    }

    private void checkComplete(Section root, Section logs, List<Section> products) {
        if (!root.has("taper")) {
            logs.problem(
                    Rule.DESIGN_MISSING,
                    "taper",
                    "",
                    "[logs] needs a stem profile: write [taper.CODE] for each species, a group or \"*\"");
        }
        if (products.isEmpty()) {
            logs.problem(
                    Rule.DESIGN_MISSING,
                    "product",
                    "",
                    "[logs] needs a [[product]] table or more: what logs are cut for, and how long");
        }
        boolean best = settings.filter(s -> s.method() == Method.BEST_VALUE).isPresent();
        if (best && !root.has("prices") && !root.has("price")) {
            logs.problem(
                    Rule.DESIGN_VALUE,
                    "method",
                    Method.BEST_VALUE.id(),
                    "the best value needs [prices] and [[price]] tables; without prices write method = \"lengths\"");
        }
    }

    private double usual(double feet, double metres) {
        return units == UnitSystem.US ? feet : metres;
    }

    private double metres(double written) {
        return units.length().convert(written, Unit.METRE);
    }

    private static <T> T word(Section s, String key, T[] values, Function<T, String> id, T usual) {
        return s.choice(key, Options.of(values, id)).orElse(usual);
    }
}
