package quadmean.design;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import quadmean.model.Product;
import quadmean.model.Product.Measure;
import quadmean.model.Rule;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Reads {@code [[product]]}. */
final class ProductParser {
    private final CodeCheck codes;
    private final UnitSystem units;
    /** Length that each log must exceed, in the length unit of the design. */
    private final double trim;

    ProductParser(CodeCheck codes, UnitSystem units, double trim) {
        this.codes = codes;
        this.units = units;
        this.trim = trim;
    }

    List<Product> parse(List<Section> sections) {
        List<Product> products = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (Section s : sections) {
            Product product = product(s);
            if (!product.code().isEmpty() && !seen.add(product.code())) {
                s.problem(Rule.DESIGN_VALUE, "code", product.code(), "two products have this code; rename one");
            }
            s.close();
            products.add(product);
        }
        return products;
    }

    private Product product(Section s) {
        String code = s.requiredText("code");
        List<String> species = s.texts("species");
        species.forEach(c -> codes.check(s, "species", c));
        double small = s.requiredNumber("min_small_end", Range.POSITIVE);
        OptionalDouble large = s.number("max_large_end", Range.POSITIVE);
        if (large.isPresent() && s.number("min_small_end", Range.POSITIVE).orElse(0) > large.getAsDouble()) {
            s.problem(
                    Rule.DESIGN_VALUE,
                    "min_small_end",
                    Section.show(small),
                    "no log is thinner at its large end than at its small end: min_small_end is at most max_large_end = "
                            + Section.show(large.getAsDouble()));
        }
        return new Product(
                code,
                s.text("name").orElse(code),
                Set.copyOf(species),
                Set.copyOf(s.texts("grades")),
                lengths(s),
                units.diameter().convert(small, Unit.CENTIMETRE),
                large.isPresent()
                        ? units.diameter().convert(large.getAsDouble(), Unit.CENTIMETRE)
                        : Double.POSITIVE_INFINITY,
                s.choice("measure", Options.of(Measure.values(), Measure::id)).orElse(Measure.BOARD_FEET),
                s.number("defect", Range.PERCENT_OR_ZERO, 0) / 100);
    }

    private List<Double> lengths(Section s) {
        List<Double> lengths = s.numbers("lengths", Range.HUNDREDTHS);
        if (!s.has("lengths") || s.isEmptyList("lengths")) {
            s.problem(
                    Rule.DESIGN_MISSING,
                    "lengths",
                    "",
                    "a product lists the lengths it is cut to, the one preferred most first, such as lengths = [16, 12]");
        }
        lengths.stream()
                .filter(l -> l <= trim)
                .forEach(l -> s.problem(
                        Rule.DESIGN_VALUE,
                        "lengths",
                        Section.show(l),
                        "a log of " + Section.show(l) + " " + units.length().symbol()
                                + " is not longer than its trim of " + Section.show(trim)
                                + "; write its length without trim, or a smaller logs.trim"));
        return lengths.stream().map(l -> units.length().convert(l, Unit.METRE)).toList();
    }
}
