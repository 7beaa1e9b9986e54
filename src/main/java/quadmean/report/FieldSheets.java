package quadmean.report;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import quadmean.chart.Picture;
import quadmean.design.Design;
import quadmean.design.Paper;
import quadmean.layout.FieldTables;
import quadmean.layout.SheetSet;
import quadmean.model.PlotDesign;

/**
 * What a crew takes to the woods, as one page made for printing: cover with cautions, map, list of plots, tally forms, tables
 * for this design, how to take a height, and what to do at the boundary.
 */
public final class FieldSheets {
    private static final String STYLE = "sheets.css";

    private FieldSheets() {}

    /** The sheets of a design, with a map if one was drawn. */
    public static Content of(Design design, SheetSet set, Optional<Picture> map) {
        return out -> out.write(page(design, set, map).getBytes(StandardCharsets.UTF_8));
    }

    static String page(Design design, SheetSet set, Optional<Picture> map) throws IOException {
        FieldTables tables = FieldTables.of(design);
        Html html = new Html().raw("""
                <!DOCTYPE html>
                <html lang="en">
                <head>
                <meta charset="utf-8"/>
                <meta name="viewport" content="width=device-width, initial-scale=1"/>
                <meta name="color-scheme" content="light"/>
                """);
        html.element("title", "Field sheets: " + design.name());
        html.raw("<style>\n")
                .raw(paper(design.sheets().paper()))
                .raw(style())
                .raw("</style>\n</head>\n<body>\n<main>\n");
        html.raw(SheetCover.markup(design, set, tables));
        map.ifPresent(m -> html.raw(mapSheet(m)));
        if (!set.plots().isEmpty()) {
            html.raw(SheetPlots.markup(design, set));
        }
        html.raw(TallyForms.markup(design, tables));
        html.raw(SheetTables.markup(tables)).raw(SheetHeights.markup(design, tables));
        if (!(design.plot() instanceof PlotDesign.Complete)) {
            html.raw(SheetEdges.markup(design, set));
        }
        return html.raw("</main>\n</body>\n</html>\n").toString();
    }

    private static String mapSheet(Picture map) {
        return new Html()
                .raw("<section class=\"sheet\" id=\"map-sheet\">\n")
                .element("h2", "Map")
                .raw("<figure class=\"map\"><div role=\"img\" aria-label=\"" + Html.escape(map.altText()) + "\">")
                .raw(map.svg())
                .raw("</div>\n")
                .element("figcaption", map.title())
                .raw("</figure>\n</section>\n")
                .toString();
    }

    private static String paper(Paper paper) {
        return String.format(Locale.ROOT, """
                @page { size: %1$s; margin: 12mm; }
                @page wide { size: %1$s landscape; margin: 10mm; }
                """, paper == Paper.A4 ? "A4" : "letter");
    }

    private static String style() throws IOException {
        try (InputStream in = FieldSheets.class.getResourceAsStream(STYLE)) {
            if (in == null) {
                throw new IllegalStateException(STYLE + " is not in the jar");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
