package quadmean.chart;

import de.erichseifert.vectorgraphics2d.VectorGraphics2D;
import de.erichseifert.vectorgraphics2d.intermediate.commands.AffineTransformCommand;
import de.erichseifert.vectorgraphics2d.intermediate.commands.Command;
import de.erichseifert.vectorgraphics2d.intermediate.commands.DrawImageCommand;
import de.erichseifert.vectorgraphics2d.intermediate.commands.DrawShapeCommand;
import de.erichseifert.vectorgraphics2d.intermediate.commands.DrawStringCommand;
import de.erichseifert.vectorgraphics2d.intermediate.commands.FillShapeCommand;
import de.erichseifert.vectorgraphics2d.intermediate.commands.SetClipCommand;
import de.erichseifert.vectorgraphics2d.intermediate.commands.SetColorCommand;
import de.erichseifert.vectorgraphics2d.intermediate.commands.SetPaintCommand;
import de.erichseifert.vectorgraphics2d.intermediate.commands.SetStrokeCommand;
import de.erichseifert.vectorgraphics2d.intermediate.commands.SetTransformCommand;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Writes down what was drawn as an {@code svg} element: a group for each place and each clip, coordinates to a hundredth. The
 * library that records the drawing writes SVG too, by a document tree and a transformer of XML, which takes several times as long to
 * start.
 */
final class SvgPen {
    private final StringBuilder body = new StringBuilder();
    private final List<Shape> clips = new ArrayList<>();
    private final String prefix;
    private AffineTransform place = new AffineTransform();
    private @Nullable Shape clip;
    private Color color = Color.BLACK;
    private BasicStroke stroke = new BasicStroke();
    private boolean isMoved;
    private boolean isInGroup;

    private SvgPen(String prefix) {
        this.prefix = prefix;
    }

    /**
     * A drawing as an element.
     *
     * @param prefix start of every id in it
     */
    static String element(VectorGraphics2D drawing, int width, int height, String prefix) {
        SvgPen pen = new SvgPen(prefix);
        drawing.getCommands().forEach(pen::take);
        String open = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + width + " " + height
                + "\" aria-hidden=\"true\" focusable=\"false\">\n";
        return open + pen.defs() + pen.body + (pen.isInGroup ? "</g>\n" : "") + "</svg>";
    }

    private void take(Command<?> command) {
        if (command instanceof SetTransformCommand c) {
            place = new AffineTransform(c.getValue());
            isMoved = true;
        } else if (command instanceof AffineTransformCommand c) {
            place.concatenate(c.getValue());
            isMoved = true;
        } else if (command instanceof SetClipCommand c) {
            clip = c.getValue();
            isMoved = true;
        } else if (command instanceof SetColorCommand c) {
            color = c.getValue();
        } else if (command instanceof SetStrokeCommand c) {
            stroke = basic(c.getValue());
        } else if (command instanceof FillShapeCommand c) {
            add(c.getValue(), SvgStyle.fill(color));
        } else if (command instanceof DrawShapeCommand c) {
            add(c.getValue(), SvgStyle.line(color, stroke));
        } else if (command instanceof DrawStringCommand
                || command instanceof DrawImageCommand
                || command instanceof SetPaintCommand) {
            throw new IllegalArgumentException("no chart is drawn with " + command);
        }
    }

    private static BasicStroke basic(Stroke stroke) {
        if (stroke instanceof BasicStroke b) {
            return b;
        }
        throw new IllegalArgumentException("no chart is drawn with " + stroke);
    }

    private void add(Shape shape, String style) {
        if (isMoved) {
            body.append(isInGroup ? "</g>\n" : "").append(group());
            isInGroup = true;
            isMoved = false;
        }
        body.append(SvgShape.element(shape, style));
    }

    private String group() {
        String at = place.isIdentity() ? "" : " transform=\"" + SvgStyle.transform(place) + "\"";
        return "<g" + (clip == null ? "" : " clip-path=\"url(#" + id(clip) + ")\"") + at + ">\n";
    }

    private String id(Shape shape) {
        if (!clips.contains(shape)) {
            clips.add(shape);
        }
        return prefix + "-" + (clips.indexOf(shape) + 1);
    }

    private String defs() {
        if (clips.isEmpty()) {
            return "";
        }
        StringBuilder defs = new StringBuilder("<defs>\n");
        for (Shape shape : clips) {
            defs.append("<clipPath id=\"").append(id(shape)).append("\">\n");
            defs.append(SvgShape.element(shape, "")).append("</clipPath>\n");
        }
        return defs.append("</defs>\n").toString();
    }
}
