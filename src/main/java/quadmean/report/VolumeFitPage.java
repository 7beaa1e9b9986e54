package quadmean.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import quadmean.chart.ChartSet;
import quadmean.chart.Picture;
import quadmean.model.FelledData;
import quadmean.model.RowCount;
import quadmean.units.UnitSystem;
import quadmean.volume.FelledSections;
import quadmean.volume.VolumeFit;
import quadmean.volume.VolumeFitGroup;
import quadmean.volume.VolumeFits;

/** Fitted volume equations on one page that needs nothing else. */
final class VolumeFitPage {
    private static final List<String> METHOD = List.of(
            "Each form is fitted by linear least squares on the scale that makes it linear. Weights 1/(D²H)² hold where the"
                    + " scatter of volumes grows in proportion to D²H; they apply to the forms fitted in volume itself.",
            "The leave-one-out error is the root mean square of each tree's volume minus what the fit without that tree"
                    + " predicts, in volume for every form, so that forms compare. A fit on ln V is brought back with the"
                    + " factor exp(σ²/2) (Baskerville 1972, from memory); the Honer form is not corrected. Its bias stands"
                    + " in the tables.",
            "R² is given where it is of V or ln V with an intercept and equal weights; the two do not compare with each"
                    + " other. Residual standard deviations are on the scale of the fit.",
            "An equation serves trees of the species, region and sizes that it was fitted to. How the felled trees were"
                    + " chosen, and how their volumes were measured, bounds what it is worth more than any number here.");

    private final VolumeFits fits;
    private final ChartSet charts;
    private final UnitSystem units;
    private final Optional<FelledSections> sections;

    private VolumeFitPage(VolumeFits fits, ChartSet charts, Optional<FelledSections> sections) {
        this.sections = sections;
        this.fits = fits;
        this.charts = charts;
        this.units = fits.settings().units();
    }

    static Content of(VolumeFits fits, ChartSet charts, Optional<FelledSections> sections) {
        VolumeFitPage page = new VolumeFitPage(fits, charts, sections);
        return out -> out.write(page.markup().getBytes(StandardCharsets.UTF_8));
    }

    private String markup() throws IOException {
        FelledData data = fits.data();
        Html html = HtmlReport.begin("Tree volume equations: " + data.file());
        html.raw("<header class=\"head\">\n");
        html.element("p", "kind", "Tree volume equations fitted to felled trees");
        html.element("h1", data.file());
        html.element(
                "p",
                "where",
                Headline.count(data.trees().size(), "tree") + "; " + "columns " + String.join(", ", data.columns()));
        html.raw("</header>\n");
        fits.groups().forEach(g -> answers(html, g));
        pictures(html);
        sections.ifPresent(s -> SectionsTable.section(html, s, units));
        fits.groups().forEach(g -> tables(html, g));
        html.section("design", "For a design");
        html.element("p", "Also in volume.toml; paste it into the design of a cruise.");
        html.code(VolumeFitToml.text(fits)).endSection();
        rows(html, data);
        html.section("method", "Methods").raw("<ul>\n");
        METHOD.forEach(m -> html.element("li", m));
        html.raw("</ul>\n").endSection();
        html.raw("</main>\n<footer>")
                .text("Quadmean tree volume equations. Every number here stands unrounded in fit-volume.json.");
        return html.raw("</footer>\n</body>\n</html>\n").toString();
    }

    private void answers(Html html, VolumeFitGroup group) {
        html.raw("<div class=\"answers\">\n");
        html.raw("<div class=\"answer\">\n").element("h2", VolumeFitWords.name(group));
        VolumeFit best = group.best().orElse(null);
        if (best == null) {
            html.element("p", "mid", "No equation").raw("</div>\n");
        } else {
            html.element("p", "mid", best.form().formula());
            html.element("p", "small", VolumeFitWords.coefficients(best));
            html.raw("</div>\n<div class=\"answer\">\n").element("h2", "How far off for one tree");
            html.element("p", "mid", VolumeFitWords.volume(best.leaveOneOutM3(), units));
            html.element(
                    "p",
                    "small",
                    "leave-one-out error, or " + Rounding.percent(best.leaveOneOutPercent())
                            + " of each tree's volume (root mean squares)");
            html.raw("</div>\n");
        }
        html.raw("<div class=\"answer\">\n").element("h2", "Fitted to");
        html.element("p", "mid", Headline.count(group.trees().size(), "tree"));
        html.element("p", "small", VolumeFitWords.range(group, units));
        html.raw("</div>\n</div>\n");
        VolumeFitWords.warnings(group)
                .forEach(w -> html.element("p", "warn", VolumeFitWords.name(group) + ": " + w + "."));
    }

    private void pictures(Html html) {
        html.section("charts", "Charts");
        if (!charts.missing().isEmpty()) {
            html.element("p", "warn", charts.missing());
        } else if (charts.pictures().isEmpty()) {
            html.element("p", "There is no equation to draw.");
        }
        html.raw("<div class=\"charts\">\n");
        for (Picture picture : charts.pictures()) {
            html.raw(ChartSection.figure(picture));
        }
        html.raw("</div>\n").endSection();
    }

    private void tables(Html html, VolumeFitGroup group) {
        VolumeFitTables tables = new VolumeFitTables(group, units);
        html.section("group-" + (fits.groups().indexOf(group) + 1), VolumeFitWords.name(group) + ": every form");
        html.raw(tables.league()).raw(tables.coefficients()).raw(tables.bias());
        html.raw(InfluentialTrees.markup(group, units)).endSection();
    }

    private static void rows(Html html, FelledData data) {
        RowCount rows = data.rows();
        html.section("rows", "Rows and problems");
        html.element(
                "p",
                Rounding.count(rows.in()) + " rows read = " + Rounding.count(rows.used()) + " used + "
                        + Rounding.count(rows.dropped()) + " dropped.");
        if (!data.problems().isEmpty()) {
            html.raw(ProblemSection.list(data.problems()));
        }
        html.endSection();
    }
}
