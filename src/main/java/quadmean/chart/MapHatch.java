package quadmean.chart;

/** Tints of strata, light enough for black letters, and hatchings that tell them apart in grey. */
final class MapHatch {
    /** After the hues of species (Okabe and Ito 2008), paled. */
    private static final String[] TINTS = {"#dcefe7", "#fbe8c8", "#dbe9f6", "#f3e0ec", "#efece0", "#e3e3e3"};

    private static final String STROKE = " fill=\"none\" stroke=\"#8b948f\" stroke-width=\"0.9\"/>";
    private static final String[] LINES = {
        "",
        "<path d=\"M-2 2 L2 -2 M0 12 L12 0 M10 14 L14 10\"" + STROKE,
        "<circle cx=\"4\" cy=\"4\" r=\"1.1\" fill=\"#8b948f\"/><circle cx=\"10\" cy=\"10\" r=\"1.1\" fill=\"#8b948f\"/>",
        "<path d=\"M-2 10 L2 14 M0 0 L12 12 M10 -2 L14 2\"" + STROKE,
        "<path d=\"M0 6 L12 6\"" + STROKE,
        "<path d=\"M6 0 L6 12\"" + STROKE
    };

    private MapHatch() {}

    static String tint(int area) {
        return TINTS[area % TINTS.length];
    }

    /** The hatching of an area as a value of {@code fill}. */
    static String fill(int area) {
        return area % LINES.length == 0 ? "none" : "url(#map-hatch-" + area % LINES.length + ")";
    }

    /** The definitions that {@link #fill} refers to. */
    static String patterns(int areas) {
        StringBuilder out = new StringBuilder("<defs>\n");
        for (int i = 1; i < Math.min(areas, LINES.length); i++) {
            out.append("<pattern id=\"map-hatch-")
                    .append(i)
                    .append("\" width=\"12\" height=\"12\" patternUnits=\"userSpaceOnUse\">")
                    .append(LINES[i])
                    .append("</pattern>\n");
        }
        return out.append("</defs>\n").toString();
    }
}
