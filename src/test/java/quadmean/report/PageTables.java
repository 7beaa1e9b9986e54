package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The tables of a page, read back from its markup. */
final class PageTables {
    private static final Pattern PART = Pattern.compile(
            "<section id=\"([^\"]+)\"|<caption><span>(.*?)</span></caption>\\s*<thead>(.*?)</thead>(.*?)</table>",
            Pattern.DOTALL);

    private static final Pattern ROW = Pattern.compile("<tr>(.*?)</tr>", Pattern.DOTALL);
    private static final Pattern CELL = Pattern.compile("<t([hd])[^>]*>(.*?)</t[hd]>", Pattern.DOTALL);

    private PageTables() {}

    /**
     * A table.
     *
     * @param section id of the section it stands in
     * @param caption what it is called
     * @param header heads of its columns
     * @param rows its rows and then its totals; texts of the cells
     */
    record Table(String section, String caption, List<String> header, List<List<String>> rows) {}

    static List<Table> of(String page) {
        List<Table> tables = new ArrayList<>();
        String section = "";
        Matcher part = PART.matcher(page);
        while (part.find()) {
            if (part.group(1) != null) {
                section = part.group(1);
            } else {
                List<List<String>> rows = new ArrayList<>();
                Matcher row = ROW.matcher(part.group(4));
                while (row.find()) {
                    rows.add(cells(row.group(1)));
                }
                tables.add(new Table(section, words(part.group(2)), cells(part.group(3)), rows));
            }
        }
        return tables;
    }

    private static List<String> cells(String row) {
        List<String> cells = new ArrayList<>();
        Matcher cell = CELL.matcher(row);
        while (cell.find()) {
            cells.add(words(cell.group(2)));
        }
        return cells;
    }

    /** Markup as a reader sees it. */
    static String words(String markup) {
        return markup.replaceAll("<[^>]+>", " ")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&")
                .replaceAll("\\[\\d+\\]", "") // marks of footnotes
                .replaceAll("[ \\n]+", " ")
                .strip();
    }
}
