package quadmean.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import quadmean.design.LayoutSettings;
import quadmean.design.LayoutSettings.Cluster;
import quadmean.design.LayoutSettings.Extent;
import quadmean.design.LayoutSettings.Pattern;
import quadmean.design.LayoutSettings.Shape;
import quadmean.design.LayoutSettings.Walking;

/** Plots on an L-shaped tract of 16 ha less a lake of 100 m by 50 m: what follows from the definition of each pattern. */
class PlotLayoutTest {
    private static final String ODD =
            "POLYGON ((0 0, 500 0, 500 200, 300 200, 300 400, 0 400, 0 0), (100 100, 200 100, 200 150, 100 150, 100 100))";
    private static final double AREA = 160_000 - 5_000;
    private static final Walking WALKING =
            new Walking(List.of(), OptionalDouble.empty(), LayoutSettings.Slopes.NONE, 2000, 0.3, 8);

    static Geometry shape(String wkt) {
        try {
            return new WKTReader().read(wkt);
        } catch (ParseException e) {
            throw new IllegalStateException(e);
        }
    }

    static Tract tract(TractPart... parts) {
        Geometry outline = List.of(parts).stream()
                .map(TractPart::shape)
                .reduce(Geometry::union)
                .orElseThrow();
        double ha = outline.getArea() / 10_000;
        return new Tract(
                new LocalGrid(), List.of(parts), outline, List.of(), new StratumArea("*", ha, ha), 0, List.of());
    }

    static LayoutSettings settings(Pattern pattern, double bearing, Optional<Cluster> cluster) {
        return new LayoutSettings(
                pattern,
                Extent.STRATUM,
                OptionalInt.empty(),
                OptionalDouble.empty(),
                pattern == Pattern.RECTANGULAR ? OptionalDouble.of(60) : OptionalDouble.empty(),
                bearing,
                0,
                cluster,
                WALKING,
                100);
    }

    private static final Tract ODD_TRACT = tract(new TractPart("A", shape(ODD)));

    private static List<LaidPlot> lay(LayoutSettings settings, int n, long seed) {
        return PlotLayout.lay(settings, ODD_TRACT, Map.of("A", n), 10, seed).plots();
    }

    /**
     * Cells of 50 m, 62 of which are the tract: one plot of each of 6200 layouts falls 100 times into each. Limit: chi-square
     * with 61 degrees of freedom, 99.9 % (R: qchisq(0.999, 61) = 100.888).
     */
    private static void assertUniform(LayoutSettings settings) {
        int[] counts = new int[80];
        int drawn = 0;
        SplittableRandom pick = new SplittableRandom(7);
        // a layout is weighted by its number of plots: one that has k of them is asked k times out of the most
        for (long seed = 1; drawn < 6200; seed++) {
            List<LaidPlot> plots = lay(settings, 9, seed);
            int i = pick.nextInt(40);
            if (i < plots.size()) {
                Coordinate at = plots.get(i).at();
                counts[(int) (at.x / 50) + 10 * (int) (at.y / 50)]++;
                drawn++;
            }
            assertTrue(plots.size() <= 40, "more plots than a layout is asked for");
        }
        double chi = 0;
        int cells = 0;
        for (int cell = 0; cell < 80; cell++) {
            boolean inside = ODD_TRACT
                    .outline()
                    .contains(ODD_TRACT
                            .outline()
                            .getFactory()
                            .createPoint(new Coordinate(cell % 10 * 50 + 25, cell / 10 * 50 + 25)));
            if (inside) {
                cells++;
                chi += Math.pow(counts[cell] - 100, 2) / 100;
            } else {
                assertEquals(0, counts[cell], "plots outside");
            }
        }
        assertEquals(62, cells);
        assertTrue(chi < 100.888, "chi-square " + chi);
    }

    @Tag("slow")
    @ParameterizedTest
    @EnumSource(Pattern.class)
    void everyPlaceHasTheSameChance(Pattern pattern) {
        assertUniform(settings(pattern, 27, Optional.empty()));
    }

    @Tag("slow")
    @ParameterizedTest
    @CsvSource({"SQUARE, RING", "RANDOM, LINE", "BALANCED, RING"})
    void everyPlaceHasTheSameChanceInClusters(Pattern pattern, Shape shape) {
        assertUniform(settings(pattern, 40, Optional.of(new Cluster(3, 45, shape))));
    }

