package quadmean.report;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.Part;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/** Logs, products, value, weight and carbon, each with its sampling error. */
final class WoodSection {
    private static final Set<Attribute> WEIGHT =
            EnumSet.of(Attribute.GREEN_WEIGHT, Attribute.BIOMASS, Attribute.CARBON);

    private final CruiseResult result;
    private final String level;
    private final List<Attribute> attributes;

    private WoodSection(CruiseResult result) {
        this.result = result;
        this.level = Wording.confidence(result.estimate().confidence());
        this.attributes = result.design().attributes();
    }

    static String markup(CruiseResult result) {
        WoodSection section = new WoodSection(result);
        Html html = new Html();
        if (hasLogs(result)) {
            section.products(html);
        }
        if (section.attributes.contains(Attribute.VALUE)) {
            section.value(html);
        }
        if (hasWeight(result)) {
            section.weight(html);
        }
        return html.toString();
    }

    static boolean hasLogs(CruiseResult result) {
        return result.design().attributes().stream().anyMatch(Attribute::isOfLogs);
    }

    static boolean hasWeight(CruiseResult result) {
        return result.design().attributes().stream().anyMatch(WEIGHT::contains);
    }

    private void products(Html html) {
        html.section("products", "Logs and products");
        WoodStatement.of(result).forEach(s -> html.element("p", s));
        Predicate<EstimateRow> logs = r -> r.attribute().isOfLogs() && isAll(r.stratum());
        Predicate<EstimateRow> all = logs.and(r -> isAll(r.species()));
        for (Basis basis : List.of(Basis.PER_AREA, Basis.TOTAL)) {
            table(
                    html,
                    "by product, " + (basis == Basis.TOTAL ? "whole stand" : "per unit area"),
                    all.and(r -> r.part().log() == 0 && r.basis() == basis),
                    CompactTable.By.PRODUCT);
        }
        table(
                html,
                "by species, whole stand",
                logs.and(r -> r.part().equals(Part.ALL) && r.basis() == Basis.TOTAL),
                CompactTable.By.SPECIES);
        table(
                html,
                "by place in the stem, per unit area",
                all.and(r -> isAll(r.part().product()) && r.basis() == Basis.PER_AREA),
                CompactTable.By.LOG);
        html.raw(CompactTable.standings(ShownRows.of(result), all));
        html.details("Every number by product and species, and by log and species, in both unit systems");
        html.raw(FullTable.markup(
                ShownRows.of(result),
                "Logs by product or place, and species",
                logs.and(r -> !r.part().equals(Part.ALL)),
                this::first));
        html.endDetails().endSection();
    }

    private void table(Html html, String by, Predicate<EstimateRow> rows, CompactTable.By kind) {
        html.raw(CompactTable.withoutStandings(
                ShownRows.of(result), "Logs " + by + ", with sampling error at " + level + " confidence", rows, kind));
    }

    private String first(EstimateRow row) {
        Part part = row.part();
        String what = part.log() == 0 ? Names.product(result.design(), part.product()) : "Log " + part.place();
        return what + ", " + Names.species(result.design(), row.species());
    }

    private void value(Html html) {
        html.section("value", "What the logs would fetch");
        html.element(
                "p",
                "warn",
                "Prices times estimated net amounts, and no appraisal: nothing is taken off for"
                        + " felling, hauling, roads, taxes or risk, and no log has been measured.");
        html.raw(PriceTable.markup(result));
        html.raw(FullTable.markup(
                ShownRows.of(result),
                "Value of logs, all species and products",
                r -> r.attribute() == Attribute.VALUE
                        && isAll(r.stratum())
                        && isAll(r.species())
                        && r.part().equals(Part.ALL),
                r -> ""));
        html.endSection();
    }

    private void weight(Html html) {
        html.section("weight", "Weight and carbon");
        WoodStatement.weight(result).forEach(s -> html.element("p", s));
        html.raw(CompactTable.markup(
                ShownRows.of(result),
                "Weight and carbon by species, with sampling error at " + level + " confidence",
                r -> WEIGHT.contains(r.attribute()) && isAll(r.stratum()),
                CompactTable.By.SPECIES));
        html.endSection();
    }

    private static boolean isAll(String code) {
        return code.equals(EstimateRow.ALL);
    }
}
