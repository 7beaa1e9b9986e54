package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.support.SmallDesign;
import quadmean.support.Tolerance;

/** The map of what each plot holds. */
class PlotMapTest {
    private static final Pattern CIRCLE = Pattern.compile("<circle cx=\"([0-9.]+)\" cy=\"([0-9.]+)\" r=\"([0-9.]+)\"");
    private static final Tolerance DRAWN = Tolerance.relative("coordinates of the drawing have two decimals", 2e-3);

    @TempDir
    Path folder;

    private String report(String plan, String tally) throws IOException {
        Files.writeString(folder.resolve("plan.csv"), plan);
        Path design = Run.cruise(folder, new SmallDesign().plus("[selection]\nplot_list = \"plan.csv\"\n"), tally);
        Run.of("estimate", design, "--out", folder.resolve("out")).assertCode(0);
        return Files.readString(folder.resolve("out/report.html"));
    }

    /** Plots 1 and 2 lie on a parallel, 3 to their north; the areas of their circles are as their basal areas. */
    @Test
    void circlesLieWhereThePlotsAreAndGrowWithTheValue() throws IOException {
        String map = report("plot,longitude,latitude\n1,-116.52,46.75\n2,-116.50,46.75\n3,-116.52,46.76\n", Run.TALLY);
        assertTrue(Files.size(folder.resolve("out/chart-plot-map.png")) > 3000);
        List<MatchResult> circles = CIRCLE.matcher(map).results().limit(3).toList();
        // the largest first: basal areas of the tally above, in cm² of dbh²
        double second = 40 * 40 + 12 * 12 + 33 * 33;
        double first = 30 * 30 + 25 * 25;
        double third = 28 * 28;
        DRAWN.check(Math.sqrt(first / second), number(circles.get(1), 3) / number(circles.get(0), 3), "radius of 1");
        DRAWN.check(Math.sqrt(third / second), number(circles.get(2), 3) / number(circles.get(0), 3), "radius of 3");
        assertTrue(number(circles.get(0), 1) > number(circles.get(1), 1), "2 lies east of 1");
        assertTrue(number(circles.get(2), 2) < number(circles.get(1), 2), "3 lies north of 1");
        // 0.02 degrees of longitude at 46.75 north against 0.01 of latitude: 2·cos(46.75°) on a sphere
        double wide = number(circles.get(0), 1) - number(circles.get(1), 1);
        double tall = number(circles.get(1), 2) - number(circles.get(2), 2);
        assertEquals(2 * Math.cos(Math.toRadians(46.75)), wide / tall, 0.02, "one scale in both directions");
    }

    private static double number(MatchResult circle, int group) {
        return Double.parseDouble(circle.group(group));
    }

    @Test
    void anEmptyPlotIsACross() throws IOException {
        String page = report(
                "plot,longitude,latitude\n1,-116.52,46.75\n2,-116.50,46.75\n3,-116.52,46.76\n4,-116.50,46.76\n",
                Run.TALLY + "4,,,,\n");
        assertTrue(page.contains("Cross: nothing there."), "the caption explains it");
        assertTrue(page.contains("stroke=\"#a23b00\""), "the cross");
    }

    @Test
    void withoutPlacesThereIsNoMapAndTheReportSaysWhy() throws IOException {
        String page = report("plot\n1\n2\n3\n", Run.TALLY);
        assertFalse(page.contains("id=\"plot-map\""));
        assertTrue(page.contains("There is no map of the plots"));
        assertFalse(Files.exists(folder.resolve("out/chart-plot-map.png")));
    }
}
