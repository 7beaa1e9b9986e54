package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quadmean.support.SmallDesign;

/** Inputs broken on purpose: each is refused with words that tell the user what to do, and nothing is estimated. */
class BrokenInputsTest {
    private static final SmallDesign DESIGN = new SmallDesign();

    @TempDir
    Path folder;

    /**
     * A broken input.
     *
     * @param what what is broken
     * @param command command to run
     * @param place start of the message: file and line
     * @param remedy what the user is told to do
     */
    record Broken(String what, String command, SmallDesign design, String tally, String place, String remedy) {
        @Override
        public String toString() {
            return what;
        }
    }

    private static Broken tally(String what, String old, String now, String place, String remedy) {
        assertTrue(Run.TALLY.contains(old), old);
        int at = Run.TALLY.indexOf(old);
        String broken = Run.TALLY.substring(0, at) + now + Run.TALLY.substring(at + old.length());
        return new Broken(what, "estimate", DESIGN, broken, place, remedy);
    }

    private static Broken design(String what, String command, SmallDesign design, String place, String remedy) {
        return new Broken(what, command, design, Run.TALLY, place, remedy);
    }

    static Stream<Broken> inputs() {
        SmallDesign volume =
                DESIGN.plus("[species.X]\n[volume.X]\nform = \"honer\"\na = 1\nb = 300\ndbh_unit = \"in\"\n"
                        + "height_unit = \"ft\"\nvolume_unit = \"ft3\"\nsource = \"S\"\nstanding = \"invented\"");
        return Stream.of(
                design(
                        "a misspelt key",
                        "check",
                        DESIGN.with("area = 10", "area = 10\nsed = 3"),
                        "design.toml:7",
                        "did you mean \"seed\"?"),
                design(
                        "a quote left out",
                        "plan",
                        DESIGN.with("\"Small\"", "\"Small"),
                        "design.toml:4",
                        "mend the line"),
                design(
                        "two plot sizes",
                        "estimate",
                        DESIGN.with("area = 0.1", "area = 0.1\nradius = 3"),
                        "design.toml:11",
                        "either a radius"),
                design("a species without an equation", "estimate", volume, "design.toml", "add [volume.CODE]"),
                design("no variation to plan from", "plan", DESIGN, "design.toml", "give plan.cv"),
                new Broken(
                        "an empty tally", "estimate", DESIGN, "", "tally.csv", "save the file again, as CSV in UTF-8"),
                tally("a renamed column", "dbh", "diameter", "tally.csv:1", "name the column as the header does"),
                tally("a number with its unit", "30,20", "30 cm,20", "tally.csv:2", "write the number alone"),
                tally("a tree keyed twice", "1,2,PSME,25,18", "1,1,PSME,30,20", "tally.csv:3", "delete the copy"),
                tally("a height in the wrong unit", "25,18", "25,180", "tally.csv:3", "check the unit in the design"),
                tally("a misspelt species", "40", "40,24\n2,9,PSMF,41", "tally.csv:5", "did you mean PSME?"),
                tally("a quote that is not closed", "40,24", "40,\"24", "tally.csv:4", "close it"));
    }

    @ParameterizedTest
    @MethodSource("inputs")
    void inputIsRefusedWithWordsThatHelp(Broken broken) throws IOException {
        Path out = folder.resolve("out");
        Run run = Run.of(broken.command(), Run.cruise(folder, broken.design(), broken.tally()), "--out", out);
        run.assertCode(1);
        assertEquals("", run.out());
        String message = run.err().lines().findFirst().orElse("");
        assertTrue(message.startsWith("error   " + broken.place()), message);
        assertTrue(message.contains(broken.remedy()) && message.contains("to do: "), message);
        assertTrue(run.err().contains("Refused. Nothing was estimated"), run.err());
        Map<String, String> written = Run.files(out);
        assertEquals("[problems.csv]", written.keySet().toString());
        assertTrue(written.get("problems.csv").lines().count() >= 2, written.get("problems.csv"));
        assertEquals(broken.tally(), Run.files(folder).get("tally.csv"));
    }
}
