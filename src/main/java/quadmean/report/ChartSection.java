package quadmean.report;

import quadmean.chart.ChartSet;
import quadmean.chart.Picture;

/** The charts. */
final class ChartSection {
    private ChartSection() {}

    static String markup(ChartSet charts) {
        Html html = new Html().section("charts", "Charts");
        if (!charts.missing().isEmpty()) {
            html.element("p", "warn", charts.missing());
        } else if (charts.pictures().isEmpty()) {
            html.element("p", "There is nothing to draw.");
        }
        html.raw("<div class=\"charts\">\n");
        for (Picture picture : charts.pictures()) {
            html.raw(figure(picture));
        }
        html.raw("</div>\n");
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
