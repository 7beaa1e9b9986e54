package quadmean.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** How shapes of SVG are painted and placed. What SVG takes for granted is left out. */
final class SvgStyle {
    private static final int OPAQUE = 255;

    private SvgStyle() {}

    static String fill(Color color) {
        return "fill:" + rgb(color) + opacity("fill-opacity", color) + "stroke:none;";
    }

    static String line(Color color, BasicStroke stroke) {
        float[] dashes = stroke.getDashArray();
        return "fill:none;stroke:" + rgb(color) + opacity("stroke-opacity", color)
                + (stroke.getLineWidth() == 1 ? "" : "stroke-width:" + Svg.number(stroke.getLineWidth()) + ";")
                + "stroke-miterlimit:" + Svg.number(stroke.getMiterLimit()) + ";"
                + cap(stroke) + join(stroke)
                + (dashes == null ? "" : "stroke-dasharray:" + list(dashes) + ";");
    }

    private static String rgb(Color color) {
        return "rgb(" + color.getRed() + "," + color.getGreen() + "," + color.getBlue() + ");";
    }

    private static String opacity(String name, Color color) {
        return color.getAlpha() == OPAQUE ? "" : name + ":" + Svg.number(color.getAlpha() / (double) OPAQUE) + ";";
    }

    private static String cap(BasicStroke stroke) {
        return switch (stroke.getEndCap()) {
            case BasicStroke.CAP_ROUND -> "stroke-linecap:round;";
            case BasicStroke.CAP_SQUARE -> "stroke-linecap:square;";
            default -> "";
        };
    }

    private static String join(BasicStroke stroke) {
        return switch (stroke.getLineJoin()) {
            case BasicStroke.JOIN_ROUND -> "stroke-linejoin:round;";
            case BasicStroke.JOIN_BEVEL -> "stroke-linejoin:bevel;";
            default -> "";
        };
    }

    private static String list(float[] dashes) {
        return IntStream.range(0, dashes.length)
                .mapToObj(i -> Svg.number(dashes[i]))
                .collect(Collectors.joining(","));
    }

    /** A shift, or the six numbers of any other change of place. */
    static String transform(AffineTransform place) {
        if (place.getType() == AffineTransform.TYPE_TRANSLATION) {
            return "translate(" + Svg.number(place.getTranslateX()) + " " + Svg.number(place.getTranslateY()) + ")";
        }
        double[] m = new double[6];
        place.getMatrix(m);
        return IntStream.range(0, m.length)
                .mapToObj(i -> Double.toString(m[i]))
                .collect(Collectors.joining(" ", "matrix(", ")"));
    }
}
