package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.WoodUsed;
import quadmean.model.BarkSpec;
import quadmean.model.LogSettings;
import quadmean.model.PriceList;
import quadmean.model.Product;
import quadmean.model.Provenance;
import quadmean.model.Scaling;
import quadmean.model.TaperSpec;

/** The part of {@code estimate.json} about logs, prices, board feet, weight and carbon: with what they were worked out. */
final class JsonWood {
    private JsonWood() {}

    /** Tables that the design does not have are left out. */
    static ObjectNode of(CruiseResult result) {
        WoodUsed used = result.used();
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        result.design().wood().logs().ifPresent(logs -> logs(node.putObject("logs"), logs));
        WoodStatement.of(result).forEach(s -> node.withArray("statement").add(s));
        used.tapers().forEach((s, t) -> taper(node.withArray("tapers").addObject(), s, t));
        used.boardFeet()
                .forEach((s, b) -> JsonEquations.put(node.withArray("boardFeet").addObject(), s, b));
        used.prices().ifPresent(p -> prices(node.putObject("prices"), p));
        used.greenWeights().forEach((s, g) -> {
            ObjectNode entry = node.withArray("greenWeights").addObject();
            entry.put("species", s).put("statedFor", g.code()).put("kgPerM3", g.kgPerM3());
            entry.put("lbPerFt3", WoodSources.lbPerFt3(g.kgPerM3()));
            put(entry, g.provenance());
        });
        used.biomass().forEach((s, b) -> {
            ObjectNode entry = node.withArray("biomass").addObject();
            entry.put("species", s).put("statedFor", b.code()).put("component", b.component());
            entry.put("form", b.form().id()).put("formula", b.form().formula());
            b.coefficients().forEach(entry.putArray("coefficients")::add);
            JsonEquations.putRange(entry, b.range());
            JsonNumbers.putText(entry, "library", b.library());
            put(entry, b.provenance());
        });
        used.carbon().ifPresent(c -> put(node.putObject("carbon").put("share", c.share()), c.provenance()));
        return node;
    }

    private static void logs(ObjectNode node, LogSettings logs) {
        node.put("method", logs.method().id());
        logs.scaling().ifPresent(s -> scaling(node.putObject("scaling"), s));
        node.put("cubic", logs.cubic().id());
        node.put("cubicFormula", logs.cubic().formula());
        node.put("stumpM", logs.stumpM());
        node.put("trimM", logs.trimM());
        if (logs.method() == LogSettings.Method.BEST_VALUE) {
            node.put("wasteStepM", logs.wasteStepM());
        }
        ArrayNode products = node.putArray("products");
        logs.products().forEach(p -> product(products.addObject(), p));
    }

    private static void scaling(ObjectNode node, Scaling s) {
        node.put("rule", s.rule().id());
        node.put("label", s.rule().label());
        node.put("diameters", s.diameters().id());
        node.put("lengths", s.lengths().id());
        node.put("figures", s.figures().id());
        node.put("longestPieceM", s.longestPieceM());
        put(node, new Provenance(s.rule().source(), s.rule().standing()));
    }

    private static void product(ObjectNode node, Product p) {
        node.put("code", p.code());
        node.put("name", p.name());
        p.species().stream().sorted().forEach(node.withArray("species")::add);
        p.grades().stream().sorted().forEach(node.withArray("grades")::add);
        p.lengthsM().forEach(node.putArray("lengthsM")::add);
        node.put("minSmallEndCm", p.minSmallEndCm());
        if (Double.isFinite(p.maxLargeEndCm())) {
            node.put("maxLargeEndCm", p.maxLargeEndCm());
        }
        node.put("measure", p.measure().id());
        node.put("defectPercent", 100 * p.defect());
    }

    private static void taper(ObjectNode node, String species, TaperSpec t) {
        node.put("species", species);
        node.put("statedFor", t.code());
        node.put("form", t.form().id());
        node.put("formula", t.form().formula());
        ObjectNode coefficients = node.putObject("coefficients");
        for (int i = 0; i < t.coefficients().size(); i++) {
            coefficients.put(t.form().coefficients().get(i), t.coefficients().get(i));
        }
        put(node, t.provenance());
        node.put("formSource", t.form().source());
        t.bark().ifPresent(b -> bark(node.putObject("bark"), b));
    }

    private static void bark(ObjectNode node, BarkSpec b) {
        node.put("a", b.a());
        node.put("b", b.b());
        node.put("unit", b.unit().symbol());
        put(node, b.provenance());
    }

    private static void prices(ObjectNode node, PriceList list) {
        node.put("currency", list.currency());
        JsonNumbers.putText(node, "date", list.date());
        put(node, list.provenance());
        ArrayNode prices = node.putArray("prices");
        list.prices()
                .forEach(p -> prices.addObject()
                        .put("product", p.product())
                        .put("species", p.species())
                        .put("amount", p.amount())
                        .put("per", p.unit().id()));
    }

    private static void put(ObjectNode node, Provenance provenance) {
        node.put("source", provenance.source());
        node.put("standing", provenance.standing().label());
    }
}
