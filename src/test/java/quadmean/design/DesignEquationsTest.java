package quadmean.design;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.model.Rule.DESIGN_KEY;
import static quadmean.model.Rule.DESIGN_MISSING;
import static quadmean.model.Rule.DESIGN_TYPE;
import static quadmean.model.Rule.DESIGN_VALUE;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quadmean.model.BiomassSpec;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.Standing;
import quadmean.model.ValidRange;
import quadmean.model.VolumeForm;
import quadmean.model.VolumeSpec;
import quadmean.model.VolumeTable.Entry;
import quadmean.support.SmallDesign;
import quadmean.support.Tolerance;
import quadmean.units.Unit;

/** Equations for volume, board feet, biomass and weight in a design: what is read, and what is refused. */
class DesignEquationsTest {
    private static final String SOURCE = "source = \"S\"\nstanding = \"verified\"\n";
    private static final String UNITS = "dbh_unit = \"in\"\nheight_unit = \"ft\"\nvolume_unit = \"ft3\"\n";
    private static final String HONER = "[volume.PSME]\nform = \"honer\"\na = 0.7\nb = 344\n" + UNITS + SOURCE;
    private static final String TABLE = """
            [board_feet.PSME]
            form = "table"
            dbh = [10, 12, 14]
            logs = [1, 2]
            volumes = [[20, 30], [40, 60.5], [60, 90]]
            dbh_unit = "in"
            volume_unit = "bf"
            """ + SOURCE;
    private static final String METRIC = "dbh_unit = \"cm\"\nheight_unit = \"m\"\nvolume_unit = \"m3\"\n";
    private static final String BIOMASS =
            "[biomass.PSME]\nform = \"log\"\nb0 = -2.2\nb1 = 2.4\ncomponent = \"aboveground\"\n" + SOURCE;
    private static final String POWERS = BIOMASS.replace("\"log\"", "\"power_sum\"")
            .replace("b0 = -2.2\nb1 = 2.4", "powers = [[0.05, 2.4], [0.01, 2.3]]");
    private static final String GREEN = "[green_weight.PSME]\nfactor = 50\nunit = \"lb/ft3\"\n" + SOURCE;

    @TempDir
    Path folder;

    private Design design(String lines) {
        return new SmallDesign().plus(lines).valid(folder);
    }

    private VolumeSpec volume(String lines) {
        return Objects.requireNonNull(design(lines).volumes().get("PSME"));
    }

    private VolumeSpec boardFeet(String lines) {
        return Objects.requireNonNull(design(lines).wood().boardFeet().get("PSME"));
    }

    @Test
    void anEquationOfTheLibraryBringsAllThatADesignWouldState() {
        VolumeSpec v = volume("[volume.PSME]\nlibrary = \"browne-1962/douglas-fir-interior\"");
        assertAll(
                () -> assertEquals("PSME", v.code()),
                () -> assertEquals("browne-1962/douglas-fir-interior", v.library()),
                () -> assertEquals(VolumeForm.SCHUMACHER_HALL, v.form()),
                () -> assertEquals(List.of(-2.734532, 1.739418, 1.166033), v.coefficients()),
                () -> assertEquals(VolumeSpec.LogBase.TEN, v.logBase()),
                () -> assertEquals(Unit.CUBIC_FOOT, v.volumeUnit()),
                () -> assertTrue(v.source().startsWith("Browne 1962"), v.source()),
                () -> assertEquals(Standing.FROM_MEMORY, v.standing()));
    }

    @Test
    void aFormClassOfTheDesignTakesThePlaceOfThatOfTheTable() {
        String doyle = "[board_feet.PSME]\nlibrary = \"wiant-1986/doyle\"\n";
        int last = VolumeForm.FORM_CLASS.coefficients().indexOf("form_class");
        assertEquals(78, boardFeet(doyle).coefficients().get(last));
        assertEquals(82, boardFeet(doyle + "form_class = 82").coefficients().get(last));
    }

    @Test
    void sizesOfTheTreesAreReadInTheUnitsOfTheEquation() {
        ValidRange range = volume(HONER + "min_dbh = 4\nmax_height = 100").range();
        assertEquals(new ValidRange(10.16, Double.NaN, Double.NaN, 30.48), range);
        assertEquals(ValidRange.NOT_STATED, volume(HONER).range());
    }

