package quadmean.field;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Makes workbooks for tests, from the XML of their sheets. */
public final class Workbooks {
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String REL = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    /** Style 0 is plain, style 1 a date of the standard, style 2 a date of its own format, style 3 a number. */
    private static final String STYLES = "<styleSheet xmlns='" + MAIN + "'><numFmts><numFmt numFmtId='164'"
            + " formatCode='dd/mm;@'/><numFmt numFmtId='165' formatCode='0.0\" m\"'/></numFmts><cellXfs><xf numFmtId='0'/><xf"
            + " numFmtId='14'/><xf numFmtId='164'/><xf numFmtId='165'/></cellXfs></styleSheet>";

    private Workbooks() {}

    /** A workbook of one sheet with these cells: text, or a number where it looks like one. */
    public static byte[] ofCsv(String csv) {
        return of(Map.of("Trees", sheet(csv)));
    }

    /** The rows of a sheet, as XML. */
    static String sheet(String csv) {
        StringBuilder xml = new StringBuilder();
        int row = 0;
        for (String line : csv.split("\n", -1)) {
            row++;
            xml.append("<row r='").append(row).append("'>");
            int column = 0;
            for (String cell : line.split(",", -1)) {
                xml.append(cell(column++, row, cell));
            }
            xml.append("</row>\n");
        }
        return xml.toString();
    }

    static String cell(int column, int row, String text) {
        String place = "<c r='" + name(column) + row + "'";
        if (text.isEmpty()) {
            return "";
        }
        if (text.matches("-?\\d{1,15}(\\.\\d{1,15})?")) {
            return place + "><v>" + text + "</v></c>";
        }
        String safe = text.replace("&", "&amp;").replace("<", "&lt;");
        return place + " t='inlineStr'><is><t>" + safe + "</t></is></c>";
    }

    private static String name(int column) {
        return column < 26 ? String.valueOf((char) ('A' + column)) : name(column / 26 - 1) + name(column % 26);
    }

    /** A workbook of several sheets, each the XML of its rows and what comes behind them. */
    static byte[] of(Map<String, String> sheets, String... sharedTexts) {
        Map<String, String> parts = new LinkedHashMap<>();
        StringBuilder names = new StringBuilder();
        StringBuilder relations = new StringBuilder();
        int n = 0;
        for (Map.Entry<String, String> sheet : sheets.entrySet()) {
            n++;
            names.append("<sheet name='%s' sheetId='%d' r:id='rId%d'/>".formatted(sheet.getKey(), n, n));
            relations.append("<Relationship Id='rId%d' Target='worksheets/sheet%d.xml'/>".formatted(n, n));
            String[] rest = sheet.getValue().split("<!--rest-->", 2);
            parts.put(
                    "xl/worksheets/sheet" + n + ".xml",
                    "<worksheet xmlns='" + MAIN + "'><sheetData>" + rest[0] + "</sheetData>"
                            + (rest.length > 1 ? rest[1] : "") + "</worksheet>");
        }
        parts.put(
                "xl/workbook.xml",
                "<workbook xmlns='" + MAIN + "' xmlns:r='" + REL + "'><sheets>" + names + "</sheets></workbook>");
        parts.put("xl/_rels/workbook.xml.rels", "<Relationships>" + relations + "</Relationships>");
        parts.put("xl/styles.xml", STYLES);
        parts.put(
                "xl/sharedStrings.xml",
                "<sst xmlns='" + MAIN + "'>" + String.join("", List.of(sharedTexts)) + "</sst>");
        return zip(parts);
    }

    static byte[] zip(Map<String, String> parts) {
        return zip(parts, StandardCharsets.UTF_8);
    }

    static byte[] zip(Map<String, String> parts, Charset charset) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, String> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue().getBytes(charset));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
