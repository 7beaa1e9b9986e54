package quadmean.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.erichseifert.vectorgraphics2d.VectorGraphics2D;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SvgTest {
    private static final String TOP =
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 60 40\" aria-hidden=\"true\""
                    + " focusable=\"false\">\n";

    /** Halves of the decimals as they are printed go away from zero, as a person rounds. */
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.0, 0",
        "0.004, 0",
        "-0.004, 0",
        "0.005, 0.01",
        "-0.005, -0.01",
        "1.005, 1.01",
        "1.0049999, 1",
        "0.05, 0.05",
        "0.1, 0.1",
        "12.34, 12.34",
        "-12.3, -12.3",
        "599.999, 600",
        "1e-9, 0",
        "12345678.915, 12345678.92",
        "1e12, 1000000000000"
    })
    void numbersAreCutToAHundredth(double value, String expected) {
        assertEquals(expected, Svg.number(value));
    }

    /** The library class for decimals is the other computation. */
    @Test
    void numbersAreThoseOfDecimalArithmetic() {
        Random random = new Random(7);
        for (int i = 0; i < 100_000; i++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(8));
            BigDecimal cut = new BigDecimal(Double.toString(value)).setScale(2, RoundingMode.HALF_UP);
            assertEquals(0, cut.compareTo(new BigDecimal(Svg.number(value))), () -> "cut of " + value);
        }
    }

    @Test
    void aDrawingIsWrittenByPlaceAndClip() {
        VectorGraphics2D pen = new VectorGraphics2D();
        pen.setColor(new Color(1, 2, 3));
        pen.fill(new Rectangle2D.Double(0, 0, 60, 40));
        pen.translate(5, 2.5);
        pen.setStroke(new BasicStroke(2, BasicStroke.CAP_ROUND, BasicStroke.JOIN_MITER, 10));
        pen.draw(new Line2D.Double(1, 2, 3, 4));
        pen.translate(-5, -2.5);
        pen.setClip(new Rectangle2D.Double(1, 1, 9, 9));
        pen.setColor(new Color(255, 0, 0, 51));
        pen.fill(new Ellipse2D.Double(2, 2, 4, 6));
        String expected = TOP
                + "<defs>\n<clipPath id=\"a-1\">\n<rect height=\"9\" width=\"9\" x=\"1\" y=\"1\"/>\n</clipPath>\n</defs>\n"
                + "<rect height=\"40\" style=\"fill:rgb(1,2,3);stroke:none;\" width=\"60\" x=\"0\" y=\"0\"/>\n"
                + "<g transform=\"translate(5 2.5)\">\n"
                + "<line style=\"fill:none;stroke:rgb(1,2,3);stroke-width:2;stroke-miterlimit:10;stroke-linecap:round;\" x1=\"1\" x2=\"3\" y1=\"2\" y2=\"4\"/>\n"
                + "</g>\n<g clip-path=\"url(#a-1)\">\n"
                + "<ellipse cx=\"4\" cy=\"5\" rx=\"2\" ry=\"3\" style=\"fill:rgb(255,0,0);fill-opacity:0.2;stroke:none;\"/>\n"
                + "</g>\n</svg>";
        assertEquals(expected, SvgPen.element(pen, 60, 40, "a"));
    }

    @Test
    void aPathHasAllItsCurvesAndUnknownShapesAreLeftOut() {
        Path2D path = new Path2D.Double();
        path.moveTo(0, 1);
        path.lineTo(2, 3);
        path.quadTo(4, 5, 6, 7);
        path.curveTo(1, 2, 3, 4, 5, 6);
        path.closePath();
        VectorGraphics2D pen = new VectorGraphics2D();
        pen.rotate(Math.PI / 2);
        pen.setStroke(new BasicStroke(1, BasicStroke.CAP_SQUARE, BasicStroke.JOIN_BEVEL, 4, new float[] {3, 1.5f}, 0));
        pen.draw(path);
        pen.fill(new Line2D.Double(0, Double.NaN, 1, 1));
        String svg = SvgPen.element(pen, 60, 40, "a");
        assertTrue(
                svg.contains(
                        "<path d=\"M0,1 L2,3 Q4,5 6,7 C1,2 3,4 5,6 Z\" style=\"fill:none;stroke:rgb(0,0,0);"
                                + "stroke-miterlimit:4;stroke-linecap:square;stroke-linejoin:bevel;stroke-dasharray:3,1.5;\"/>"),
                svg);
        assertTrue(svg.contains("<g transform=\"matrix("), svg);
        assertTrue(!svg.contains("NaN") && !svg.contains("<line"), svg);
    }

    @Test
    void whatCannotBeWrittenIsRefused() {
        VectorGraphics2D text = new VectorGraphics2D();
        text.drawString("as letters", 1, 1);
        assertThrows(IllegalArgumentException.class, () -> SvgPen.element(text, 60, 40, "a"));
        VectorGraphics2D shade = new VectorGraphics2D();
        shade.setPaint(new GradientPaint(0, 0, Color.RED, 1, 1, Color.BLUE));
        shade.fill(new Rectangle2D.Double(0, 0, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> SvgPen.element(shade, 60, 40, "a"));
        VectorGraphics2D brush = new VectorGraphics2D();
        brush.setStroke(shape -> shape);
        assertThrows(IllegalArgumentException.class, () -> SvgPen.element(brush, 60, 40, "a"));
    }
}
