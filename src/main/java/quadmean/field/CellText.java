package quadmean.field;

import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Texts of a workbook. */
final class CellText {
    /** The longest text that spreadsheets hold is 32 767 letters. */
    private static final int LONGEST = 40_000;

    private CellText() {}

    /** The text inside an element: of itself, or of its {@code t} elements; phonetic helps left out. */
    static String read(XMLStreamReader r, String element) throws WorkbookException, XMLStreamException {
        StringBuilder text = new StringBuilder();
        boolean plain = element.equals("v") || element.equals("f");
        boolean inside = plain;
        int depth = 1;
        int phonetic = 0;
        while (depth > 0) {
            switch (r.next()) {
                case XMLStreamConstants.START_ELEMENT -> {
                    depth++;
                    phonetic += r.getLocalName().equals("rPh") ? 1 : 0;
                    inside = plain || (phonetic == 0 && r.getLocalName().equals("t"));
                }
                case XMLStreamConstants.END_ELEMENT -> {
                    depth--;
                    phonetic -= r.getLocalName().equals("rPh") ? 1 : 0;
                    inside = plain;
                }
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE -> {
                    if (inside && text.length() + r.getTextLength() > LONGEST) {
                        throw new WorkbookException("a cell holds more letters than spreadsheets allow");
                    }
                    text.append(inside ? r.getText() : "");
                }
                default -> {
                    // comments and the like
                }
            }
        }
        return text.toString();
    }
}
