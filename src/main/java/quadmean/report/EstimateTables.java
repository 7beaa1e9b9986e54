package quadmean.report;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.Part;
import quadmean.estimate.PlotsNeeded;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.Attribute;

/** The sections with estimates of the stand, its species and its strata. */
final class EstimateTables {
    /** What the tables of species and strata have a column for; what is made of the wood has tables of its own. */
    private static final Set<Attribute> TREES =
            EnumSet.of(Attribute.TREES, Attribute.BASAL_AREA, Attribute.VOLUME, Attribute.QUADRATIC_MEAN_DIAMETER);

    private final CruiseResult result;
    private final String level;

    private EstimateTables(CruiseResult result) {
        this.result = result;
        this.level = Wording.confidence(result.estimate().confidence());
    }

    static String markup(CruiseResult result) {
        EstimateTables tables = new EstimateTables(result);
        Html html = new Html();
        tables.stand(html);
        tables.species(html);
        if (result.design().strata().size() > 1) {
            tables.strata(html);
        }
        return html.toString();
    }

    private void stand(Html html) {
        html.section("stand", "The whole stand");
        html.raw(FullTable.markup(
                ShownRows.of(result),
                "Estimates for the stand, all species",
                r -> isWhole(r) && isAll(r.stratum()) && isAll(r.species()),
                r -> ""));
        html.raw(neededTable());
        html.raw(PlotsTable.markup(result));
        result.estimate().notes().forEach(note -> html.element("p", "notes", note));
        html.endSection();
    }

    private void species(Html html) {
        html.section("species", "By species");
        Predicate<EstimateRow> rows = r -> isWhole(r) && isAll(r.stratum());
        html.raw(CompactTable.markup(
                ShownRows.of(result),
                "Estimates by species, with sampling error at " + level + " confidence",
                rows.and(r -> TREES.contains(r.attribute())),
                CompactTable.By.SPECIES));
        html.details("Every number by species, in both unit systems");
        html.raw(FullTable.markup(
                ShownRows.of(result),
                "Estimates by species",
                r -> rows.test(r) && !isAll(r.species()),
                r -> Names.species(result.design(), r.species())));
        html.endDetails().endSection();
    }

    private void strata(Html html) {
        html.section("strata", "By stratum");
        Predicate<EstimateRow> rows = r -> isWhole(r) && isAll(r.species());
        html.raw(CompactTable.markup(
                ShownRows.of(result),
                "Estimates by stratum, with sampling error at " + level + " confidence",
                rows.and(r -> TREES.contains(r.attribute())
                        || r.attribute() == result.design().targetAttribute()),
                CompactTable.By.STRATUM));
        html.details("Every number by stratum and species, in both unit systems");
        html.raw(FullTable.markup(
                ShownRows.of(result),
                "Estimates by stratum and species",
                r -> isWhole(r) && !isAll(r.stratum()),
                r -> Names.stratum(result.design(), r.stratum())
                        + (isAll(r.species()) ? ", all species" : ", " + Names.species(result.design(), r.species()))));
        html.endDetails().endSection();
    }

    private String neededTable() {
        HtmlTable table = HtmlTable.of(
                "Plots needed for a sampling error of ±"
                        + Wording.percent(result.design().targetErrorPercent()) + " at " + level + " confidence",
                List.of(
                        Cell.text("Attribute"),
                        head("Sampling error now"),
                        head("Plots run"),
                        head("Plots needed"),
                        head("Still to run"),
                        Cell.text("Verdict")));
        Footnotes notes = new Footnotes();
        result.estimate()
                .needed()
                .forEach(n -> table.row(List.of(
                        Cell.text(Wording.capital(n.attribute().label())
                                + (n.attribute() == result.design().targetAttribute() ? " (target)" : "")
                                + notes.mark(unknown(n))),
                        Cell.number(Rounding.percent(n.achievedPercent())),
                        Cell.number(Rounding.count(n.plots())),
                        Cell.number(
                                n.needed().isPresent()
                                        ? Rounding.count(n.needed().getAsInt())
                                        : Rounding.UNKNOWN),
                        Cell.number(
                                n.more().isPresent() ? Rounding.count(n.more().getAsInt()) : Rounding.UNKNOWN),
                        Cell.text(Headline.verdict(n)))));
        return table.isEmpty() ? "" : table.markup() + notes.markup();
    }

    private String unknown(PlotsNeeded n) {
        boolean isKnown = n.needed().isPresent() && Double.isFinite(n.achievedPercent());
        return isKnown ? Wording.capital(n.remark()) : EstimateJson.unknown(result, n);
    }

    private static boolean isWhole(EstimateRow row) {
        return row.part().equals(Part.ALL);
    }

    private static boolean isAll(String code) {
        return code.equals(EstimateRow.ALL);
    }

    private static Cell head(String text) {
        return Cell.number(text);
    }
}
