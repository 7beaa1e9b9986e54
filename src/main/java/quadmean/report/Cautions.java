package quadmean.report;

import java.util.List;
import java.util.stream.Stream;

/** What can hurt people in this work, and what the report must not be taken for. */
final class Cautions {
    private static final List<String> SAFETY = List.of(
            "Look up before you stop at a plot: dead tops, hung limbs, snags and leaning trees come down without warning."
                    + " Measure from outside their reach, or leave the tree and note why.",
            "Stay out of the stand in strong wind, lightning, heavy snow or ice on the crowns, and after fire or flood"
                    + " until someone who knows has judged it.",
            "On steep, wet or loose ground choose the safe way over the straight line. A plot that cannot be reached in"
                    + " safety is noted as such, never moved to where walking is easy.",
            "Do not work alone where you can help it. Leave your route and return time with someone, agree on check-in"
                    + " times and on what happens when one is missed; carry first aid and a means of calling that works"
                    + " there.",
            "Wear head, eye and foot protection. Know the season's hazards: heat and cold, stinging insects, ticks,"
                    + " large animals, hunting.",
            "More plots mean more days in the woods. Plan them for daylight and weather.");

    /** Common practice, no source, as all of these. */
    private static final List<String> CREW = List.of(
            "Stay two tree lengths or more away from power lines, from trees being felled and from machines at work.",
            "Look where you step: stand still to sight and to write, never walk backward, and keep the instrument off the"
                    + " sun.",
            "Where the slope or the footing makes you doubt, do not go on alone: mark the plot as not reached.",
            "The line of the tract is not the crew's to decide. Do not cross onto other land without leave.");

    private static final List<String> LIMITS = List.of(
            "An estimate is no appraisal and no scale: it says what probably stands, not what it is worth, and not what a"
                    + " mill will measure.",
            "It is a sample's answer. Limits cover the chance of where plots fell; they do not cover wrong boundaries or"
                    + " areas, missed or double-counted trees, misread instruments, wrong species, hidden defect, or"
                    + " equations made for other trees.",
            "It speaks of the day of the cruise. Growth, death, theft, storm and cutting since are not in it.",
            "Where local rules ask for a licensed or registered forester, surveyor or appraiser, their judgement and those"
                    + " rules come before this report.");

    private Cautions() {}

    static String markup() {
        Html html = new Html().section("limits", "What this estimate is not");
        list(html, LIMITS);
        return html.endSection().toString() + safety();
    }

    /** The cautions alone, for sheets that go to the woods. */
    static String safety() {
        Html html = new Html().section("safety", "Safety in the woods");
        html.element("p", "These cautions are no training. Local safety codes and your employer's rules come first.");
        list(html, SAFETY);
        return html.endSection().toString();
    }

    /** The same with what concerns a crew that lays out plots and sights heights. */
    static String forCrew() {
        Html html = new Html().element("h3", "Before you go, and at every stop");
        html.element("p", "These cautions are no training.");
        list(
                html,
                Stream.concat(SAFETY.stream().limit(SAFETY.size() - 1), CREW.stream())
                        .toList());
        return html.toString();
    }

    private static void list(Html html, List<String> items) {
        html.raw("<ul>\n");
        items.forEach(item -> html.element("li", item));
        html.raw("</ul>\n");
    }
}
