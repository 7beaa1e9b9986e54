package quadmean.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quadmean.model.Problem;
import quadmean.support.SmallDesign;
import quadmean.support.Tolerance;

/** The keys of {@code [plan.kinds]}, and what is wrong with them. */
class KindsDesignTest {
    private static final String KINDS = """
            [plan]
            cv = 40
            [plan.kinds]
            plot_areas = [0.1, 0.02]
            basal_area_factors = [2, 4]
            basal_area = 24
            trees = 500
            """;
    private static final String MAP = """
            [plan]
            cv = 40
            [plan.kinds]
            plot_areas = [0.1, 0.02]
            stem_map = "map.csv"
            corners = [0, 0, 100, 50]
            [plan.kinds.columns]
            x = "x_ft"
            y = { name = "y", unit = "m" }
            dbh = "dbh_cm"
            """;

    @TempDir
    Path folder;

    private KindsSettings kinds(String text) {
        return new SmallDesign().plus(text).valid(folder).plan().kinds().orElseThrow();
    }

    @Test
    void withoutTheTableNothingIsCompared() {
        assertEquals(
                Optional.empty(),
                new SmallDesign().plus("[plan]\ncv = 40").valid(folder).plan().kinds());
    }

    @Test
    void unstatedTimesAreTheDefaults() {
        KindsSettings kinds = kinds(KINDS + "setup = 0\nheight = 2.5\n");
        assertEquals(List.of(0.02, 0.1), kinds.plotAreasHa());
        KindsSettings.Times times = kinds.times();
        assertEquals(
                java.util.Set.of(KindInput.SET_UP, KindInput.HEIGHT),
                times.given().keySet());
        assertEquals(2000, times.of(KindInput.WALKING));
        assertEquals(20, times.of(KindInput.HEIGHTS), "every fifth tree, as on the field sheets");
        Tolerance.ROUNDING.check(0.1 + 0.5 + 0.2 * 2.5, times.minutesPerTree(), "minutes a tree");
    }

    @Test
    void thePaceOfTheLayoutHolds() {
        String layout = "\n[tract]\nboundary = \"t.geojson\"\n[layout]\nwalking = 3\n";
        assertEquals(3000, kinds(KINDS + layout).times().of(KindInput.WALKING));
        assertEquals(1000, kinds(KINDS + "walking = 1\n" + layout).times().of(KindInput.WALKING));
    }

    @Test
    void cornersAreInTheUnitsOfTheColumns() {
        KindsSettings.StemMapFile map = kinds(MAP).map().orElseThrow();
        assertEquals(folder.resolve("map.csv"), map.table().path());
        Tolerance.ROUNDING.check(30.48, map.corners().get(2), "100 ft in m");
        assertEquals(50, map.corners().get(3));
    }

    record Fault(String old, String now, String key, String words) {
        String in(String text) {
            assertTrue(text.contains(old), old);
            return text.replace(old, now);
        }
    }