    /** Mean number over many starts: area over cell (definition); the standard error of 2000 layouts is below 0.05. */
    @ParameterizedTest
    @EnumSource(
            value = Pattern.class,
            names = {"SQUARE", "TRIANGULAR", "RECTANGULAR"})
    void theNumberOnAGridVariesAroundTheOneAskedFor(Pattern pattern) {
        double sum = 0;
        double squares = 0;
        for (long seed = 1; seed <= 2000; seed++) {
            int n = lay(settings(pattern, 11, Optional.empty()), 12, seed).size();
            sum += n;
            squares += n * n;
        }
        double mean = sum / 2000;
        double error = Math.sqrt((squares / 2000 - mean * mean) / 2000);
        assertEquals(12, mean, 4 * error);
    }

    @ParameterizedTest
    @EnumSource(
            value = Pattern.class,
            names = {"RANDOM", "BALANCED"})
    void drawnPlotsAreAsManyAsAskedFor(Pattern pattern) {
        assertEquals(23, lay(settings(pattern, 0, Optional.empty()), 23, 5).size());
    }

    /** The nearest neighbour on a grid, by its cell: s for a square, √(2·cell/√3) for six neighbours. */
    @ParameterizedTest
    @CsvSource({"SQUARE, 1", "TRIANGULAR, 1.0745699318235418"})
    void neighboursOnAGridLieAtItsSpacing(Pattern pattern, double perRoot) {
        List<LaidPlot> plots = lay(settings(pattern, 33, Optional.empty()), 60, 3);
        double spacing = perRoot * Math.sqrt(AREA / 60);
        double nearest = Double.POSITIVE_INFINITY;
        for (LaidPlot a : plots) {
            for (LaidPlot b : plots) {
                if (a != b) {
                    nearest = Math.min(nearest, a.at().distance(b.at()));
                }
            }
        }
        assertEquals(spacing, nearest, 1e-9 * spacing);
        LaidPlot a = plots.get(10);
        LaidPlot b = plots.stream()
                .filter(p -> p.row().equals(a.row())
                        && p.column().getAsInt() == a.column().getAsInt() + 1)
                .findFirst()
                .orElseThrow();
        assertEquals(33, Course.onPlane(a.at(), b.at()).bearingDegrees(), 1e-9);
    }

    @Test
    void strataDrawFromStreamsOfTheirOwn() {
        TractPart a = new TractPart("A", shape("POLYGON ((0 0, 300 0, 300 300, 0 300, 0 0))"));
        TractPart b = new TractPart("B", shape("POLYGON ((300 0, 700 0, 700 300, 300 300, 300 0))"));
        Map<String, Integer> asked = Map.of("A", 9, "B", 11);
        for (Pattern pattern : Pattern.values()) {
            LayoutSettings s = settings(pattern, 15, Optional.empty());
            Layout one = PlotLayout.lay(s, tract(a, b), asked, 10, 42);
            assertEquals(
                    one.toString(),
                    PlotLayout.lay(s, tract(b, a), asked, 10, 42).toString());
            assertNotEquals(
                    one.toString(),
                    PlotLayout.lay(s, tract(a, b), asked, 10, 43).toString());
        }
    }

    /** Distances to the lines of an L and a lake, measured on the sketch: a plot is near a line within the reach of its trees. */
    @Test
    void plotsNearALineAreMarked() {
        for (LaidPlot p : lay(settings(Pattern.RANDOM, 0, Optional.empty()), 300, 9)) {
            double lake = Math.hypot(
                    Math.max(0, Math.max(100 - p.at().x, p.at().x - 200)),
                    Math.max(0, Math.max(100 - p.at().y, p.at().y - 150)));
            double west = Math.min(p.at().x, p.at().y);
            assertTrue(p.edgeM() <= Math.min(lake, west) + 1e-9);
            assertEquals(p.edgeM() < 10, p.edge() == SheetPlot.Edge.NEAR);
        }
    }

    /**
     * A strip beside a square, and another square: the strip is 1000 of 21 000 m² and gets that share of all plots (by definition),
     * within four standard deviations of so many plots drawn apart.
     */
    @Test
    @Tag("slow")
    void aThinStripHasNoMoreThanItsShare() {
        String strip = "MULTIPOLYGON (((0 0, 200 0, 200 10, 100 10, 100 100, 0 100, 0 0)),"
                + " ((300 300, 400 300, 400 400, 300 400, 300 300)))";
        LayoutSettings balanced = settings(Pattern.BALANCED, 0, Optional.empty());
        Tract tract = tract(new TractPart("A", shape(strip)));
        int runs = 8000;
        int inStrip = 0;
        for (int seed = 0; seed < runs; seed++) {
            inStrip += (int) PlotLayout.lay(balanced, tract, Map.of("A", 3), 1, seed).plots().stream()
                    .filter(p -> p.at().x > 100 && p.at().x < 250)
                    .count();
        }
        double share = 1000 / 21_000.0;
        double sd = Math.sqrt(share * (1 - share) / (3 * runs));
        assertEquals(share, inStrip / (3.0 * runs), 4 * sd, "share of the strip");
    }
}
