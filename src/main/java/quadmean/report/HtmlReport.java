package quadmean.report;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import quadmean.chart.ChartSet;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.PlotResult;

/** The report for people: one page that needs nothing else. */
final class HtmlReport {
    private static final String STYLE = "report.css";
    private static final String SCRIPT = "sort.js";

    private HtmlReport() {}

    static Content of(CruiseResult result) {
        return of(result, List.of(), ChartSet.of(result));
    }

    static Content of(CruiseResult result, List<PlotResult> plots, ChartSet charts) {
        return out -> out.write(page(result, plots, charts).getBytes(StandardCharsets.UTF_8));
    }

    private static String page(CruiseResult result, List<PlotResult> plots, ChartSet charts) throws IOException {
        Html html = begin("Cruise report: " + result.design().name());
        html.raw(Headline.markup(result)).raw(contents(result));
        html.raw(EstimateTables.markup(result))
                .raw(StatisticSection.markup(result))
                .raw(ClassTables.markup(result))
                .raw(WoodSection.markup(result))
                .raw(ChartSection.markup(charts, PlotMap.picture(result, plots)));
        html.raw(BudgetSection.markup(result));
        html.raw(HeightSection.markup(result)).raw(VolumeSection.markup(result));
        html.raw(ProblemSection.markup(result))
                .raw(RemeasureSection.markup(result))
                .raw(VarianceSection.markup(result))
                .raw(ThreePSection.markup(result))
                .raw(MethodSection.markup(result))
                .raw(Cautions.markup());
        html.raw("</main>\n<footer>")
                .text("Quadmean cruise report. Every number here stands unrounded in estimate.json.");
        return html.raw("</footer>\n</body>\n</html>\n").toString();
    }

    /** The head of a page with the style and the script of the house, up to and with the start of its main part. */
    static Html begin(String title) throws IOException {
        Html html = new Html().raw("""
                <!DOCTYPE html>
                <html lang="en">
                <head>
                <meta charset="utf-8">
                <meta name="viewport" content="width=device-width, initial-scale=1">
                <meta name="color-scheme" content="light dark">
                """);
        html.element("title", title);
        html.raw("<style>\n").raw(resource(STYLE)).raw("</style>\n");
        html.raw("<script>\n").raw(resource(SCRIPT)).raw("</script>\n</head>\n<body>\n");
        html.raw("<div class=\"tape\" aria-hidden=\"true\"></div>\n<main>\n");
        return html;
    }

    private static String contents(CruiseResult result) {
        Html html = new Html().raw("<nav aria-label=\"Contents\">");
        link(html, "stand", "Stand");
        link(html, "species", "Species");
        if (result.design().strata().size() > 1) {
            link(html, "strata", "Strata");
        }
        if (!result.estimate().structure().statistics().isEmpty()) {
            link(html, "statistics", "Stand statistics");
        }
        if (!result.estimate().structure().classes().isEmpty()) {
            link(html, "tables", "Stand and stock tables");
        }
        if (WoodSection.hasLogs(result)) {
            link(html, "products", "Logs and products");
        }
        if (WoodSection.hasWeight(result)) {
            link(html, "weight", "Weight");
        }
        link(html, "charts", "Charts");
        link(html, "budget", "Error budget");
        link(html, "heights-section", "Heights");
        link(html, "volume", "Volume equations");
        link(html, "rows", "Rows and problems");
        link(html, "remeasure", "Measure again");
        if (VarianceSection.isShown(result)) {
            link(html, "variances", "Other variances");
        }
        if (!result.estimate().otherEstimates().isEmpty()) {
            link(html, "threep", "Both 3P estimates");
        }
        link(html, "methods", "Methods");
        link(html, "limits", "Limits");
        link(html, "safety", "Safety");
        return html.raw("</nav>\n").toString();
    }

    private static void link(Html html, String id, String words) {
        html.raw("<a href=\"#" + id + "\">").text(words).raw("</a> ");
    }

    private static String resource(String name) throws IOException {
        try (InputStream in = HtmlReport.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is not in the jar");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
