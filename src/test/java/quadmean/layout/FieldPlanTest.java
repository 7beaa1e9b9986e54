package quadmean.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import quadmean.design.Design;
import quadmean.support.SmallDesign;

/** Layouts from design to sheets, on a plane of 400 m by 250 m whose figures can be worked by hand. */
class FieldPlanTest {
    private static final String BOX = "POLYGON ((0 0, 400 0, 400 250, 0 250, 0 0))";
    private static final String LAKE =
            "POLYGON ((0 0, 400 0, 400 250, 0 250, 0 0), (150 100, 250 100, 250 150, 150 150, 150 100))";

    @TempDir
    Path folder;

    private Design design(String wkt, String more, String layout) throws IOException {
        Files.writeString(folder.resolve("a.wkt"), wkt);
        SmallDesign plain = new SmallDesign().with("area = 0.1", "area = 0.01");
        return (more.isEmpty() ? plain : plain.with("area = 10\n", ""))
                .plus(more + "[tract]\nboundary = \"a.wkt\"\n" + TractCase.LOCAL + "[layout]\n" + layout)
                .valid(folder);
    }

    private FieldPlan plan(String wkt, String more, String layout, Map<String, Integer> asked) throws IOException {
        Design design = design(wkt, more, layout);
        return FieldPlan.of(design, TractCase.there(BoundaryReader.read(design)), asked);
    }

    private FieldPlan plan(String wkt, String layout) throws IOException {
        return plan(wkt, "", layout, Map.of());
    }

    private static Layout layout(FieldPlan plan) {
        return plan.work().orElseThrow().layout();
    }

    private static SheetSet set(FieldPlan plan) {
        SheetSet set = plan.set();
        assertNotNull(set, () -> plan.problems().toString());
        return set;
    }

    private static boolean says(FieldPlan plan, String words) {
        return plan.notes().stream().anyMatch(n -> n.contains(words));
    }

    /** 20 m off each side leave 360 m by 210 m = 7.56 of 10 ha. */
    @ParameterizedTest
    @CsvSource({"square", "random", "balanced", "triangular"})
    void aBufferKeepsPlotsOffTheLineAndSaysWhatThatDoes(String pattern) throws IOException {
        FieldPlan plan = plan(BOX, "pattern = \"" + pattern + "\"\nplots = 30\nbuffer = 20");
        assertEquals(24.4, layout(plan).grounds().get(0).bufferPercent(), 1e-9);
        assertTrue(says(plan, "24.4 % of stratum"), plan.notes().toString());
        assertTrue(says(plan, "biased"));
        for (LaidPlot p : layout(plan).plots()) {
            assertTrue(p.edgeM() >= 20 - 1e-9, "plot at " + p.at());
        }
    }

    @Test
    void aBufferThatLeavesNothingIsRefused() throws IOException {
        FieldPlan plan = plan(BOX, "plots = 30\nbuffer = 130");
        assertNull(plan.set());
        assertTrue(plan.problems().get(0).detail().contains("no plot fell on the tract"));
    }

    /** Each cluster of three on a line is whole when those left out are counted, and these lie outside: by their neighbours. */
    @Test
    void plotsOfClustersBeyondTheLineAreNamed() throws IOException {
        FieldPlan plan =
                plan(BOX, "plots = 12\nbearing = 90\ncluster = 3\ncluster_spacing = 40\ncluster_shape = \"line\"");
        Layout layout = layout(plan);
        Geometry box = PlotLayoutTest.shape(BOX);
        assertFalse(layout.leftOut().isEmpty());
        Set<Integer> clusters = new HashSet<>();
        layout.plots().forEach(p -> clusters.add(p.cluster().orElseThrow()));
        assertEquals(
                3 * clusters.size(), layout.plots().size() + layout.leftOut().size());
        for (int cluster : clusters) {
            List<Coordinate> in = layout.plots().stream()
                    .filter(p -> p.cluster().orElseThrow() == cluster)
                    .map(LaidPlot::at)
                    .toList();
            List<Integer> out = layout.leftOut().stream()
                    .filter(l -> l.cluster() == cluster)
                    .map(Layout.LeftOut::plot)
                    .toList();
            assertEquals(3, in.size() + out.size());
            if (in.size() == 2) { // the third lies 40 m further west or east
                double x = out.get(0) == 3 ? in.get(1).x + 40 : in.get(0).x - 40;
                assertFalse(box.covers(box.getFactory().createPoint(new Coordinate(x, in.get(0).y))));
            }
        }
        Layout.LeftOut first = layout.leftOut().get(0);
        assertTrue(
                says(plan, "cluster " + first.cluster() + " its plot"),
                plan.notes().toString());
    }

