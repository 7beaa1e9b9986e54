package quadmean.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.TexturePaint;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * A map or a chart of bars as an image of pixels, for programs that take no SVG. It draws the few elements that {@link MapChart},
 * {@link PlotValueMap} and {@link BudgetChart} write and refuses any other, so that the two pictures cannot differ.
 */
public final class MapPng {
    /** Pixels for each unit of the drawing. */
    private static final int SCALE = 2;

    private final Map<String, Paint> patterns = new HashMap<>();
    private final Deque<Graphics2D> canvases = new ArrayDeque<>();
    private final Deque<AffineTransform> groups = new ArrayDeque<>();
    private Map<String, String> element = Map.of();
    private Color ink = Color.BLACK;
    private BufferedImage image = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);
    private BufferedImage tile = image;

    private MapPng() {}

    /** The image as a PNG file; empty where the platform gives no fonts to write with. */
    public static Optional<byte[]> of(Picture map) {
        byte[][] bytes = new byte[1][];
        ChartSet drawn = ChartSet.drawn(() -> {
            bytes[0] = new MapPng().bytes(map.svg());
            return List.of();
        });
        return drawn.missing().isEmpty() ? Optional.of(bytes[0]) : Optional.empty();
    }

    private byte[] bytes(String svg) {
        try {
            XMLInputFactory factory = XMLInputFactory.newFactory();
            factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
            factory.setProperty(XMLInputFactory.IS_COALESCING, true);
            XMLStreamReader in = factory.createXMLStreamReader(new StringReader(svg));
            while (in.hasNext()) {
                int event = in.next();
                if (event == XMLStreamConstants.START_ELEMENT) {
                    start(in);
                } else if (event == XMLStreamConstants.END_ELEMENT) {
                    end(in.getLocalName());
                }
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.setUseCache(false);
            ImageIO.write(image, "png", out);
            return out.toByteArray();
        } catch (XMLStreamException e) {
            throw new IllegalArgumentException("no map as MapChart draws it", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void start(XMLStreamReader in) throws XMLStreamException {
        Map<String, String> attributes = new HashMap<>();
        for (int i = 0; i < in.getAttributeCount(); i++) {
            attributes.put(in.getAttributeLocalName(i), in.getAttributeValue(i));
        }
        element = attributes;
        switch (in.getLocalName()) {
            case "svg" -> sheet();
            case "defs" -> {}
            case "pattern" -> {
                tile = new BufferedImage(
                        (int) (SCALE * number("width")), (int) (SCALE * number("height")), BufferedImage.TYPE_INT_ARGB);
                patterns.put(
                        text("id"),
                        new TexturePaint(tile, new Rectangle2D.Double(0, 0, number("width"), number("height"))));
                open(tile);
            }
            case "g" -> {
                groups.push(canvas().getTransform());
                canvas().transform(transform());
            }
            case "path" -> paint(SvgPath.of(text("d")));
            case "polyline" -> paint(SvgPath.of("M" + text("points").replace(" ", " L")));
            case "circle" -> {
                double r = number("r");
                paint(new Ellipse2D.Double(number("cx") - r, number("cy") - r, 2 * r, 2 * r));
            }
            case "rect" -> paint(new Rectangle2D.Double(number("x"), number("y"), number("width"), number("height")));
            case "text" -> {
                write(in.getElementText());
            }
            default -> throw new IllegalArgumentException("a map has no element " + in.getLocalName());
        }
    }

    private void end(String name) {
        if (name.equals("g")) {
            canvas().setTransform(groups.pop());
        } else if (name.equals("pattern") || name.equals("svg")) {
            canvases.pop().dispose();
        }
    }

    private void sheet() {
        String[] box = text("viewBox").split(" ", -1);
        int width = (int) Math.ceil(SCALE * Double.parseDouble(box[2]));
        int height = (int) Math.ceil(SCALE * Double.parseDouble(box[3]));
        image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        ink = Color.decode(text("fill"));
        open(image);
        canvas().setPaint(Color.WHITE);
        canvas().fill(new Rectangle2D.Double(0, 0, width, height));
    }

    private void open(BufferedImage on) {
        Graphics2D g = on.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.scale(SCALE, SCALE);
        canvases.push(g);
    }

    private void paint(Shape shape) {
        Graphics2D g = canvas();
        AffineTransform before = g.getTransform();
        g.transform(transform());
        paint(text("fill"), ink).ifPresent(p -> {
            g.setPaint(p);
            g.fill(shape);
        });
        stroke(g, shape);
        g.setTransform(before);
    }

    private void stroke(Graphics2D g, Shape shape) {
        paint(text("stroke"), null).ifPresent(p -> {
            g.setPaint(p);
            float width = element.containsKey("stroke-width") ? (float) number("stroke-width") : 1;
            g.setStroke(new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4, dashes(), 0));
            g.draw(shape);
        });
    }

    /** Words, with a rim where they have one, which lies below them. */
    private void write(String words) {
        boolean bold = element.containsKey("font-weight");
        Font font = new Font(Font.SANS_SERIF, bold ? Font.BOLD : Font.PLAIN, 1).deriveFont((float) number("font-size"));
        TextLayout line = new TextLayout(words, font, canvas().getFontRenderContext());
        double share = text("text-anchor").equals("middle") ? 0.5 : 0;
        Shape letters = line.getOutline(
                AffineTransform.getTranslateInstance(number("x") - share * line.getAdvance(), number("y")));
        stroke(canvas(), letters);
        canvas().setPaint(ink);
        canvas().fill(letters);
    }

    private Optional<Paint> paint(String value, @Nullable Paint otherwise) {
        if (value.equals("none")) {
            return Optional.empty();
        }
        if (value.startsWith("url(#")) {
            return Optional.ofNullable(patterns.get(value.substring(5, value.length() - 1)));
        }
        return value.isEmpty() ? Optional.ofNullable(otherwise) : Optional.of(Color.decode(value));
    }

    private float @Nullable [] dashes() {
        String value = text("stroke-dasharray");
        if (value.isEmpty() || value.equals("none")) {
            return null;
        }
        String[] parts = value.split(" ", -1);
        float[] dashes = new float[parts.length];
        for (int i = 0; i < parts.length; i++) {
            dashes[i] = Float.parseFloat(parts[i]);
        }
        return dashes;
    }

    private AffineTransform transform() {
        return SvgPath.transform(text("transform"));
    }

    private Graphics2D canvas() {
        return canvases.element();
    }

    private String text(String name) {
        return element.getOrDefault(name, "");
    }

    private double number(String name) {
        return Double.parseDouble(text(name));
    }
}
