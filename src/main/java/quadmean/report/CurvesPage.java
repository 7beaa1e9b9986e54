package quadmean.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import quadmean.chart.ChartSet;
import quadmean.chart.Picture;
import quadmean.chart.Wording;
import quadmean.cruise.CurvesRun;
import quadmean.design.Design;

/** Height curves on one page that needs nothing else: what is used, plots, every form tried. */
final class CurvesPage {
    private CurvesPage() {}

    static Content of(CurvesRun.Result result, ChartSet charts) {
        return out -> out.write(page(result, charts).getBytes(StandardCharsets.UTF_8));
    }

    private static String page(CurvesRun.Result result, ChartSet charts) throws IOException {
        Design design = result.design();
        Html html = HtmlReport.begin("Height curves: " + design.name());
        html.raw("<header class=\"head\">\n");
        html.element("p", "kind", "Height-diameter curves");
        html.element("h1", design.name());
        long heights = result.trees().stream().filter(t -> t.height() != null).count();
        html.element(
                "p",
                "where",
                Headline.count(heights, "height") + " of "
                        + Headline.count(result.trees().size(), "tree"));
        html.raw("</header>\n");
        CurveTables tables = new CurveTables(result.curves(), design.units());
        html.section("used", "Curves in use").raw(tables.chosen()).endSection();
        pictures(html, result, charts);
        if (!result.more().isEmpty()) {
            html.section("more", "Which further heights would help most").element("p", AdviceTable.MEANING);
            html.raw(AdviceTable.markup(result.more(), design.units())).endSection();
        }
        if (!result.plan().isEmpty()) {
            html.section("plan", "How many heights a stand like this needs").element("p", AdviceTable.MEANING);
            html.raw(AdviceTable.plan(result.plan(), design.units())).endSection();
        }
        html.section("tried", "Every form tried").raw(tables.tried());
        rule(html, design);
        return html.endSection().raw("</main>\n</body>\n</html>\n").toString();
    }

    private static void pictures(Html html, CurvesRun.Result result, ChartSet charts) {
        html.section("plots", "Plots");
        if (!charts.missing().isEmpty()) {
            html.element("p", "warn", charts.missing());
        } else if (charts.pictures().isEmpty()) {
            html.element("p", "There is no curve to draw.");
        }
        html.element(
                "p",
                "Bands are pointwise at " + Wording.confidence(result.design().confidence())
                        + ": the inner says where the curve lies, the outer where a tree lies. Curves end where they are"
                        + " no longer judged, a quarter beyond the largest tree with a height.");
        html.raw("<div class=\"charts\">\n");
        for (Picture picture : charts.pictures()) {
            html.raw(ChartSection.figure(picture));
        }
        html.raw("</div>\n").endSection();
    }

    private static void rule(Html html, Design design) {
        html.element(
                "p",
                "Leave-one-out errors are linearised: the residual of each tree over one minus its leverage. The form with"
                        + " the smallest is used, or one with fewer parameters whose mean squared error is greater by no"
                        + " more than one standard error of the difference. Forms that did not converge, whose best"
                        + " parameters lie at infinity, or that fall, explode or go below breast height near the data are"
                        + " never used. Weights: "
                        + design.height().curves().weights().id() + ". Residuals say more"
                        + " than any of these numbers: look at the plots.");
    }
}