    /** One lattice of 50 m over both strata: everything lies whole steps of it apart, and no place of it is used twice. */
    @Test
    void oneGridCanCoverTheTract() throws IOException {
        String strata = """
                [selection]
                method = "stratified_systematic"
                [[stratum]]
                code = "A"
                area = 5
                [[stratum]]
                code = "B"
                area = 5
                """;
        FieldPlan plan = plan(
                "A;POLYGON ((0 0, 200 0, 200 250, 0 250, 0 0))\nB;POLYGON ((200 0, 400 0, 400 250, 200 250, 200 0))",
                strata,
                "over = \"tract\"\nspacing = 50",
                Map.of());
        List<LaidPlot> plots = layout(plan).plots();
        assertEquals(
                List.of(Layout.WHOLE),
                layout(plan).grounds().stream().map(Layout.Ground::stratum).toList());
        assertEquals(50, layout(plan).grounds().get(0).alongM(), 1e-9);
        Coordinate one = plots.get(0).at();
        Set<String> places = new HashSet<>();
        for (LaidPlot p : plots) {
            assertEquals(p.at().x < 200 ? "A" : "B", p.stratum());
            double steps = (p.at().x - one.x) / 50;
            assertEquals(Math.rint(steps), steps, 1e-9);
            assertTrue(places.add(p.row() + " " + p.column()));
            // the line between the strata is no edge here
            double edge = Math.min(Math.min(p.at().x, 400 - p.at().x), Math.min(p.at().y, 250 - p.at().y));
            assertEquals(edge, p.lineM(), 1e-9);
        }
        assertTrue(
                says(plan, "the number following from the spacing"),
                plan.notes().toString());
    }

    /** Along a slope of 30 % a leg is √(1 + 0.3²) times as long (Pythagoras); magnetic bearings by definition. */
    @Test
    void legsFollowTheSlopeAndTheNeedle() throws IOException {
        FieldPlan plan = plan(BOX, "plots = 12\nslope = 30\ndeclination = -4");
        for (SheetRoute.Leg leg : set(plan).route().legs()) {
            assertEquals(Math.sqrt(1.09) * leg.horizontalM(), leg.slopeM(), 1e-9 * leg.slopeM());
            assertEquals((leg.trueBearing() + 4) % 360, leg.compassBearing(), 1e-9);
        }
        assertTrue(
                says(plan, "mean slope of 30 % that the design states"),
                plan.notes().toString());
        for (SheetRoute.Leg leg : set(plan(BOX, "plots = 12")).route().legs()) {
            assertTrue(Double.isNaN(leg.slopeM()) && Double.isNaN(leg.compassBearing()));
        }
    }

    /** Between strata half a leg lies on the slope of either end: √1.36 / 2 + √1.01 / 2 times its length for 60 % and 10 %. */
    @Test
    void everyStratumCanHaveItsSlope() throws IOException {
        String strata = """
                [selection]
                method = "stratified"
                [[stratum]]
                code = "A"
                area = 5
                [[stratum]]
                code = "B"
                area = 5
                """;
        FieldPlan plan = plan(
                "A;POLYGON ((0 0, 200 0, 200 250, 0 250, 0 0))\nB;POLYGON ((200 0, 400 0, 400 250, 200 250, 200 0))",
                strata,
                "plots = 20\nslope = { A = 60, B = 10 }",
                Map.of());
        Map<String, Double> factors =
                Map.of("AA", Math.sqrt(1.36), "BB", Math.sqrt(1.01), "AB", (Math.sqrt(1.36) + Math.sqrt(1.01)) / 2);
        Set<String> seen = new HashSet<>();
        for (SheetRoute.Leg leg : set(plan).route().legs()) {
            String from = set(plan).plot(leg.from()).map(SheetPlot::stratum).orElse("");
            String to = set(plan).plot(leg.to()).map(SheetPlot::stratum).orElse("");
            String ends = from.isEmpty() ? to + to : to.isEmpty() ? from + from : from + to;
            String kind = ends.equals("BA") ? "AB" : ends;
            seen.add(kind);
            assertEquals(factors.getOrDefault(kind, 0.0) * leg.horizontalM(), leg.slopeM(), 1e-9 * leg.slopeM(), kind);
        }
        assertEquals(factors.keySet(), seen);
        assertTrue(
                says(plan, "slopes of the strata (A 60 %, B 10 %)"),
                plan.notes().toString());
    }

