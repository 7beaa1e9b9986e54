package quadmean.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import quadmean.cruise.CruiseResult;

/** The list of trees to measure again as a sheet for the crew, made for printing. */
final class RemeasurePage {
    /** More than a crew does in some days. */
    private static final int MOST = 60;

    private RemeasurePage() {}

    static Content of(CruiseResult result) {
        return out -> out.write(page(result).getBytes(StandardCharsets.UTF_8));
    }

    private static String page(CruiseResult result) throws IOException {
        Html html = HtmlReport.begin("To measure again: " + result.design().name());
        html.raw("<header class=\"head\">\n");
        html.element("p", "kind", "For the crew");
        html.element("h1", "To measure again: " + result.design().name());
        html.element(
                "p",
                "where",
                "Most harmful first: by what the doubt does to the volume of the whole stand. Start at the top, and stop"
                        + " when the effect is no longer worth the walk.");
        html.raw("</header>\n");
        if (result.remeasure().isEmpty()) {
            html.element("p", "No tree needs measuring again.");
        } else {
            int all = result.remeasure().size();
            String caption = all > MOST ? "The first " + MOST + " of " + all + " trees" : "Trees to measure again";
            html.section("trees", "Trees");
            html.raw(RemeasureTable.markup(result, MOST, caption, List.of("New reading", "By, date")));
            html.raw(RemeasureTable.legend(result, MOST)).endSection();
        }
        html.element(
                "p",
                "Stand about one tree height away where the tip can be seen; turn and walk there, never backward while"
                        + " sighting. Read tip and base twice. On sloping ground give the slope along the tape.");
        html.raw(Cautions.safety());
        html.raw("</main>\n<footer>").text("Also in remeasure.csv, with all digits.");
        return html.raw("</footer>\n</body>\n</html>\n").toString();
    }
}
