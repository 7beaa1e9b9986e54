package quadmean.report;

/** Two drawings of a sight to tip and base, in black and grey. */
final class HeightDrawing {
    private static final String HEAD = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 360 250\""
            + " aria-hidden=\"true\" focusable=\"false\" font-family=\"sans-serif\" font-size=\"13\" fill=\"#111\">\n";
    private static final String SIGHT = " fill=\"none\" stroke=\"#111\" stroke-width=\"1.3\"/>\n";
    private static final String LEVEL =
            " fill=\"none\" stroke=\"#111\" stroke-width=\"1.1\" stroke-dasharray=\"6 4\"/>\n";
    private static final String SIZE = " fill=\"none\" stroke=\"#111\" stroke-width=\"1\"/>\n";

    private HeightDrawing() {}

    /** The eye above the base: the tree stands on level ground or lower. */
    static String baseBelow(String words, String height) {
        String drawing = ground("M0 226 L360 226 L360 250 L0 250 Z")
                + tree(262, 226, 26)
                + person(46, 226)
                + "<path d=\"M50 184 L262 26\"" + SIGHT
                + "<path d=\"M50 184 L262 226\"" + SIGHT
                + "<path d=\"M50 184 L300 184\"" + LEVEL
                + "<path d=\"M98 184 A48 48 0 0 0 87.5 155\"" + SIGHT
                + "<path d=\"M130 184 A80 80 0 0 1 128.7 198.3\"" + SIGHT
                + text(100, 172, "start", "top, +")
                + text(134, 197, "start", "base, −")
                + text(168, 179, "start", "eye level")
                + size("M50 240 L262 240 M50 235 L50 245 M262 235 L262 245")
                + label(156, 244, "level distance")
                + size("M306 26 L306 226 M301 26 L311 26 M301 226 L311 226")
                + label(312, 120, height);
        return figure(drawing, words);
    }

    /** The eye below the base: the tree stands uphill, and both readings are upward. */
    static String baseAbove(String words, String height) {
        String drawing = ground("M0 226 L60 226 L262 136 L360 112 L360 250 L0 250 Z")
                + tree(262, 136, 18)
                + person(36, 226)
                + "<path d=\"M40 184 L282 18\"" + SIGHT
                + "<path d=\"M40 184 L262 136\"" + SIGHT
                + "<path d=\"M40 184 L300 184\"" + LEVEL
                + text(112, 122, "end", "top, +")
                + text(150, 174, "start", "base, +")
                + text(300, 199, "end", "eye level")
                + size("M40 240 L262 240 M40 235 L40 245 M262 235 L262 245")
                + label(150, 244, "level distance")
                + size("M306 18 L306 136 M301 18 L311 18 M301 136 L311 136")
                + label(312, 80, height);
        return figure(drawing, words);
    }

    private static String ground(String path) {
        return "<path d=\"" + path + "\" fill=\"#dcdcdc\"/>\n";
    }

    private static String tree(int x, int foot, int tip) {
        int tall = foot - tip;
        StringBuilder out = new StringBuilder("<path d=\"M" + (x - 4) + " " + foot + " L" + x + " " + tip + " L"
                + (x + 4) + " " + foot + " Z\" fill=\"#111\"/>\n");
        int whorls = 4;
        for (int i = 0; i < whorls; i++) {
            int top = tip + i * tall / 6;
            int low = top + tall / 4;
            int half = 10 + i * 7;
            out.append("<path d=\"M" + x + " " + top + " L" + (x + half) + " " + low + " L" + (x - half) + " " + low
                    + " Z\" fill=\"#9a9a9a\" stroke=\"#555\" stroke-width=\"0.8\"/>\n");
        }
        return out.toString();
    }

    /** Someone who sights; the eye is 42 above the ground and 4 before the foot. */
    private static String person(int x, int ground) {
        int head = ground - 43;
        return "<circle cx=\"" + (x - 2) + "\" cy=\"" + head + "\" r=\"6.5\"/>\n<path d=\"M" + (x - 2) + " "
                + (head + 6)
                + " L" + (x - 2) + " " + (ground - 17) + " M" + (x - 2) + " " + (ground - 17) + " L" + (x - 8) + " "
                + ground + " M" + (x - 2) + " " + (ground - 17) + " L" + (x + 4) + " " + ground + " M" + (x - 2) + " "
                + (head + 13) + " L" + (x + 5) + " " + (head + 3)
                + "\" fill=\"none\" stroke=\"#111\" stroke-width=\"3.2\" stroke-linecap=\"round\"/>\n";
    }

    private static String size(String path) {
        return "<path d=\"" + path + "\"" + SIZE;
    }

    private static String text(int x, int y, String anchor, String words) {
        return "<text x=\"" + x + "\" y=\"" + y + "\" text-anchor=\"" + anchor + "\">" + Html.escape(words)
                + "</text>\n";
    }

    /** A size with white about it, so that it can stand on its line. */
    private static String label(int x, int y, String words) {
        String anchor = x > 300 ? "start" : "middle";
        return "<text x=\"" + x + "\" y=\"" + y + "\" text-anchor=\"" + anchor
                + "\" font-weight=\"600\" stroke=\"#fff\" stroke-width=\"5\" paint-order=\"stroke\">"
                + Html.escape(words)
                + "</text>\n";
    }

    private static String figure(String drawing, String words) {
        return new Html()
                .raw("<figure><div role=\"img\" aria-label=\"" + Html.escape("Drawing. " + words) + "\">" + HEAD
                        + drawing + "</svg></div>\n")
                .element("figcaption", words)
                .raw("</figure>\n")
                .toString();
    }
}
