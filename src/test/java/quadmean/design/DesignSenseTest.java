package quadmean.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quadmean.model.Problem;
import quadmean.support.SmallDesign;

/** Keys that are right by themselves but not together. */
class DesignSenseTest {
    private static final SmallDesign SMALL = new SmallDesign();
    private static final String RING = "\n[[plot.ring]]\nmin_dbh = %s\nradius = %s\n";
    private static final String VOLUME = """
            [volume.PSME]
            form = "schumacher_hall"
            log_base = "10"
            a = -2.7
            b = 1.7
            c = 1.1
            dbh_unit = "in"
            height_unit = "ft"
            volume_unit = "ft3"
            source = "S"
            standing = "verified"
            """;

    @TempDir
    Path folder;

    record Clash(SmallDesign design, long line, String key, String words) {}

    static Stream<Clash> strata() {
        SmallDesign two = stratified("N", "S", "");
        return Stream.of(
                new Clash(two.with("\"stratified\"", "\"systematic\""), 21, "selection.method", "2 strata"),
                new Clash(SMALL.plus("[selection]\nmethod = \"stratified\""), 25, "selection.method", "[[stratum]]"),
                new Clash(stratified("N", "N", ""), 28, "stratum.code", "two strata"),
                new Clash(stratified("N", "*", ""), 28, "stratum.code", "all strata"),
                new Clash(stratified("N", "S", "plots = [\"3-5\"]"), 30, "stratum.plots", "plot 3 is listed twice"),
                new Clash(
                        two.with("name = \"Small\"", "name = \"Small\"\narea = 11"),
                        5,
                        "cruise.area",
                        "add up to 10 ha"),
                new Clash(two.with("method =", "plots = [\"1\"]\nmethod ="), 21, "selection.plots", "[[stratum]]"),
                new Clash(
                        SMALL.plus("[selection]\nplots = [\"1-3\", \"2\"]"),
                        25,
                        "selection.plots",
                        "2 is listed twice"),
                new Clash(SMALL.plus("[selection]\nplots = [\"5-3\"]"), 25, "selection.plots", "backwards"),
                new Clash(SMALL.plus("[selection]\nplots = [\" \"]"), 25, "selection.plots", "must not be empty"),
                new Clash(
                        SMALL.plus("[selection]\nplots = [\"1-999999\"]"), 25, "selection.plots", "more than 100000"));
    }

    /** Two strata of 4 and 6 ha; the second begins on line 27. */
    private static SmallDesign stratified(String first, String second, String more) {
        return new SmallDesign(SmallDesign.TEXT
                        .replace("area = 10\n", "")
                        .replace("\n[species.PSME]\nname = \"Douglas-fir\"\n", "[selection]\nmethod = \"stratified\"\n")
                + "[[stratum]]\ncode = \"%s\"\narea = 4\nplots = [\"1-3\"]\n\n[[stratum]]\ncode = \"%s\"\narea = 6\n%s\n"
                        .formatted(first, second, more));
    }

    static Stream<Clash> plots() {
        SmallDesign bare = SMALL.with("area = 0.1", "");
        SmallDesign nested = bare.with("\"fixed\"", "\"nested\"");
        SmallDesign point = SMALL.with("kind = \"fixed\"\narea = 0.1", "kind = \"point\"\nbasal_area_factor = 4");
        return Stream.of(
                new Clash(SMALL.with("area = 0.1", "area = 0.1\nradius = 5"), 11, "plot.radius", "either"),
                new Clash(bare, 8, "plot.radius", "radius (m) or an area (ha)"),
                new Clash(nested.plus(RING.formatted("0", "3")), 25, "plot.ring", "two [[plot.ring]]"),
                new Clash(
                        nested.plus(RING.formatted("20", "3") + RING.formatted("10", "9")),
                        30,
                        "plot.ring.min_dbh",
                        "smallest first"),
                new Clash(
                        nested.plus(RING.formatted("0", "3") + RING.formatted("0", "9")),
                        30,
                        "plot.ring.min_dbh",
                        "ascending"),
                new Clash(point.with("basal_area_factor = 4", ""), 8, "plot.basal_area_factor", "above 0"),
                new Clash(
                        point.plus("[selection]\nfinite_population = \"correct\""),
                        25,
                        "selection.finite_population",
                        "\"ignore\""),
                new Clash(
                        SMALL.with("area = 10\n", "area = 0.19\n").plus("[selection]\nfinite_population = \"correct\""),
                        25,
                        "selection.finite_population",
                        "fewer than two plots"),
                new Clash(
                        point.plus("[plan]\nfinite_population = \"correct\""),
                        25,
                        "plan.finite_population",
                        "\"ignore\""));
    }

