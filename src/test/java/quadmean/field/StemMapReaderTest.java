package quadmean.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.design.Design;
import quadmean.model.MappedStem;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.StemMap;
import quadmean.support.SmallDesign;
import quadmean.support.Tolerance;

class StemMapReaderTest {
    private static final String DESIGN = """
            [plan]
            cv = 40
            [plan.kinds]
            plot_areas = [0.01, 0.02]
            stem_map = "map.csv"
            corners = [0, 0, 100, 50]
            [plan.kinds.columns]
            x = "x_ft"
            y = { name = "y", unit = "m" }
            dbh = "dbh_in"
            """;

    @TempDir
    Path folder;

    private StemMapReader.Reading read(String design, String map) throws IOException {
        Files.writeString(folder.resolve("map.csv"), map);
        return read(design);
    }

    private StemMapReader.Reading read(String text) throws IOException {
        Design design = new SmallDesign().plus(text).valid(folder);
        return StemMapReader.read(
                design, design.plan().kinds().orElseThrow().map().orElseThrow());
    }

    private static List<Problem> refusing(StemMapReader.Reading reading) {
        return reading.problems().stream()
                .filter(p -> p.rule() != Rule.FORMAT_DETECTED)
                .toList();
    }

    @Test
    void positionsAndDbhAreMetricInside() throws IOException {
        StemMapReader.Reading reading = read(DESIGN, "tree,dbh_in,x_ft,y\n1,10,50,20\n2,5.5,100,50\n");
        assertEquals(List.of(), refusing(reading));
        StemMap map = reading.map();
        assertNotNull(map);
        MappedStem first = map.stems().get(0);
        Tolerance.ROUNDING.check(15.24, first.xM(), "50 ft");
        Tolerance.ROUNDING.check(25.4, first.dbhCm(), "10 in");
        assertEquals(20, first.yM());
        assertEquals(2, map.stems().size());
        Tolerance.ROUNDING.check(30.48 * 50 / 10_000, map.areaHa(), "ha");
    }

    @Test
    void withoutCornersTheStemsBoundTheMap() throws IOException {
        String open = DESIGN.replace("corners = [0, 0, 100, 50]\n", "");
        StemMap map = read(open, "x_ft,y,dbh_in\n10,-2,9\n110,5,9\n20,30,9\n").map();
        assertNotNull(map);
        Tolerance.ROUNDING.check(30.48, map.width(), "width");
        assertEquals(32, map.length());
    }

    @Test
    void allBadRowsAreListed() throws IOException {
        StemMapReader.Reading reading = read(DESIGN, """
                x_ft,y,dbh_in
                1,2,3
                101,2,3
                1,-0.5,3
                1,2,0
                1,2,600
                ,2,3
                1,two,3
                1,2
                1,2.0,3
                """);
        assertNull(reading.map());
        List<Problem> problems = refusing(reading);
        assertEquals(
                List.of(3L, 4L, 5L, 6L, 7L, 8L, 9L, 10L),
                problems.stream().map(Problem::row).toList());
        List<String> words = List.of(
                "101 lies outside the corners, which go from 0 to 100 ft",
                "-0.5 lies outside the corners, which go from 0 to 50 m",
                "0 in is no dbh",
                "600 in is no dbh",
                "the stem has no x",
                "\"two\" is not a plain number",
                "the row has 2 fields",
                "the stem stands in line 2 already");
        for (int i = 0; i < words.size(); i++) {
            assertTrue(
                    problems.get(i).detail().contains(words.get(i)),
                    problems.get(i).detail());
        }
    }

    @Test
    void aMissingColumnIsCalledByWhatItHolds() throws IOException {
        List<Problem> problems = refusing(read(DESIGN, "x_m,y,dbh_in\n1,2,3\n"));
        assertEquals(1, problems.size(), problems.toString());
        assertTrue(
                problems.get(0).message().contains("no column \"x_ft\" for x; did you mean \"x_m\"?"),
                problems.toString());
    }

    @Test
    void aMapNeedsStemsAndAnArea() throws IOException {
        assertTrue(refusing(read(DESIGN, "x_ft,y,dbh_in\n")).get(0).detail().contains("no stems"));
        String open = DESIGN.replace("corners = [0, 0, 100, 50]\n", "");
        assertTrue(refusing(read(open, "x_ft,y,dbh_in\n1,2,3\n1,4,3\n"))
                .get(0)
                .detail()
                .contains("on one line"));
        assertEquals(Rule.FILE_UNREADABLE, refusing(read(DESIGN, "")).get(0).rule());
    }

    @Test
    void aMapThatIsNotThereIsAnErrorOfItsOwn() {
        Assertions.assertThrows(NoSuchFileException.class, () -> read(DESIGN));
    }
}
