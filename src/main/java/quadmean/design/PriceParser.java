package quadmean.design;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quadmean.model.Price;
import quadmean.model.Price.PriceUnit;
import quadmean.model.PriceList;
import quadmean.model.Product;
import quadmean.model.Rule;

/** Reads {@code [prices]} and {@code [[price]]}. */
final class PriceParser {
    private PriceParser() {}

    static Optional<PriceList> parse(Section root, CodeCheck codes, List<Product> products) {
        boolean headed = root.has("prices");
        List<Section> sections = root.tableList("price");
        if (!headed && sections.isEmpty()) {
            return Optional.empty();
        }
        List<Price> prices = prices(sections, codes, products);
        if (!headed) {
            root.problem(
                    Rule.DESIGN_MISSING,
                    "price",
                    "",
                    "[[price]] needs a table [prices] with currency, source and standing");
            return Optional.empty();
        }
        Section s = root.table("prices");
        if (sections.isEmpty()) {
            s.problem(Rule.DESIGN_MISSING, "currency", "", "[prices] needs a [[price]] table or more");
        }
        PriceList list =
                new PriceList(s.requiredText("currency"), s.text("date").orElse(""), prices, TaperParser.provenance(s));
        s.close();
        return Optional.of(list);
    }

    private static List<Price> prices(List<Section> sections, CodeCheck codes, List<Product> products) {
        Set<String> known = new LinkedHashSet<>();
        products.forEach(p -> known.add(p.code()));
        Set<List<String>> seen = new HashSet<>();
        List<Price> prices = new ArrayList<>();
        for (Section s : sections) {
            Price price = price(s);
            codes.checkOrRest(s, "species", price.species());
            if (!known.contains(price.product()) && !price.product().isEmpty()) {
                String hint = Nearest.to(price.product(), known)
                        .map(c -> "; did you mean \"" + c + "\"?")
                        .orElse("; write a [[product]] with this code, or take the price out");
                s.problem(
                        Rule.DESIGN_VALUE,
                        "product",
                        price.product(),
                        "there is no product \"" + price.product() + "\"" + hint);
            }
            if (!seen.add(List.of(price.product(), price.species()))) {
                s.problem(
                        Rule.DESIGN_VALUE,
                        "product",
                        price.product(),
                        "two prices for \"" + price.product() + "\" of species \"" + price.species()
                                + "\"; take one out");
            }
            s.close();
            prices.add(price);
        }
        return prices;
    }

    private static Price price(Section s) {
        return new Price(
                s.requiredText("product"),
                s.text("species").orElse(CodeCheck.REST),
                s.requiredNumber("amount", Range.NOT_NEGATIVE),
                s.requiredChoice("per", Options.of(PriceUnit.values(), PriceUnit::id))
                        .orElse(PriceUnit.CUBIC_METRE));
    }
}
