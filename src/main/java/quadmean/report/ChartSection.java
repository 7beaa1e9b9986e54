package quadmean.report;

import java.util.List;
import java.util.Optional;
import quadmean.chart.ChartSet;
import quadmean.chart.Picture;

/** The charts. */
final class ChartSection {
    private ChartSection() {}

    private static final String NO_MAP =
            "There is no map of the plots: the design has no plot list with columns longitude"
                    + " and latitude, as the plots.csv of a layout has.";

    /** The section of a page that has no map to show. */
    static String markup(ChartSet charts) {
        return section(charts, List.of(), "");
    }

    /**
     * The section of a cruise.
     *
     * @param map the map of the plots, if anybody says where they are
     */
    static String markup(ChartSet charts, Optional<Picture> map) {
        return section(charts, map.stream().toList(), map.isEmpty() ? NO_MAP : "");
    }

    private static String section(ChartSet charts, List<Picture> more, String note) {
        Html html = new Html().section("charts", "Charts");
        if (!charts.missing().isEmpty()) {
            html.element("p", "warn", charts.missing());
        } else if (charts.pictures().isEmpty() && more.isEmpty()) {
            html.element("p", "There is nothing to draw.");
        }
        html.raw("<div class=\"charts\">\n");
        charts.pictures().forEach(p -> html.raw(figure(p)));
        more.forEach(p -> html.raw(figure(p)));
        html.raw("</div>\n");
        if (!note.isEmpty()) {
            html.element("p", "notes", note);
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
