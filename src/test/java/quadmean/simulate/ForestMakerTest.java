package quadmean.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.design.Design;
import quadmean.model.MappedTree;
import quadmean.simulate.Trials.Stand;

class ForestMakerTest {
    @TempDir
    private Path folder;

    private Design design(Stand stand, boolean strata) throws IOException {
        return Trials.design(
                folder,
                Trials.text(
                        stand,
                        strata,
                        "[plot]\nkind = \"fixed\"\narea = 0.01\n"
                                + (strata ? "[selection]\nmethod = \"stratified\"\n" : "")));
    }

    @Test
    void aMapIsReadWithItsUnits() throws IOException {
        Forest spruces = Stand.SPRUCES.forest(design(Stand.SPRUCES, false));
        assertEquals(134, spruces.trees().size());
        assertEquals(21, spruces.trees().get(0).dbhCm(), 1e-9, "dbh in metres in the file");
        assertEquals(0.2128, spruces.areaHa(), 1e-12);
        assertEquals(
                584,
                Stand.LONGLEAF.forest(design(Stand.LONGLEAF, false)).trees().size());
        assertEquals(504, Stand.WAKA.forest(design(Stand.WAKA, false)).trees().size());
    }

    /** Two bands as wide as 0.4 and 0.6 of the area; each tree belongs to one of them. */
    @Test
    void strataAreBands() throws IOException {
        Forest forest = Stand.LONGLEAF.forest(design(Stand.LONGLEAF, true));
        assertEquals(List.of("W", "E"), List.copyOf(forest.strata().keySet()));
        assertEquals(1.6, forest.strata().get("W").areaHa(), 1e-9);
        for (int i = 0; i < forest.trees().size(); i++) {
            assertEquals(forest.trees().get(i).x() <= 80 ? 0 : 1, forest.stratumOf(i));
        }
    }

    /** The table has 553 trees per hectare. */
    @Test
    void aStandTableMakesItsNumberOfTreesInItsSizes() throws IOException {
        Forest forest = Stand.CLUSTERED.forest(design(Stand.CLUSTERED, false));
        assertEquals(553 * 6, forest.trees().size());
        assertTrue(forest.hasHeights());
        long large = forest.trees().stream()
                .filter(t -> t.species().equals("PIPO") && t.dbhCm() >= 55)
                .count();
        assertEquals(21 * 6, large, 4 * Math.sqrt(21 * 6.0), "trees of 60 and 70 cm");
        assertTrue(forest.trees().stream().allMatch(t -> t.dbhCm() >= 5 && t.dbhCm() <= 75));
    }

    /**
     * The mean distance to the nearest tree over that of trees at random, 0.5/√density: 1 with a standard error of 0.5227/√n at random,
     * less in clumps, more where trees are spaced (Clark and Evans 1954, from memory).
     */
    @Test
    void patternsAreWhatTheySay() throws IOException {
        double far = 5 * 0.5227 / Math.sqrt(553 * 6);
        assertTrue(spacing(Stand.CLUSTERED) < 1 - far, "clumps: " + spacing(Stand.CLUSTERED));
        assertTrue(spacing(Stand.REGULAR) > 1 + far, "spaced: " + spacing(Stand.REGULAR));
    }

    private double spacing(Stand stand) throws IOException {
        List<MappedTree> trees = stand.forest(design(stand, false)).trees();
        double sum = 0;
        for (MappedTree a : trees) {
            double least = Double.POSITIVE_INFINITY;
            for (MappedTree b : trees) {
                if (a != b) {
                    least = Math.min(least, Math.hypot(a.x() - b.x(), a.y() - b.y()));
                }
            }
            sum += least;
        }
        return sum / trees.size() / (0.5 / Math.sqrt(553 / 10_000.0));
    }

    /** By hand: between 30 cm and 18 m and 40 cm and 22 m a tree of 35 cm is 20 m high on average. */
    @Test
    void heightsFollowTheTableWithScatter() throws IOException {
        Forest forest = Stand.REGULAR.forest(design(Stand.REGULAR, false));
        List<MappedTree> middle = forest.trees().stream()
                .filter(t -> t.species().equals("PIPO") && Math.abs(t.dbhCm() - 35) < 2.5)
                .toList();
        double mean = middle.stream()
                .mapToDouble(t -> t.heightM() - 0.4 * (t.dbhCm() - 35))
                .average()
                .orElseThrow();
        double error = 0.12 * 18.7 / Math.sqrt(middle.size());
        assertEquals(20, mean, 3 * error, middle.size() + " trees");
    }

    @Test
    void theSameSeedMakesTheSameForest() throws IOException {
        assertEquals(
                Stand.CLUSTERED.forest(design(Stand.CLUSTERED, false)).trees(),
                Stand.CLUSTERED.forest(design(Stand.CLUSTERED, false)).trees());
    }
}
