package quadmean.support;

import java.io.IOException;
import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Looks into pages and drawings. */
public final class Pages {
    private Pages() {}

    /** A page or drawing as XML; fails if it is not well formed. */
    public static Document xml(String markup) {
        try {
            String text = markup.replaceFirst("^<!DOCTYPE html>\\s*", "");
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(text)));
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw new AssertionError("not well formed: " + e.getMessage(), e);
        }
    }

    /** The element of an id. */
    public static Element byId(Document document, String id) {
        NodeList all = document.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            if (((Element) all.item(i)).getAttribute("id").equals(id)) {
                return (Element) all.item(i);
            }
        }
        throw new AssertionError("no element with the id " + id);
    }

    /** Contrast ratio of two colours {@code #rrggbb}, 1 to 21 (WCAG 2.2, relative luminance). */
    public static double contrast(String one, String other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    /** Relative luminance of a colour {@code #rrggbb}, 0 to 1 (WCAG 2.2). */
    public static double luminance(String colour) {
        int rgb = Integer.parseInt(colour.substring(1), 16);
        return 0.2126 * linear(rgb >> 16 & 255) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
