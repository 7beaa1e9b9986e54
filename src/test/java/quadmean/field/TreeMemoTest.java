package quadmean.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import quadmean.model.Tree;

/** Readings are known by their text and by the kind of their stand, and by nothing less. */
class TreeMemoTest {
    private static final Tree TREE = new Tree("t", 1, "1", "1", "PSME", 30, null);

    private static PlotText row(String... fields) {
        PlotText text = new PlotText();
        text.begin(1);
        for (String field : fields) {
            text.add(field.toCharArray(), 0, field.length());
        }
        return text;
    }

    @Test
    void kindsAndReadingsStayApart() {
        TreeMemo memo = new TreeMemo(new int[] {0, 2}, 20_000);
        int number = 0;
        for (int kind = 0; kind < 200; kind++) {
            for (int dbh = 0; dbh < 75; dbh++) {
                PlotText text = row("PSME", "any", dbh / 10 + "." + dbh % 10);
                assertEquals(TreeMemo.UNKNOWN, memo.find(text, kind), "kind " + kind + ", dbh " + dbh);
                memo.put(text, kind, TREE, number++);
            }
        }
        number = 0;
        for (int kind = 0; kind < 200; kind++) {
            for (int dbh = 0; dbh < 75; dbh++) {
                PlotText text = row("PSME", "another", dbh / 10 + "." + dbh % 10);
                assertEquals(number++, memo.number(memo.find(text, kind)));
            }
        }
        assertEquals(TreeMemo.UNKNOWN, memo.find(row("TSHE", "any", "1.0"), 0));
    }

    @Test
    void onlyWordsAreKeptAndOnlySoMany() {
        TreeMemo memo = new TreeMemo(new int[] {0}, 1);
        assertTrue(memo.hasRoom(row("12345678")));
        assertFalse(memo.hasRoom(row("123456789")), "nine letters");
        assertFalse(memo.hasRoom(row("é")), "beyond ASCII");
        assertFalse(memo.hasRoom(row("\u0000A")), "a sign of value 0, which a word would lose");
        memo.put(row("A"), 0, TREE, 7);
        assertFalse(memo.hasRoom(row("B")), "full");
    }

    /** Texts that differ are different words, and blanks around them do not count. */
    @Test
    void wordIsTheWholeText() {
        assertEquals(row(" 30.1\t").word(0), row("30.1").word(0));
        assertEquals(0, row("").word(0));
        assertFalse(row("30.1").word(0) == row("30.10").word(0));
        assertFalse(row("S1").word(0) == row("\u0000S1").word(0));
        assertFalse(row("ab").word(0) == row("ba").word(0));
    }
}