    /** A lake of 100 m by 50 m, and a start in a corner: what crosses the lake is marked, and nothing else. */
    @ParameterizedTest
    @CsvSource({
        "120, 125, 280, 125, AROUND",
        "200, 90, 200, 160, AROUND",
        "120, 90, 280, 90, OPEN",
        "150, 90, 150, 160, OPEN",
        "140, 120, 260, 80, AROUND",
        "0, 0, 400, 0, OPEN",
        "-50, 0, 100, 50, OPEN"
    })
    void legsAcrossALakeAreMarked(double x, double y, double toX, double toY, SheetRoute.Way way) {
        WayFinder ways = new WayFinder(PlotLayoutTest.shape(LAKE));
        assertEquals(way, ways.way(new Coordinate(x, y), new Coordinate(toX, toY)));
        assertEquals(way, ways.way(new Coordinate(toX, toY), new Coordinate(x, y)));
    }

    @Test
    void legsOffTheTractAreMarked() {
        WayFinder ways =
                new WayFinder(PlotLayoutTest.shape("POLYGON ((0 0, 500 0, 500 200, 300 200, 300 400, 0 400, 0 0))"));
        assertEquals(SheetRoute.Way.OUTSIDE, ways.way(new Coordinate(290, 390), new Coordinate(490, 190)));
        assertEquals(SheetRoute.Way.OPEN, ways.way(new Coordinate(290, 10), new Coordinate(490, 190)));
    }

    /** All legs that the files and sheets mark are told in a note, and their length is that of the straight line. */
    @Test
    void theNotesNameTheLegsAround() throws IOException {
        FieldPlan plan = plan(LAKE, "plots = 40\npattern = \"random\"");
        List<SheetRoute.Leg> around = set(plan).route().legs().stream()
                .filter(l -> l.way() == SheetRoute.Way.AROUND)
                .toList();
        assertFalse(around.isEmpty());
        around.forEach(l ->
                assertTrue(says(plan, l.from() + " to " + l.to()), plan.notes().toString()));
    }

    /** 600 plots about a lake: the sentence stays short, the legs all carry the mark. */
    @Test
    void aLongListOfLegsIsCutShort() throws IOException {
        FieldPlan plan = plan(LAKE, "plots = 600\npattern = \"random\"\nday = 0.5\nper_plot = 5\nstart = [0, 125]");
        long around = set(plan).route().legs().stream()
                .filter(l -> l.way() == SheetRoute.Way.AROUND)
                .count();
        assertTrue(around > 40, around + " legs");
        assertTrue(
                says(plan, " and " + (around - 40) + " more, marked in legs.csv,"),
                plan.notes().toString());
        assertTrue(plan.notes().stream().allMatch(n -> n.length() < 1000));
    }

    /** Under walkthrough trees up to 5.64 m from the centre (100 m²) reach a line 11.28 m away; under mirage one 5.64 m away. */
    @ParameterizedTest
    @CsvSource({"walkthrough, 11.283791670955126", "mirage, 5.641895835477563"})
    void plotsAreMarkedWhereTheTreatmentConcernsThem(String boundary, double reach) throws IOException {
        Files.writeString(folder.resolve("a.wkt"), BOX);
        Design design = new SmallDesign()
                .with("area = 0.1", "area = 0.01\nboundary = \"" + boundary + "\"")
                .plus("[tract]\nboundary = \"a.wkt\"\n" + TractCase.LOCAL
                        + "[layout]\npattern = \"random\"\nplots = 300")
                .valid(folder);
        FieldPlan plan = FieldPlan.of(design, TractCase.there(BoundaryReader.read(design)), Map.of());
        int near = 0;
        for (LaidPlot p : layout(plan).plots()) {
            assertEquals(p.lineM() < reach, p.edge() == SheetPlot.Edge.NEAR);
            near += p.edge() == SheetPlot.Edge.NEAR ? 1 : 0;
        }
        assertTrue(near > 5, near + " near");
    }

    @Test
    void numbersAskedForAreThoseOfThePlan() throws IOException {
        Design design = design(BOX, "", "pattern = \"random\"");
        String only = design.strata().get(0).stratum().code();
        FieldPlan plan = FieldPlan.of(design, TractCase.there(BoundaryReader.read(design)), Map.of(only, 17));
        assertEquals(17, layout(plan).asked());
        assertEquals(17, set(plan).asked().orElseThrow());
    }
}
