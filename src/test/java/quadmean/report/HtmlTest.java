package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import quadmean.report.HtmlTable.Cell;

class HtmlTest {

    @Test
    void escapesWhatMeansSomethingInHtml() {
        assertEquals("&lt;b&gt;&amp;&quot;&#39;é", Html.escape("<b>&\"'é"));
    }

    @Test
    void replacesControlCharacters() {
        assertEquals("a\uFFFDb\tc\nd", Html.escape("a\u0000b\tc\nd"));
    }

    @Test
    void tablesHaveCaptionAndScopes() {
        String table = HtmlTable.of("A & B", List.of(Cell.text("k"), Cell.number("v")))
                .row(List.of(Cell.text("<x>"), Cell.number("1", "small")))
                .markup();
        assertTrue(table.contains("<caption><span>A &amp; B</span></caption>"), table);
        assertTrue(table.contains("<th scope=\"col\">k</th>"), table);
        assertTrue(table.contains("<th scope=\"row\">&lt;x&gt;</th>"), table);
        assertTrue(table.contains("<td class=\"num\">1<small>small</small></td>"), table);
    }

    @Test
    void footnotesListEachReasonOnce() {
        Footnotes notes = new Footnotes();
        assertEquals("", notes.mark(""));
        assertEquals(" [1]", notes.mark("a < b"));
        assertEquals(" [2]", notes.mark("c"));
        assertEquals(" [1]", notes.mark("a < b"));
        assertEquals("<p class=\"notes\">[1] a &lt; b. [2] c. </p>\n", notes.markup());
        assertEquals("", new Footnotes().markup());
    }
}
