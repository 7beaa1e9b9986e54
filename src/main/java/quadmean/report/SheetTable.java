package quadmean.report;

import java.util.ArrayList;
import java.util.List;

/** A table for paper: its header is repeated on each page. A column whose head starts with {@code *} holds words. */
final class SheetTable {
    private static final String WORDS = "*";
    private static final int FEW_ROWS = 21;
    private static final int MANY_ROWS = 38;

    private final String caption;
    private final List<String> head;
    private final List<List<String>> rows = new ArrayList<>();

    private SheetTable(String caption, List<String> head) {
        this.caption = caption;
        this.head = List.copyOf(head);
    }

    static SheetTable of(String caption, List<String> head) {
        return new SheetTable(caption, head);
    }

    /** Adds a row of text, as many cells as the head has. */
    SheetTable row(List<String> cells) {
        if (cells.size() != head.size()) {
            throw new IllegalArgumentException(cells.size() + " cells under " + head.size() + " heads: " + caption);
        }
        rows.add(List.copyOf(cells));
        return this;
    }

    /** The table. */
    String markup() {
        return part(rows, caption);
    }

    /** The table in two halves side by side, for long columns of few figures. */
    String halves() {
        int middle = (rows.size() + 1) / 2;
        return "<div class=\"halves\">\n" + part(rows.subList(0, middle), caption)
                + part(rows.subList(middle, rows.size()), caption + ", continued") + "</div>\n";
    }

    private String part(List<List<String>> some, String words) {
        Html html = new Html()
                .raw("<table class=\"" + room(some.size()) + "\">\n")
                .element("caption", words)
                .raw("<thead><tr>");
        for (String h : head) {
            html.raw("<th scope=\"col\"" + kind(h) + ">").text(bare(h)).raw("</th>");
        }
        html.raw("</tr></thead>\n<tbody>\n");
        for (List<String> row : some) {
            html.raw("<tr>");
            for (int i = 0; i < row.size(); i++) {
                String tag = i == 0 ? "th" : "td";
                html.raw("<" + tag + (i == 0 ? " scope=\"row\"" : "") + kind(head.get(i)) + ">")
                        .text(row.get(i))
                        .raw("</" + tag + ">");
            }
            html.raw("</tr>\n");
        }
        return html.raw("</tbody></table>\n").toString();
    }

    /** Few rows are printed larger, for wet paper and tired eyes; many so that they stay on one page. */
    private static String room(int rows) {
        return rows <= FEW_ROWS ? "roomy" : rows > MANY_ROWS ? "dense" : "usual";
    }

    private static String kind(String head) {
        return head.startsWith(WORDS) ? " class=\"words\"" : "";
    }

    private static String bare(String head) {
        return head.startsWith(WORDS) ? head.substring(1) : head;
    }
}
