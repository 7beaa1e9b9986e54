package quadmean.report;

import java.util.ArrayList;
import java.util.List;

/** A table with a caption, a header row and row headers; it scrolls sideways where the page is narrow. */
final class HtmlTable {
    private final String caption;
    private final List<Cell> header;
    private final List<List<Cell>> rows = new ArrayList<>();
    private final List<List<Cell>> totals = new ArrayList<>();

    private HtmlTable(String caption, List<Cell> header) {
        this.caption = caption;
        this.header = header;
    }

    /**
     * One cell.
     *
     * @param markup what stands in it, already escaped
     * @param kind how it is set
     */
    record Cell(String markup, Kind kind) {
        static Cell text(String text) {
            return new Cell(Html.escape(text), Kind.WORDS);
        }

        static Cell number(String text) {
            return new Cell(Html.escape(text), Kind.NUMBER);
        }

        /** A number with a second one, smaller, below it. */
        static Cell number(String text, String small) {
            String below = small.isEmpty() ? "" : "<small>" + Html.escape(small) + "</small>";
            return new Cell(Html.escape(text) + below, Kind.NUMBER);
        }

        static Cell markup(String markup) {
            return new Cell(markup, Kind.WORDS);
        }
    }

    /** How a cell is set. */
    enum Kind {
        WORDS(""),
        NUMBER(" class=\"num\"");

        private final String attribute;

        Kind(String attribute) {
            this.attribute = attribute;
        }
    }

    static HtmlTable of(String caption, List<Cell> header) {
        return new HtmlTable(caption, header);
    }

    /** Adds a row; its first cell is the row's header. */
    HtmlTable row(List<Cell> cells) {
        rows.add(cells);
        return this;
    }

    /** Adds a line that sums up the others: it stays at the foot when a reader sorts the rows. */
    HtmlTable total(List<Cell> cells) {
        totals.add(cells);
        return this;
    }

    boolean isEmpty() {
        return rows.isEmpty() && totals.isEmpty();
    }

    String markup() {
        StringBuilder out = new StringBuilder("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"")
                .append(Html.escape(caption))
                .append("\"><table>\n<caption><span>")
                .append(Html.escape(caption))
                .append("</span></caption>\n<thead><tr>");
        header.forEach(c -> out.append("<th scope=\"col\"" + c.kind().attribute + ">" + c.markup() + "</th>"));
        out.append("</tr></thead>\n<tbody>\n");
        rows.forEach(row -> line(out, row));
        out.append("</tbody>");
        if (!totals.isEmpty()) {
            out.append("\n<tfoot>\n");
            totals.forEach(row -> line(out, row));
            out.append("</tfoot>");
        }
        return out.append("</table></div>\n").toString();
    }

    private static void line(StringBuilder out, List<Cell> row) {
        out.append("<tr><th scope=\"row\">").append(row.get(0).markup()).append("</th>");
        row.stream().skip(1).forEach(c -> out.append("<td" + c.kind().attribute + ">" + c.markup() + "</td>"));
        out.append("</tr>\n");
    }
}
