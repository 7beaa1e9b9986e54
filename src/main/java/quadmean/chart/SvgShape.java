package quadmean.chart;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;

/** Shapes as elements of SVG: lines, rectangles and ellipses by their names, any other as a path. */
final class SvgShape {
    private static final String UNKNOWN = "NaN";
    private static final String[] LETTERS = {"M", "L", "Q", "C", "Z"};
    private static final int[] NUMBERS = {2, 2, 4, 6, 0};

    private SvgShape() {}

    /**
     * A shape as an element.
     *
     * @param style how it is painted; empty for one that is not
     * @return empty for a shape with a coordinate that is unknown
     */
    static String element(Shape shape, String style) {
        String dress = style.isEmpty() ? "" : " style=\"" + style + "\"";
        String element;
        if (shape instanceof Line2D l) {
            element = "<line" + dress + is("x1", l.getX1()) + is("x2", l.getX2()) + is("y1", l.getY1())
                    + is("y2", l.getY2());
        } else if (shape instanceof Rectangle2D r) {
            element = "<rect" + is("height", r.getHeight()) + dress + is("width", r.getWidth()) + is("x", r.getX())
                    + is("y", r.getY());
        } else if (shape instanceof Ellipse2D e) {
            element = "<ellipse" + is("cx", e.getCenterX()) + is("cy", e.getCenterY()) + is("rx", e.getWidth() / 2)
                    + is("ry", e.getHeight() / 2) + dress;
        } else {
            element = "<path d=\"" + path(shape) + "\"" + dress;
        }
        return element.contains(UNKNOWN) ? "" : element + "/>\n";
    }

    private static String is(String name, double value) {
        return " " + name + "=\"" + number(value) + "\"";
    }

    private static String number(double value) {
        return Double.isFinite(value) ? Svg.number(value) : UNKNOWN;
    }

    private static String path(Shape shape) {
        StringBuilder path = new StringBuilder();
        double[] at = new double[6];
        for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
            int kind = i.currentSegment(at);
            path.append(path.isEmpty() ? "" : " ").append(LETTERS[kind]);
            for (int k = 0; k < NUMBERS[kind]; k += 2) {
                path.append(k == 0 ? "" : " ").append(number(at[k])).append(',').append(number(at[k + 1]));
            }
        }
        return path.toString();
    }
}