    static Stream<Fault> faults() {
        return Stream.of(
                new Fault("[0.1, 0.02]", "[]", "", ""),
                new Fault("[2, 4]", "[]", "", ""),
                new Fault("[0.1, 0.02]", "[0.1, 0]", "plan.kinds.plot_areas", "0, which is not a number above 0"),
                new Fault("[0.1, 0.02]", "0.1", "plan.kinds.plot_areas", "must be a list of numbers"),
                new Fault("[0.1, 0.02]", "[0.1, 0.1]", "plan.kinds.plot_areas", "has 0.1 twice"),
                new Fault("[2, 4]", "[1,2,3,4,5,6,7,8,9,10,11]", "plan.kinds.plot_areas", "2 to 12 kinds"),
                new Fault("basal_area = 24\n", "", "plan.kinds.basal_area", "go together"),
                new Fault("trees = 500\n", "trees = -3\n", "plan.kinds.trees", "-3 is not a number above 0"),
                new Fault("trees = 500\n", "", "plan.kinds.trees", "go together"),
                new Fault("basal_area = 24\ntrees = 500\n", "", "plan.kinds.basal_area", "or a stem_map"),
                new Fault(
                        "trees = 500\n",
                        "trees = 500\nwalking = 0\n",
                        "plan.kinds.walking",
                        "0 is not a number above 0"),
                new Fault("trees = 500\n", "trees = 500\nsetup = -1\n", "plan.kinds.setup", "0 or more"),
                new Fault("trees = 500\n", "trees = 500\nmeasured = 101\n", "plan.kinds.measured", "0 to 100"),
                new Fault("trees = 500\n", "trees = 500\ncv = 0\n", "plan.kinds.cv", "0 is not a number above 0"),
                new Fault("trees = 500\n", "trees = 500\nset_up = 3\n", "plan.kinds.set_up", "did you mean \"setup\""),
                new Fault(
                        "trees = 500\n",
                        "trees = 500\ncorners = [0, 0, 1, 1]\n",
                        "plan.kinds.stem_map",
                        "goes with stem_map"));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void faultsAreNamed(Fault fault) {
        assertFault(fault, KINDS);
    }

    static Stream<Fault> mapFaults() {
        return Stream.of(
                new Fault("[0, 0, 100, 50]", "[0, 0, 100]", "plan.kinds.corners", "lower left"),
                new Fault("[0, 0, 100, 50]", "[100, 50, 0, 0]", "plan.kinds.corners", "lower left"),
                new Fault("x = \"x_ft\"\n", "", "plan.kinds.columns.x", "a column for x"),
                new Fault("\"x_ft\"", "\"x\"", "plan.kinds.columns.x", "needs a unit"),
                new Fault("unit = \"m\"", "unit = \"mile\"", "unit", "is not one of"),
                new Fault("dbh = ", "species = \"sp\"\ndbh = ", "plan.kinds.columns.species", "known here: x, y, dbh"),
                new Fault("\"map.csv\"", "\"\"", "plan.kinds.stem_map", "must not be empty"),
                new Fault("\"map.csv\"", "7", "plan.kinds.stem_map", "text in quotes"));
    }

    @ParameterizedTest
    @MethodSource("mapFaults")
    void faultsOfMapsAreNamed(Fault fault) {
        assertFault(fault, MAP);
    }

    private void assertFault(Fault fault, String text) {
        List<Problem> problems = new SmallDesign().plus(fault.in(text)).problems(folder);
        if (fault.key().isEmpty()) {
            assertEquals(List.of(), problems, "two kinds of the other sort are left");
            return;
        }
        assertTrue(
                problems.stream()
                        .anyMatch(p ->
                                p.column().endsWith(fault.key()) && p.detail().contains(fault.words())),
                problems.toString());
    }

    @Test
    void noKindsAtAllAreNoComparison() {
        String none = KINDS.replace("[0.1, 0.02]", "[]").replace("[2, 4]", "[]");
        List<Problem> problems = new SmallDesign().plus(none).problems(folder);
        assertEquals(1, problems.size(), problems.toString());
        assertTrue(problems.get(0).detail().contains("2 to 12 kinds of plot, and here are 0"), problems.toString());
    }

    @Test
    void nestedPlotsNeedAnAreaForTheRule() {
        SmallDesign nested = new SmallDesign().with("kind = \"fixed\"\narea = 0.1\n", """
                        kind = "nested"
                        [[plot.ring]]
                        area = 0.01
                        [[plot.ring]]
                        min_dbh = 20
                        area = 0.1
                        """);
        List<Problem> problems = nested.plus(KINDS).problems(folder);
        assertEquals(
                List.of("plan.kinds.cv_area"),
                problems.stream().map(Problem::column).toList());
        assertEquals(List.of(), nested.plus(KINDS + "cv_area = 0.1\n").problems(folder));
        assertEquals(List.of(), nested.plus(MAP).problems(folder));
    }
}
