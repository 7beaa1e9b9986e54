package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.SmallDesign;

/** {@code quadmean curves}. */
class CurvesCommandTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"demo", "idaho-points"})
    void writesPageJsonAndTableTheSameEachTime(String name) throws IOException {
        Run run = Run.of("curves", "designs/" + name + ".toml", "--out", folder);
        run.assertCode(0);
        Map<Boolean, Set<String>> files = Run.files(folder).keySet().stream()
                .collect(Collectors.partitioningBy(f -> f.endsWith(".png"), Collectors.toSet()));
        assertEquals(Set.of("curves.html", "curves.json", "curves.csv"), files.get(false));
        Matcher drawn = Pattern.compile("<figure id=\"([^\"]+)\"")
                .matcher(Run.files(folder).get("curves.html"));
        assertEquals(
                drawn.results().map(m -> "chart-" + m.group(1) + ".png").collect(Collectors.toSet()), files.get(true));
        assertTrue(run.out().contains("All species: "), run.out());
        assertTrue(run.out().contains("leave-1-out"), run.out());
        assertTrue(run.out().contains("Curves: "), run.out());
        Run.of("curves", "designs/" + name + ".toml", "--out", folder.resolve("again"))
                .assertCode(0);
        assertEquals(Run.files(folder), Run.files(folder.resolve("again")));
    }

    @Test
    void aRefusedTallyGivesNoCurves() throws IOException {
        Path design = Run.cruise(folder, new SmallDesign(), Run.TALLY.replace("3,1,PSME,28", "3,1,PSME,-28"));
        Run run = Run.of("curves", design, "--out", folder.resolve("out"));
        run.assertCode(1);
        assertEquals(Set.of("problems.csv"), Run.files(folder.resolve("out")).keySet());
    }

    @Test
    void sixHeightsGiveTheSpeciesThePooledCurve() throws IOException {
        Path design = Run.cruise(folder, new SmallDesign(), Run.TALLY);
        Run run = Run.of("curves", design, "--out", folder.resolve("out"));
        run.assertCode(0);
        assertTrue(
                run.out().contains("PSME: 6 heights, 10 needed for a curve of its own; pooled curve used"), run.out());
    }

    /** Heights are drawn from the seed of the design; totals then differ from those of mean heights. */
    @Test
    void fillingByDrawsIsSeeded() throws IOException {
        String tally = Run.TALLY + "3,2,PSME,31,\n3,3,PSME,22,\n";
        SmallDesign drawn = new SmallDesign().plus("[height]\nfill = \"drawn\"\n");
        Path one = Run.cruise(folder, drawn, tally);
        Run.of("estimate", one, "--out", folder.resolve("a")).assertCode(0);
        Run.of("estimate", one, "--out", folder.resolve("b")).assertCode(0);
        Path mean = Run.cruise(folder, new SmallDesign(), tally);
        Run.of("estimate", mean, "--out", folder.resolve("c")).assertCode(0);
        String a = Run.files(folder.resolve("a")).get("trees.csv");
        assertEquals(a, Run.files(folder.resolve("b")).get("trees.csv"));
        String c = Run.files(folder.resolve("c")).get("trees.csv");
        long differing = a.lines().filter(l -> !c.contains(l)).count();
        assertEquals(2, differing, "the two trees without heights");
    }
}