    @Test
    void aTableByLogsAsItStands() {
        VolumeSpec v = boardFeet(TABLE);
        assertEquals(Entry.LOGS, v.table().orElseThrow().entry());
        assertEquals(60.5, v.table().orElseThrow().volumes().get(1).get(1));
        assertTrue(v.isBoardFeet() && v.needsLogs());
    }

    @Test
    void biomassOfTheDesignAndOfTheLibrary() {
        BiomassSpec own = Objects.requireNonNull(
                design(POWERS + "max_dbh = 60").wood().biomass().get("PSME"));
        assertEquals(List.of(0.05, 2.4, 0.01, 2.3), own.coefficients());
        assertEquals(60, own.range().maxDbhCm());
        BiomassSpec library = Objects.requireNonNull(design("[biomass.\"*\"]\nlibrary = \"jenkins-2003/douglas-fir\"")
                .wood()
                .biomass()
                .get("*"));
        assertEquals("*", library.code());
        assertEquals(List.of(-2.2304, 2.4435), library.coefficients());
    }

    /** 1 lb = 0.45359237 kg and 1 ft = 0.3048 m: 50 lb/ft³ are 800.92 kg/m³ (definition). */
    @Test
    void greenWeightInItsUnit() {
        double kg = Objects.requireNonNull(design(GREEN).wood().greenWeight().get("PSME"))
                .kgPerM3();
        Tolerance.ROUNDING.check(50 * 0.45359237 / Math.pow(0.3048, 3), kg, "kg/m³");
        Tolerance.printed(2).check(800.92, kg, "kg/m³");
    }

    @Test
    void carbonIsHalfOfDryBiomassUnlessTheDesignSaysOtherwise() {
        assertTrue(design(GREEN).wood().carbon().isEmpty());
        var usual = design(BIOMASS).wood().carbon().orElseThrow();
        assertEquals(0.5, usual.share());
        assertEquals("common practice, no source", usual.provenance().source());
        var stated = design(BIOMASS + "[carbon]\nfraction = 0.48\n" + SOURCE)
                .wood()
                .carbon()
                .orElseThrow();
        assertEquals(0.48, stated.share());
    }

    /**
     * Lines with something wrong.
     *
     * @param words what the message must say, parts parted by {@code |}
     */
    record Slip(String lines, Rule rule, String key, String words) {}

    private static Slip value(String lines, String key, String words) {
        return new Slip(lines, DESIGN_VALUE, key, words);
    }

    private static Slip missing(String lines, String key, String words) {
        return new Slip(lines, DESIGN_MISSING, key, words);
    }

    static Stream<Slip> library() {
        String volume = "[volume.PSME]\nlibrary = ";
        return Stream.of(
                value(
                        volume + "\"browne-1962/douglas-fir\"",
                        "volume.PSME.library",
                        "browne-1962/douglas-fir-interior"),
                value(volume + "\"honer-1967/blak-spruce\"", "volume.PSME.library", "honer-1967/black-spruce"),
                value(volume + "\"q\"", "volume.PSME.library", "no equation \"q\"; quadmean equations lists all"),
                value(volume + "\"\"", "volume.PSME.library", "must not be empty"),
                new Slip(volume + "5", DESIGN_TYPE, "volume.PSME.library", "text in quotes"),
                value(volume + "\"wiant-1986/doyle\"", "volume.PSME.library", "board feet go in [board_feet.CODE]"),
                value(volume + "\"jenkins-2003/pine\"", "volume.PSME.library", "gives biomass, not volume"),
                value(
                        "[board_feet.PSME]\nlibrary = \"honer-1967/red-pine\"",
                        "board_feet.PSME.library",
                        "cubic volume goes in [volume.CODE]"),
                value(
                        "[biomass.PSME]\nlibrary = \"honer-1967/red-pine\"",
                        "biomass.PSME.library",
                        "gives volume, not biomass"),
                value(volume + "\"honer-1967/red-pine\"\na = 1", "volume.PSME.a", "take one of the two out"),
                value(volume + "\"honer-1967/red-pine\"\nform_class = 80", "volume.PSME.form_class", "no form class"),
                value(
                        "[board_feet.PSME]\nlibrary = \"wiant-1986/doyle\"\nform_class = 0.8",
                        "board_feet.PSME.form_class",
                        "from 50 to 100"));
    }

