package quadmean.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.model.Problem;
import quadmean.support.SmallDesign;

class LayoutParserTest {
    private static final String TRACT = "[tract]\nboundary = \"a.geojson\"\n";

    @TempDir
    Path folder;

    private LayoutSettings settings(SmallDesign design, String lines) {
        return design.plus(TRACT + "[layout]\n" + lines).valid(folder).layout().orElseThrow();
    }

    @Test
    void nothingIsLaidOutUnasked() {
        assertEquals(Optional.empty(), new SmallDesign().valid(folder).layout());
    }

    @Test
    void defaultsAreThoseOfTheList() {
        LayoutSettings l = settings(new SmallDesign(), "");
        assertEquals(LayoutSettings.Pattern.SQUARE, l.pattern());
        assertEquals(LayoutSettings.Extent.STRATUM, l.extent());
        assertEquals(OptionalInt.empty(), l.plots());
        assertEquals(0, l.bufferM());
        assertEquals(2000, l.walking().metresPerHour());
        assertEquals(20.0 / 60, l.walking().plotHours(), 1e-12);
        assertEquals(8, l.walking().dayHours());
        assertEquals(OptionalDouble.empty(), l.walking().declinationDegrees());
        assertEquals(100, l.largestDbhCm());
    }

    /** 1 ft = 0.3048 m, 1 mi = 1609.344 m, 1 in = 2.54 cm, by definition. */
    @Test
    void unitsOfTheDesignBecomeMetres() {
        LayoutSettings l = settings(
                new SmallDesign().with("\"metric\"", "\"us\""),
                "spacing = 400\nbuffer = 50\nwalking = 1.5\nper_plot = 30\ncluster = 3\ncluster_spacing = 100");
        assertEquals(121.92, l.spacingM().orElseThrow(), 1e-9);
        assertEquals(15.24, l.bufferM(), 1e-9);
        assertEquals(2414.016, l.walking().metresPerHour(), 1e-9);
        assertEquals(0.5, l.walking().plotHours(), 1e-12);
        assertEquals(30.48, l.cluster().orElseThrow().spacingM(), 1e-9);
        assertEquals(101.6, l.largestDbhCm(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pattern = \"hexagonal\" | pattern",
                "pattern = \"rectangular\" | a rectangular grid needs row_spacing",
                "row_spacing = 50 | goes with pattern = \"rectangular\" only",
                "pattern = \"random\"; spacing = 50 | goes with a grid; give plots instead",
                "spacing = 50; plots = 20 | follows from spacing; leave one of the two out",
                "plots = 0 | a whole number from 1 to 5000",
                "plots = 5001 | a whole number from 1 to 5000",
                "plots = 12.5 | a whole number from 1 to 5000",
                "spacing = 0 | spacing",
                "spacing = -5 | spacing",
                "buffer = -1 | buffer",
                "bearing = 400 | a bearing from 0 to 360 degrees",
                "cluster = 1; cluster_spacing = 30 | a cluster has 2 plots or more",
                "cluster = 3 | clusters need cluster_spacing",
                "cluster_spacing = 30 | go with cluster",
                "cluster_shape = \"line\" | go with cluster",
                "start = [1] | a start has two numbers, longitude first",
                "start = [1, 2, 3] | a start has two numbers, longitude first",
                "declination = 200 | a declination from -180 to 180",
                "slope = -5 | slope",
                "slope = { stand = -5 } | layout.slope.stand",
                "walking = 0 | walking",
                "day = 25 | a number of hours above 0, up to 24",
                "over = \"county\" | over",
                "colour = 1 | there is no key \"layout.colour\"",
            })
    void mistakesAreSaid(String lines, String part) {
        List<Problem> problems = new SmallDesign()
                .plus(TRACT + "[layout]\n" + lines.replace("; ", "\n"))
                .problems(folder);
        assertEquals(1, problems.size(), problems.toString());
        assertTrue(problems.get(0).message().contains(part), problems.get(0).message());
        assertTrue(problems.get(0).row() > 0, "the line is named");
    }

    @Test
    void aLayoutNeedsAMap() {
        List<Problem> problems = new SmallDesign().plus("[layout]\nplots = 9").problems(folder);
        assertEquals(1, problems.size(), problems.toString());
        assertTrue(problems.get(0).detail().contains("name the file of the boundary in [tract]"));
    }

    @Test
    void allMistakesAreSaidAtOnce() {
        assertEquals(
                3,
                new SmallDesign()
                        .plus(TRACT + "[layout]\nplots = 0\nbearing = 999\nday = 0")
                        .problems(folder)
                        .size());
    }
}
