package quadmean.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quadmean.model.Plot;
import quadmean.model.Tree;

class TreeMatcherTest {
    private static int row = 1;

    private static Tree tree(String number, String species, double dbh) {
        return new Tree("t.csv", row++, "1", number, species, dbh, null);
    }

    private static List<String> match(List<Tree> crew, List<Tree> checker) {
        return new TreeMatcher(15)
                .match("A", new Plot("1", "S", crew), new Plot("1", "S", checker)).stream()
                        .map(m -> m.kind() + " " + text(m.cruised()) + " " + text(m.checked()))
                        .sorted()
                        .toList();
    }

    private static String text(@org.jspecify.annotations.Nullable Tree t) {
        return t == null ? "-" : t.number() + t.species() + Math.round(t.dbhCm());
    }

    @Test
    void numbersComeFirstWhateverElseTheTreesSay() {
        assertEquals(
                List.of("NUMBER 1PSME30 1ABGR44", "NUMBER 2ABGR44 2PSME30"),
                match(
                        List.of(tree("1", "PSME", 30), tree("2", "ABGR", 44)),
                        List.of(tree("2", "PSME", 30), tree("1", "ABGR", 44))));
    }

    @Test
    void treesWithoutPartnerByNumberAreMatchedBySpeciesAndNearestDbh() {
        assertEquals(
                List.of("EXTRA 9PSME50 -", "MISSED - 5ABGR31", "SPECIES_AND_SIZE 3PSME30 7PSME31"),
                match(
                        List.of(tree("3", "PSME", 30), tree("9", "PSME", 50)),
                        List.of(tree("7", "PSME", 31), tree("5", "ABGR", 31))));
    }

    @Test
    void nearestPairsAreMadeFirstInAnyOrderOfRows() {
        List<Tree> crew = new ArrayList<>(List.of(tree("", "PSME", 30), tree("", "PSME", 32), tree("", "PSME", 36)));
        List<Tree> checker = new ArrayList<>(List.of(tree("", "PSME", 32), tree("", "PSME", 35), tree("", "PSME", 29)));
        for (int seed = 0; seed < 6; seed++) {
            Collections.shuffle(crew, new Random(seed));
            Collections.shuffle(checker, new Random(seed + 50));
            assertEquals(
                    List.of(
                            "SPECIES_AND_SIZE PSME30 PSME29",
                            "SPECIES_AND_SIZE PSME32 PSME32",
                            "SPECIES_AND_SIZE PSME36 PSME35"),
                    match(crew, checker));
        }
    }

    @Test
    void treesWithoutNumbersOfAnotherSpeciesAreMatchedLast() {
        assertEquals(
                List.of("SIZE ABGR40 PSME41", "SPECIES_AND_SIZE PSME20 PSME20"),
                match(
                        List.of(tree("", "ABGR", 40), tree("", "PSME", 20)),
                        List.of(tree("", "PSME", 41), tree("", "PSME", 20))));
    }

    @Test
    void tooFarApartInSizeIsNoMatch() {
        assertEquals(
                List.of("EXTRA PSME30 -", "MISSED - PSME36"),
                match(List.of(tree("", "PSME", 30)), List.of(tree("", "PSME", 36))));
    }
}