    static Stream<Slip> volumes() {
        return Stream.of(
                missing(HONER.replace("source = \"S\"\n", ""), "volume.PSME.source", "text in quotes"),
                value(HONER.replace("\"S\"", "\" \""), "volume.PSME.source", "must not be empty"),
                missing(HONER.replace("standing = \"verified\"\n", ""), "volume.PSME.standing", "from_memory"),
                value(HONER.replace("\"honer\"", "\"honor\""), "volume.PSME.form", "did you mean \"honer\"?"),
                missing(HONER.replace("form = \"honer\"\n", ""), "volume.PSME.form", "one of combined_variable"),
                missing(HONER.replace("b = 344\n", ""), "volume.PSME.b", "a finite number"),
                new Slip(HONER + "c = 1", DESIGN_KEY, "volume.PSME.c", "there is no key"),
                value(HONER.replace("\"in\"", "\"inch\""), "volume.PSME.dbh_unit", "in, ft"),
                missing(HONER.replace("height_unit = \"ft\"\n", ""), "volume.PSME.height_unit", "one of"),
                value(HONER.replace("\"ft3\"", "\"cu ft\""), "volume.PSME.volume_unit", "one of m3, ft3"),
                value(HONER.replace("\"ft3\"", "\"bf\""), "volume.PSME.volume_unit", "go in [board_feet.CODE]"),
                value(
                        HONER.replace("[volume", "[board_feet"),
                        "board_feet.PSME.volume_unit",
                        "not ft3; cubic volume goes in [volume.CODE]"),
                value(HONER + "min_dbh = 9\nmax_dbh = 5", "volume.PSME.max_dbh", "must lie above min_dbh|mend one"),
                value(HONER + "min_height = 9\nmax_height = 9", "volume.PSME.max_height", "above min_height"),
                value(HONER + "min_dbh = -1", "volume.PSME.min_dbh", "above 0"),
                value(
                        HONER.replace("honer", "honer_metric"),
                        "volume.PSME.form",
                        "D in cm, H in m and V in m3|use honer"),
                value(HONER.replace("PSME", "PSMA"), "volume.PSMA.form", "no species or group|did you mean PSME?"),
                missing("[volume.PSME]\nform = \"taper\"\n" + SOURCE, "volume.PSME.form", "add a [taper.CODE] table"),
                value(
                        "[board_feet.PSME]\nform = \"form_factor\"\nf = 0.4\n" + METRIC.replace("m3", "bf") + SOURCE,
                        "board_feet.PSME.form",
                        "gives cubic volume"));
    }

    static Stream<Slip> tables() {
        String volumes = "board_feet.PSME.volumes";
        return Stream.of(
                value(
                        TABLE.replace("60.5]", "60.5, 70]"),
                        volumes,
                        "3 volumes in the row of dbh 12 for 2 points of logs"),
                value(TABLE.replace(", [60, 90]", ""), volumes, "2 rows for 3 points of dbh|one row for each"),
                value(
                        TABLE.replace("12, 14]", "14, 12]"),
                        "board_feet.PSME.dbh",
                        "each larger than the one before|sort"),
                value(TABLE.replace("[1, 2]", "[1]"), "board_feet.PSME.logs", "two points or more"),
                value(TABLE.replace("[20,", "[-20,"), volumes, "has -20, which is not"),
                new Slip(TABLE.replace("[20, 30]", "[]"), DESIGN_TYPE, volumes, "list of lists"),
                new Slip(TABLE.replace("[20, 30]", "20"), DESIGN_TYPE, volumes, "list of lists"),
                new Slip(TABLE.replace("[10, 12, 14]", "[]"), DESIGN_TYPE, "board_feet.PSME.dbh", "a list of numbers"),
                new Slip(TABLE.replace("[1, 2]", "[\"1\"]"), DESIGN_TYPE, "board_feet.PSME.logs", "a list of numbers"),
                missing(TABLE.replace("dbh = [10, 12, 14]\n", ""), "board_feet.PSME.dbh", "a list of numbers"),
                missing(TABLE.replaceAll("volumes = .*\n", ""), volumes, "list of lists"),
                value(
                        TABLE + "height = [40, 50]\nheight_unit = \"ft\"",
                        "board_feet.PSME.logs",
                        "by height or by logs, not by both"));
    }

