package quadmean.report;

import java.util.List;
import quadmean.cruise.CruiseResult;

/** Trees worth measuring again, in the report. */
final class RemeasureSection {
    private static final int MOST = 12;

    private RemeasureSection() {}

    static String markup(CruiseResult result) {
        Html html = new Html().section("remeasure", "Trees to measure again");
        if (result.remeasure().isEmpty()) {
            return html.element("p", "No reading is in doubt.").endSection().toString();
        }
        html.element(
                "p",
                "Most harmful first: by what the doubt does to the volume of the whole stand, not by the doubt alone."
                        + " remeasure.html is the list as a sheet for the crew.");
        int all = result.remeasure().size();
        String caption = all > MOST
                ? "The first " + MOST + " of " + Rounding.count(all) + " trees; all are in remeasure.csv"
                : "Trees whose readings are in doubt";
        html.raw(RemeasureTable.markup(result, MOST, caption, List.of()));
        html.raw(RemeasureTable.legend(result, MOST));
        return html.endSection().toString();
    }
}
