package quadmean.report;

import java.util.ArrayList;
import java.util.List;

/** The reasons for what is missing from a table, each listed once below it. */
final class Footnotes {
    private final List<String> reasons = new ArrayList<>();

    /** The mark that goes with a reason: {@code [1]}; empty without a reason. */
    String mark(String reason) {
        if (reason.isEmpty()) {
            return "";
        }
        if (!reasons.contains(reason)) {
            reasons.add(reason);
        }
        return " [" + (reasons.indexOf(reason) + 1) + "]";
    }

    /** The list of reasons; empty if there are none. */
    String markup() {
        if (reasons.isEmpty()) {
            return "";
        }
        Html html = new Html().raw("<p class=\"notes\">");
        for (int i = 0; i < reasons.size(); i++) {
            html.text("[" + (i + 1) + "] " + reasons.get(i) + ". ");
        }
        return html.raw("</p>\n").toString();
    }
}
