package quadmean.design;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.model.Rule.DESIGN_KEY;
import static quadmean.model.Rule.DESIGN_MISSING;
import static quadmean.model.Rule.DESIGN_SYNTAX;
import static quadmean.model.Rule.DESIGN_TYPE;
import static quadmean.model.Rule.DESIGN_VALUE;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.support.SmallDesign;

/** One thing wrong in a design is one problem, on its line, with its key and with words that help. */
class DesignProblemsTest {
    private static final String AREA = "area = 10\n";
    private static final String LAST = "name = \"Douglas-fir\"\n";

    @TempDir
    Path folder;

    /**
     * A design with one line changed.
     *
     * @param words what the message must say, parts parted by {@code |}
     */
    record Slip(String old, String now, Rule rule, long line, String key, String words) {}

    static Stream<Slip> keysAndTypes() {
        return Stream.of(
                new Slip("units =", "untis = 1\nunits =", DESIGN_KEY, 5, "cruise.untis", "did you mean \"units\"?"),
                new Slip("units =", "zzzzzz = 1\nunits =", DESIGN_KEY, 5, "cruise.zzzzzz", "known here: units"),
                new Slip("schema = 1", "schema = 1\ncruse = 1", DESIGN_KEY, 2, "cruse", "did you mean \"cruise\"?"),
                new Slip("schema = 1\n", "\n", DESIGN_VALUE, 1, "schema", "write schema = 1"),
                new Slip("schema = 1\n", "schema = 2\n", DESIGN_VALUE, 1, "schema", "write schema = 1"),
                new Slip("name = \"Small\"", "name = 5", DESIGN_TYPE, 4, "cruise.name", "text in quotes"),
                new Slip("name = \"Small\"", "name = \" \"", DESIGN_VALUE, 4, "cruise.name", "not be empty"),
                new Slip("name = \"Small\"\n", "", DESIGN_MISSING, 3, "cruise.name", "missing|text in quotes"),
                new Slip("units = \"metric\"\n", "", DESIGN_MISSING, 3, "cruise.units", "one of metric, us"),
                new Slip("\"metric\"", "\"metrc\"", DESIGN_VALUE, 5, "cruise.units", "did you mean \"metric\"?"),
                new Slip("\"metric\"", "\"imperial\"", DESIGN_VALUE, 5, "cruise.units", "not one of metric, us"),
                new Slip(AREA, "area = \"10\"\n", DESIGN_TYPE, 6, "cruise.area", "a number"),
                new Slip(AREA, "", DESIGN_MISSING, 3, "cruise.area", "a number above 0"),
                new Slip(AREA, AREA + "date = 2026-04-01\n", DESIGN_TYPE, 7, "cruise.date", "text in quotes"),
                new Slip(AREA, AREA + "seed = 1.5\n", DESIGN_TYPE, 7, "cruise.seed", "a whole number"),
                new Slip(LAST, LAST + "recode_from = \"FD\"", DESIGN_TYPE, 24, "species.PSME.recode_from", "a list"),
                new Slip(LAST, LAST + "recode_from = [1]", DESIGN_TYPE, 24, "species.PSME.recode_from", "a list"),
                new Slip(AREA, AREA + "[plan]\ncv = [1]\n", DESIGN_TYPE, 8, "plan.cv", "must be a number"),
                new Slip(LAST, LAST + "[volume]\nPSME = 1", DESIGN_TYPE, 25, "volume.PSME", "a table [volume.PSME]"),
                new Slip(LAST, LAST + "[[policy]]", DESIGN_TYPE, 24, "policy", "a table [policy]"),
                new Slip(LAST, LAST + "[stratum]", DESIGN_TYPE, 24, "stratum", "a list of tables [[stratum]]"),
                new Slip(
                        "plot = \"plot\"", "plot = { name = \"plot\" }", DESIGN_TYPE, 16, "tally.columns.plot", "text"),
                new Slip(
                        "{ name = \"dbh\", unit = \"cm\" }",
                        "\"dbh\"",
                        DESIGN_TYPE,
                        19,
                        "tally.columns.dbh",
                        "a unit"));
    }

