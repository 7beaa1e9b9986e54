package quadmean.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import quadmean.chart.ChartSet;
import quadmean.chart.Wording;
import quadmean.cruise.EstateResult;
import quadmean.estimate.EstateSpread;
import quadmean.estimate.EstimateRow;

/** The report of an estate: one page that needs nothing else, and that does not grow with the number of stands. */
final class EstatePage {
    private final EstateResult result;
    private final EstateSpread spread;
    private final ChartSet charts;
    private final ShownRows shown;
    private final String level;

    private EstatePage(EstateResult result, EstateSpread spread, ChartSet charts) {
        this.result = result;
        this.spread = spread;
        this.charts = charts;
        this.shown = ShownRows.of(result);
        this.level = Wording.confidence(result.estimate().confidence());
    }

    static Content of(EstateResult result, EstateSpread spread, ChartSet charts) {
        return out -> out.write(new EstatePage(result, spread, charts).page().getBytes(StandardCharsets.UTF_8));
    }

    private String page() throws IOException {
        Html html = HtmlReport.begin("Estate report: " + result.design().name());
        html.raw(EstateHeadline.markup(result)).raw(contents());
        estate(html);
        html.raw(EstateExtent.markup(result));
        species(html);
        if (hasStrata()) {
            strata(html);
        }
        html.raw(ChartSection.markup(charts))
                .raw(StandsSection.markup(result, spread))
                .raw(EstateCurvesSection.markup(result))
                .raw(VolumeSection.markup(
                        result.design(), result.used(), result.used().volumes()))
                .raw(ProblemSection.counts(result))
                .raw(EstateMethods.markup(result))
                .raw(Cautions.markup());
        html.raw("</main>\n<footer>")
                .text(
                        "Quadmean estate report. Every number here stands unrounded in estimate.json, every stand in stands.csv.");
        return html.raw("</footer>\n</body>\n</html>\n").toString();
    }

    private String contents() {
        List<String> parts =
                new ArrayList<>(List.of("estate", "Estate", "extent", "Stands and plots", "species", "Species"));
        if (hasStrata()) {
            parts.addAll(List.of("strata", "Strata"));
        }
        parts.addAll(List.of("charts", "Charts", "stands", "Stand by stand", "heights-section", "Heights"));
        parts.addAll(List.of("volume", "Volume equations", "rows", "Rows and problems", "methods", "Methods"));
        parts.addAll(List.of("limits", "Limits", "safety", "Safety"));
        Html html = new Html().raw("<nav aria-label=\"Contents\">");
        for (int i = 0; i < parts.size(); i += 2) {
            html.raw("<a href=\"#" + parts.get(i) + "\">")
                    .text(parts.get(i + 1))
                    .raw("</a> ");
        }
        return html.raw("</nav>\n").toString();
    }

    private boolean hasStrata() {
        return !result.estimate().strata().isEmpty();
    }

    private void estate(Html html) {
        html.section("estate", "The whole estate");
        html.raw(FullTable.markup(
                shown,
                "Estimates for the estate, all species",
                r -> isAll(r.stratum()) && isAll(r.species()),
                r -> ""));
        result.estimate().notes().forEach(note -> html.element("p", "notes", note));
        result.notes().forEach(note -> html.element("p", "notes", note));
        html.endSection();
    }

    private void species(Html html) {
        html.section("species", "By species");
        Predicate<EstimateRow> rows = r -> isAll(r.stratum());
        html.raw(CompactTable.markup(
                shown,
                "Estimates by species, with sampling error at " + level + " confidence",
                rows,
                CompactTable.By.SPECIES));
        html.details("Every number by species, in both unit systems");
        html.raw(FullTable.markup(
                shown,
                "Estimates by species",
                rows.and(r -> !isAll(r.species())),
                r -> Names.species(result.design(), r.species())));
        html.endDetails().endSection();
    }

    private void strata(Html html) {
        html.section("strata", "By stratum");
        html.raw(CompactTable.markup(
                shown,
                "Estimates by stratum, with sampling error at " + level + " confidence",
                r -> isAll(r.species()),
                CompactTable.By.STRATUM));
        html.details("Every number by stratum and species, in both unit systems");
        html.raw(FullTable.markup(
                shown,
                "Estimates by stratum and species",
                r -> !isAll(r.stratum()),
                r -> Names.stratum(result.design(), r.stratum()) + ", "
                        + (isAll(r.species()) ? "all species" : Names.species(result.design(), r.species()))));
        html.endDetails().endSection();
    }

    private static boolean isAll(String code) {
        return code.equals(EstimateRow.ALL);
    }
}