    static Stream<Clash> tallies() {
        String again =
                SmallDesign.TEXT.substring(SmallDesign.TEXT.indexOf("[[tally]]"), SmallDesign.TEXT.indexOf("[species"));
        String readings = "height = { name = \"height\", unit = \"m\" }\n";
        String angle = " = { name = \"%s\", unit = \"%s\" }\n";
        return Stream.of(
                new Clash(SMALL.plus(again), 25, "tally.file", "already"),
                new Clash(SMALL.plus(again.replace("tally.csv", "./x/../tally.csv")), 25, "tally.file", "already"),
                new Clash(
                        SMALL.with("\"tally.csv\"", "\"tally.csv\"\nseparator = \",\"\ndecimal = \",\""),
                        15,
                        "tally.decimal",
                        "both"),
                new Clash(SMALL.with("\"tally.csv\"", "\"tally.csv\"\nsheet = \"A\""), 14, "tally.sheet", "workbook"),
                new Clash(
                        SMALL.with("\"tally.csv\"", "\"tally.xlsx\"\nencoding = \"utf-8\""),
                        14,
                        "tally.encoding",
                        "workbook"),
                new Clash(
                        SMALL.with("\"tally.csv\"", "\"t.xlsx\"\nsheet = \"A\"\nplots_sheet = \"A\""),
                        15,
                        "tally.plots_sheet",
                        "a sheet each"),
                new Clash(
                        SMALL.with("dbh = {", "girth = { name = \"g\", unit = \"cm\" }\ndbh = {"),
                        19,
                        "tally.columns.girth",
                        "not for both"),
                new Clash(SMALL.with("\"tally.csv\"", "\"a\\u0000b\""), 13, "tally.file", "no file name"),
                new Clash(SMALL.with("name = \"height\"", "name = \"dbh\""), 20, "tally.columns.height", "holds dbh"),
                new Clash(SMALL.with("\"tree\"", "\"plot\""), 17, "tally.columns.tree", "holds plot"),
                new Clash(
                        SMALL.with("species = \"species\"\n", ""), 15, "tally.columns.species", "a column for species"),
                new Clash(
                        SMALL.with(readings, "top" + angle.formatted("t", "deg")),
                        20,
                        "tally.columns.top",
                        "top and base go together"),
                new Clash(
                        SMALL.with(
                                readings,
                                "top" + angle.formatted("t", "deg") + "base" + angle.formatted("b", "percent")
                                        + "distance" + angle.formatted("d", "m")),
                        21,
                        "tally.columns.base",
                        "same scale"));
    }

    static Stream<Clash> speciesAndVolumes() {
        SmallDesign volume = SMALL.plus(VOLUME);
        return Stream.of(
                new Clash(SMALL.plus("recode_from = [\"PSME\"]"), 24, "species.PSME.recode_from", "means itself"),
                new Clash(SMALL.plus("recode_from = [\"F\", \"F\"]"), 24, "species.PSME.recode_from", "means PSME"),
                new Clash(SMALL.plus("[species.\"*\"]\nname = \"all\""), 25, "species.*.name", "all species"),
                new Clash(SMALL.plus("[cruise.x]"), 24, "cruise.x", "no key"),
                new Clash(
                        SMALL.with("area = 10\n", "area = 10\ntarget_attribute = \"volume\"\n"),
                        7,
                        "cruise.target_attribute",
                        "[volume.CODE]"),
                new Clash(volume.with("volume.PSME", "volume.PSMF"), 25, "volume.PSMF.form", "did you mean PSME?"),
                new Clash(volume.with("source = \"S\"", "source = \"  \""), 33, "volume.PSME.source", "not be empty"),
                new Clash(volume.with("log_base = \"10\"\n", ""), 24, "volume.PSME.log_base", "one of e, 10"),
                new Clash(volume.with("c = 1.1\n", ""), 24, "volume.PSME.c", "finite number"),
                new Clash(volume.with("a = -2.7", "a = nan"), 27, "volume.PSME.a", "finite number"),
                new Clash(volume.with("\"ft3\"", "\"bdft\""), 32, "volume.PSME.volume_unit", "m3, ft3"),
                new Clash(volume.with("\"verified\"", "\"from memory\""), 34, "volume.PSME.standing", "from_memory"));
    }

    @ParameterizedTest
    @MethodSource({"strata", "plots", "tallies", "speciesAndVolumes"})
    void whatDoesNotFitTogetherIsOneProblemOnItsLine(Clash clash) {
        List<Problem> problems = clash.design().problems(folder);
        assertEquals(1, problems.size(), problems.toString());
        Problem p = problems.get(0);
        assertEquals(clash.key() + " on line " + clash.line(), p.column() + " on line " + p.row(), p.message());
        assertTrue(p.message().contains(clash.words()), p.message());
    }
}
