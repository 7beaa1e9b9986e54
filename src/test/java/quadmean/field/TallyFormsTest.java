package quadmean.field;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.model.Tree;
import quadmean.support.SmallDesign;

/** What the trees of a tally come to in its several forms; the rules about them are in format-cases.txt. */
class TallyFormsTest {
    private static final String COLUMNS =
            "dbh = { name = \"dbh\", unit = \"cm\" }\nheight = { name = \"height\", unit = \"m\" }";

    @TempDir
    Path folder;

    private List<Tree> trees(String columns, String csv) throws IOException {
        Files.writeString(folder.resolve("tally.csv"), csv);
        return TallyReader.read(new SmallDesign()
                        .with("tree = \"tree\"\n", "")
                        .with(COLUMNS, columns)
                        .valid(folder))
                .plots()
                .stream()
                .flatMap(p -> p.trees().stream())
                .toList();
    }

    @Test
    void dbhIsGirthOverPi() throws IOException {
        List<Tree> trees =
                trees("girth = { name = \"g\", unit = \"m\" }", "plot,species,g\n1,PSME,3.141592653589793\n1,PSME,1\n");
        assertEquals(100, trees.get(0).dbhCm(), 1e-12); // by definition: d = g/π
        assertEquals(100 / Math.PI, trees.get(1).dbhCm(), 1e-12);
    }

    @Test
    void classesOfTwoInchesCountAtTheirMidpoint() throws IOException {
        List<Tree> trees = trees(
                "dbh = { name = \"dbh\", unit = \"in\", classes = \"midpoint\" }",
                "plot;species;dbh\n1;PSME;8-10\n1;PSME;9\n1;PSME;9,5-10,5\n1;PSME;9,9\n");
        // (8 + 10) / 2 = 9 in = 22.86 cm; (9.5 + 10.5) / 2 = 10 in = 25.4 cm
        assertEquals(22.86, trees.get(0).dbhCm(), 1e-12);
        assertEquals(22.86, trees.get(1).dbhCm(), 1e-12);
        assertEquals(25.4, trees.get(2).dbhCm(), 1e-12);
    }

    @Test
    void rowsStandForTheirTreesAndLogs() throws IOException {
        List<Tree> trees = trees(
                "dbh = { name = \"dbh_in\" }\nlogs = \"logs\"\ncount = \"stems\"",
                "plot,species,dbh_in,logs,stems\n1,PSME,12,1.5,4\n1,PSME,14,2,\n1,PSME,16,,3\n");
        assertEquals(
                List.of(4, 1, 3), trees.stream().map(t -> t.detail().count()).toList());
        assertEquals(
                List.of(OptionalDouble.of(1.5), OptionalDouble.of(2), OptionalDouble.empty()),
                trees.stream().map(t -> t.detail().logs()).toList());
        assertEquals(12 * 2.54, trees.get(0).dbhCm(), 1e-12);
    }
}