    static Stream<Slip> weights() {
        return Stream.of(
                missing(BIOMASS.replace("b1 = 2.4\n", ""), "biomass.PSME.b1", "a finite number"),
                missing(BIOMASS.replace("source = \"S\"\n", ""), "biomass.PSME.source", "text in quotes"),
                missing(BIOMASS.replaceAll("component = .*\n", ""), "biomass.PSME.component", "text in quotes"),
                value(BIOMASS.replace("\"log\"", "\"ln\""), "biomass.PSME.form", "one of log, power_sum"),
                value(BIOMASS + "min_dbh = 9\nmax_dbh = 5", "biomass.PSME.max_dbh", "above min_dbh"),
                value(POWERS.replace(", 2.3]", "]"), "biomass.PSME.powers", "pairs [b1, b2]"),
                new Slip(POWERS.replaceAll("powers = .*", "powers = []"), DESIGN_TYPE, "biomass.PSME.powers", "lists"),
                value(BIOMASS.replace("PSME", "PSMA"), "biomass.PSMA.form", "did you mean PSME?"),
                value(GREEN.replace("50", "0"), "green_weight.PSME.factor", "above 0"),
                value(GREEN.replace("lb/ft3", "lb"), "green_weight.PSME.unit", "one of kg/m3, lb/ft3"),
                missing(GREEN.replace("source = \"S\"\n", ""), "green_weight.PSME.source", "text in quotes"),
                value(BIOMASS + "[carbon]\nfraction = 50\n" + SOURCE, "carbon.fraction", "between 0 and 1"),
                missing(
                        BIOMASS + "[carbon]\nfraction = 0.5\nstanding = \"verified\"",
                        "carbon.source",
                        "text in quotes"),
                missing("[carbon]\nfraction = 0.5\n" + SOURCE, "carbon.fraction", "add a [biomass.CODE] table"));
    }

    @ParameterizedTest
    @MethodSource({"library", "volumes", "tables", "weights"})
    void whatIsWrongIsRefusedWithARemedy(Slip slip) {
        List<Problem> problems = new SmallDesign().plus(slip.lines()).problems(folder);
        assertEquals(1, problems.size(), problems.toString());
        Problem p = problems.get(0);
        assertEquals(slip.rule(), p.rule());
        assertEquals(slip.key(), p.column());
        List.of(slip.words().split("\\|")).forEach(w -> assertTrue(p.message().contains(w), p.message()));
    }

    @Test
    void everythingWrongIsSaidAtOnce() {
        String lines = HONER.replace("\"honer\"", "\"honor\"").replace("\"S\"", "\"\"")
                + TABLE.replace("12, 14]", "14, 12]").replace("\"in\"", "\"inch\"")
                + BIOMASS.replace("b1 = 2.4\n", "")
                + GREEN.replace("lb/ft3", "lb");
        List<String> keys = new SmallDesign()
                .plus(lines).problems(folder).stream()
                        .map(Problem::column)
                        .sorted()
                        .toList();
        List<String> wrong = List.of(
                "biomass.PSME.b1",
                "board_feet.PSME.dbh",
                "board_feet.PSME.dbh_unit",
                "green_weight.PSME.unit",
                "volume.PSME.form",
                "volume.PSME.source");
        assertEquals(wrong, keys);
    }

    @ParameterizedTest
    @MethodSource("orders")
    void whatTheSlipsAreMadeOfIsInOrder(String lines) {
        design(lines);
    }

    static Stream<String> orders() {
        String honerMetric = HONER.replace("honer", "honer_metric").replace(UNITS, METRIC);
        String formFactor = "[volume.PSME]\nform = \"form_factor\"\nf = 0.4\n" + METRIC + SOURCE;
        return Stream.of(HONER, TABLE, BIOMASS, POWERS, GREEN, honerMetric, formFactor);
    }
}
