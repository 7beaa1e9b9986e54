package quadmean.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Makes a drawn SVG document fit to stand in an HTML page: no prolog, ids of its own that are the same in every run,
 * coordinates to a hundredth, and no shape whose coordinates are unknown.
 */
final class Svg {
    private static final Pattern ID = Pattern.compile("id=\"([^\"]+)\"");
    private static final Pattern LONG_NUMBER = Pattern.compile("-?\\d+\\.\\d+(E-?\\d+)?");
    private static final Pattern UNKNOWN_SHAPE = Pattern.compile("<(path|line|rect|ellipse|polygon)[^>]*NaN[^>]*/>");
    private static final Pattern ROOT =
            Pattern.compile("<svg[^>]*?viewBox=\"([^\"]*)\"[^>]*>", Pattern.CASE_INSENSITIVE);

    private Svg() {}

    /**
     * Turns a document into an element.
     *
     * @param document the SVG document
     * @param prefix start of every id in it
     */
    static String inline(String document, String prefix) {
        String svg = document.substring(document.indexOf("<svg"));
        svg = UNKNOWN_SHAPE.matcher(svg).replaceAll("");
        svg = LONG_NUMBER.matcher(svg).replaceAll(m -> rounded(m.group()));
        svg = ROOT.matcher(svg)
                .replaceFirst("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"$1\" aria-hidden=\"true\""
                        + " focusable=\"false\">");
        svg = svg.replaceAll("\\s*\\n\\s*", "\n");
        return withIds(svg, prefix).strip();
    }

    /** Text as it stands in an element; control characters have no place there. */
    static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replaceAll("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\x7F]", "\uFFFD");
    }

    private static String withIds(String svg, String prefix) {
        Map<String, String> names = new LinkedHashMap<>();
        Matcher ids = ID.matcher(svg);
        while (ids.find()) {
            names.computeIfAbsent(ids.group(1), k -> prefix + "-" + (names.size() + 1));
        }
        String renamed = svg;
        for (Map.Entry<String, String> name : names.entrySet()) {
            renamed = renamed.replace("id=\"" + name.getKey() + "\"", "id=\"" + name.getValue() + "\"")
                    .replace("#" + name.getKey() + ")", "#" + name.getValue() + ")");
        }
        return renamed;
    }

    private static String rounded(String number) {
        BigDecimal rounded = new BigDecimal(number).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
