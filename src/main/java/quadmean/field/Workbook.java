package quadmean.field;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** A workbook (.xlsx): its sheets by name, its shared texts, and which cell styles show dates. */
final class Workbook implements Closeable {
    private static final long MOST_LETTERS = 100_000_000;
    private static final Pattern NO_DATE = Pattern.compile("\"[^\"]*\"|\\\\.|\\[[^\\]]*\\]");
    private static final Pattern DATE = Pattern.compile("[ymdhsYMDHS]");

    private final WorkbookZip zip;
    private final Map<String, String> sheets = new LinkedHashMap<>();
    private final List<String> texts = new ArrayList<>();
    private final List<Boolean> dateStyles = new ArrayList<>();

    Workbook(Path file) throws IOException {
        this.zip = new WorkbookZip(file);
        try {
            readSheetNames();
            if (zip.has("xl/sharedStrings.xml")) {
                readTexts();
            }
            if (zip.has("xl/styles.xml")) {
                readStyles();
            }
        } catch (IOException | XMLStreamException | RuntimeException e) {
            zip.close();
            throw new WorkbookException(WorkbookException.explain(e));
        }
    }

    List<String> sheets() {
        return List.copyOf(sheets.keySet());
    }

    XMLStreamReader open(String sheet) throws IOException, XMLStreamException {
        return zip.open(sheets.getOrDefault(sheet, ""));
    }

    /** A shared text by its number. */
    String text(int number) throws WorkbookException {
        if (number < 0 || number >= texts.size()) {
            throw new WorkbookException("a cell refers to a text that is not there; the workbook is damaged");
        }
        return texts.get(number);
    }

    boolean isDate(int style) {
        return style >= 0 && style < dateStyles.size() && dateStyles.get(style);
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }

    private void readSheetNames() throws IOException, XMLStreamException {
        Map<String, String> targets = new HashMap<>();
        elements("xl/_rels/workbook.xml.rels", r -> {
            if (r.getLocalName().equals("Relationship")) {
                targets.put(value(r, "Id"), value(r, "Target"));
            }
        });
        elements("xl/workbook.xml", r -> {
            if (r.getLocalName().equals("sheet")) {
                String id = String.valueOf(r.getAttributeValue(
                        "http://schemas.openxmlformats.org/officeDocument/2006/relationships", "id"));
                String target = targets.getOrDefault(id, "");
                sheets.put(value(r, "name"), target.startsWith("/") ? target.substring(1) : "xl/" + target);
            }
        });
    }

    private void readTexts() throws IOException, XMLStreamException {
        XMLStreamReader r = zip.open("xl/sharedStrings.xml");
        long letters = 0;
        while (r.hasNext()) {
            if (r.next() == XMLStreamConstants.START_ELEMENT && r.getLocalName().equals("si")) {
                texts.add(CellText.read(r, "si"));
                letters += texts.get(texts.size() - 1).length() + 8L;
                if (letters > MOST_LETTERS) {
                    throw new WorkbookException("the workbook holds more than 100 million letters; save as CSV");
                }
            }
        }
    }

    private void readStyles() throws IOException, XMLStreamException {
        Set<Integer> dates = new HashSet<>();
        boolean[] inCells = new boolean[1];
        elements("xl/styles.xml", r -> {
            switch (r.getLocalName()) {
                case "numFmt" -> {
                    if (DATE.matcher(NO_DATE.matcher(value(r, "formatCode")).replaceAll(""))
                            .find()) {
                        dates.add(number(value(r, "numFmtId")));
                    }
                }
                case "cellXfs" -> inCells[0] = true;
                case "cellStyles", "dxfs" -> inCells[0] = false;
                case "xf" -> {
                    if (inCells[0]) {
                        int format = number(value(r, "numFmtId"));
                        dateStyles.add(isBuiltInDate(format) || dates.contains(format));
                    }
                }
                default -> {
                    // nothing to learn
                }
            }
        });
    }

    /** Formats 14 to 22 and 45 to 47 of the standard (ECMA-376, 18.8.30) show dates and times. */
    private static boolean isBuiltInDate(int format) {
        return (format >= 14 && format <= 22) || (format >= 45 && format <= 47);
    }

    private interface Visitor {
        void visit(XMLStreamReader element);
    }

    private void elements(String part, Visitor visitor) throws IOException, XMLStreamException {
        XMLStreamReader r = zip.open(part);
        while (r.hasNext()) {
            if (r.next() == XMLStreamConstants.START_ELEMENT) {
                visitor.visit(r);
            }
        }
    }

    private static String value(XMLStreamReader r, String attribute) {
        String value = WorkbookZip.attribute(r, attribute);
        return value == null ? "" : value;
    }

    /** A whole number, -1 for anything else. */
    static int number(String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            return -1;
        }
    }
}