    static Stream<Slip> values() {
        return Stream.of(
                new Slip(AREA, "area = 0\n", DESIGN_VALUE, 6, "cruise.area", "0 is not a number above 0"),
                new Slip(AREA, "area = -3\n", DESIGN_VALUE, 6, "cruise.area", "-3 is not"),
                new Slip(AREA, "area = nan\n", DESIGN_VALUE, 6, "cruise.area", "NaN is not"),
                new Slip(AREA, "area = inf\n", DESIGN_VALUE, 6, "cruise.area", "Infinity is not"),
                new Slip(AREA, "area = 4e-324\n", DESIGN_VALUE, 6, "cruise.area", "is not a number above 0"),
                new Slip(AREA, "area = 1e308\n", DESIGN_VALUE, 6, "cruise.area", "is not"),
                new Slip(AREA, AREA + "confidence = 95\n", DESIGN_VALUE, 7, "cruise.confidence", "such as 0.95"),
                new Slip(AREA, AREA + "confidence = 1\n", DESIGN_VALUE, 7, "cruise.confidence", "between 0 and 1"),
                new Slip(AREA, AREA + "confidence = 1e-300\n", DESIGN_VALUE, 7, "cruise.confidence", "between 0 and 1"),
                new Slip(AREA, AREA + "target_error = 0\n", DESIGN_VALUE, 7, "cruise.target_error", "above 0"),
                new Slip("area = 0.1", "radius = 1e-200", DESIGN_VALUE, 10, "plot.radius", "above 0"),
                new Slip("\"fixed\"", "\"circle\"", DESIGN_VALUE, 9, "plot.kind", "one of fixed, nested, point"),
                new Slip("kind = \"fixed\"\n", "", DESIGN_MISSING, 8, "plot.kind", "one of fixed, nested, point"),
                new Slip("unit = \"cm\"", "unit = \"furlong\"", DESIGN_VALUE, 19, "tally.columns.dbh.unit", "mm, cm"),
                new Slip(", unit = \"cm\"", "", DESIGN_MISSING, 19, "tally.columns.dbh.unit", "one of mm, cm"),
                new Slip(
                        LAST, LAST + "curve = \"naslnd\"", DESIGN_VALUE, 24, "species.PSME.curve", "mean \"naslund\"?"),
                new Slip(
                        LAST, "[height]\nmin_heights = 2", DESIGN_VALUE, 24, "height.min_heights", "whole number of 3"),
                new Slip(LAST, "[height]\nmin_heights = 4.5", DESIGN_VALUE, 24, "height.min_heights", "whole number"),
                new Slip(LAST, "[output]\ndiameter_class = 1e-6", DESIGN_VALUE, 24, "output.diameter_class", "0.1 to"),
                new Slip(
                        LAST,
                        "[policy]\ndbh-missing = \"keep\"",
                        DESIGN_VALUE,
                        24,
                        "policy.dbh-missing",
                        "refuse, drop"),
                new Slip(LAST, "[policy]\ndbh-mising = \"drop\"", DESIGN_KEY, 24, "policy.dbh-mising", "dbh-missing"),
                new Slip(LAST, "[plan]\npilot = \"yes\"", DESIGN_VALUE, 24, "plan.pilot", "one of none, tally"));
    }

    static Stream<Slip> syntax() {
        return Stream.of(
                new Slip("name = \"Small\"", "name = \"Small", DESIGN_SYNTAX, 4, "", "line 4"),
                new Slip(AREA, AREA + "area = 11\n", DESIGN_SYNTAX, 7, "", "area"),
                new Slip("[plot]\n", "[plot\n", DESIGN_SYNTAX, 8, "", "line 8"),
                new Slip("schema = 1", "schema = 99999999999999999999", DESIGN_SYNTAX, 1, "", "too large"),
                new Slip("name = \"Small\"", "name = \"\\uD800\"", DESIGN_SYNTAX, 4, "", "line 4"));
    }

    @ParameterizedTest
    @MethodSource({"keysAndTypes", "values", "syntax"})
    void oneSlipIsOneProblemOnItsLine(Slip slip) {
        DesignReading reading = new SmallDesign().with(slip.old(), slip.now()).read(folder);
        assertNull(reading.design());
        assertEquals(1, reading.problems().size(), reading.problems().toString());
        Problem p = reading.problems().get(0);
        assertAll(
                () -> assertEquals(slip.rule(), p.rule()),
                () -> assertEquals(slip.line(), p.row()),
                () -> assertEquals(slip.key(), p.column()),
                () -> assertEquals("design.toml", p.file()),
                () -> assertEquals(Policy.REFUSE, p.policy()),
                () -> assertTrue(p.detail().contains("line " + slip.line() + ", column "), p.detail()),
                () -> List.of(slip.words().split("\\|"))
                        .forEach(w -> assertTrue(p.message().contains(w), p.message())));
    }

    @Test
    void severalSlipsAreReportedAtOnce() {
        List<Problem> problems = new SmallDesign()
                .with("\"metric\"", "\"metrc\"")
                .with("area = 10", "area = -1")
                .with("kind = \"fixed\"", "kind = \"fxed\"")
                .with("unit = \"m\"", "unit = \"yd\"")
                .plus("colour = \"red\"")
                .problems(folder);
        assertEquals(
                List.of("cruise.area", "cruise.units", "plot.kind", "species.PSME.colour", "tally.columns.height.unit"),
                problems.stream().map(Problem::column).sorted().toList());
    }
}
