package quadmean.report;

import java.util.Optional;
import quadmean.chart.ChartSet;
import quadmean.chart.Picture;

/** The charts. */
final class ChartSection {
    private ChartSection() {}

    private static final String NO_MAP =
            "There is no map of the plots: the design has no plot list with columns longitude"
                    + " and latitude, as the plots.csv of a layout has.";

    /**
     * The section.
     *
     * @param map the map of the plots, if anybody says where they are
     */
    static String markup(ChartSet charts, Optional<Picture> map) {
        Html html = new Html().section("charts", "Charts");
        if (!charts.missing().isEmpty()) {
            html.element("p", "warn", charts.missing());
        } else if (charts.pictures().isEmpty() && map.isEmpty()) {
            html.element("p", "There is nothing to draw.");
        }
        html.raw("<div class=\"charts\">\n");
        for (Picture picture : charts.pictures()) {
            html.raw(figure(picture));
        }
        map.ifPresent(m -> html.raw(figure(m)));
        html.raw("</div>\n");
        if (map.isEmpty()) {
            html.element("p", "notes", NO_MAP);
        }
        return html.endSection().toString();
    }

    static String figure(Picture picture) {
        return new Html()
                .raw("<figure id=\"" + Html.escape(picture.id()) + "\"><div role=\"img\" aria-label=\""
                        + Html.escape(picture.altText()) + "\">")
                .raw(picture.svg())
                .raw("</div>\n")
                .element("figcaption", picture.title())
                .raw("</figure>\n")
                .toString();
    }
}
