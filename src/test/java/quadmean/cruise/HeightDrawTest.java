package quadmean.cruise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quadmean.model.FieldHeight;
import quadmean.model.HeightSource;
import quadmean.model.Tree;

/** Heights of an estate are drawn alike whoever offers what first, and each with the same chance. */
class HeightDrawTest {
    private static final int TREES = 40;
    private static final int DRAWN = 10;

    private static List<Tree> trees() {
        List<Tree> trees = new ArrayList<>();
        for (int i = 0; i < TREES; i++) {
            FieldHeight height = new FieldHeight(15 + i / 7.0, HeightSource.MEASURED, "h", "");
            trees.add(new Tree("t", i, "" + i / 8, "" + i % 8, "PSME", 20 + i % 5, height));
        }
        return trees;
    }

    private static HeightDraw draw(long seed, List<Tree> trees) {
        HeightDraw draw = new HeightDraw(seed, DRAWN);
        trees.forEach(t -> draw.offer(0, "S1", t));
        return draw;
    }

    @Test
    void orderAndPartsDoNotMatter() {
        for (long seed = 1; seed <= 50; seed++) {
            List<Tree> trees = trees();
            List<Tree> drawn = draw(seed, trees).drawn(0);
            assertEquals(DRAWN, drawn.size());
            Collections.shuffle(trees, new Random(seed));
            assertEquals(drawn, draw(seed, trees).drawn(0));
            HeightDraw joined = draw(seed, trees.subList(25, TREES));
            joined.offer(draw(seed, trees.subList(0, 25)));
            assertEquals(drawn, joined.drawn(0));
        }
    }

    /**
     * Squares of inclusions over their variance p(1 - p)·draws, times (N - 1)/N as their sum is fixed, are chi-square on N - 1 = 39
     * degrees of freedom (by algebra), whose 1 - 1e-4 point is 80.646 (R 4.2.2, qchisq(1 - 1e-4, 39)).
     */
    @Test
    void chancesAreEqual() {
        int draws = 4000;
        int[] times = new int[TREES];
        for (long seed = 0; seed < draws; seed++) {
            draw(seed, trees()).drawn(0).forEach(t -> times[(int) t.row()]++);
        }
        double p = (double) DRAWN / TREES;
        double chiSquare = 0;
        for (int n : times) {
            chiSquare += Math.pow(n - draws * p, 2) / (draws * p * (1 - p)) * (TREES - 1) / TREES;
        }
        assertTrue(chiSquare < 80.646, "chi-square " + chiSquare);
    }

    @Test
    void regionsAndSpeciesAreDrawnApart() {
        HeightDraw draw = new HeightDraw(1, 3);
        for (Tree t : trees()) {
            String species = t.row() % 2 == 0 ? "PSME" : "TSHE";
            draw.offer((int) t.row() % 3, "S1", new Tree("t", t.row(), "1", "1", species, 30, t.height()));
        }
        assertEquals(6, draw.drawn(0).size());
        assertEquals(6, draw.drawn(2).size());
        assertEquals(
                3,
                draw.drawn(1).stream().filter(t -> t.species().equals("TSHE")).count());
    }
}
