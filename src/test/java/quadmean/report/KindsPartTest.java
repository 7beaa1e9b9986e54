package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.chart.KindsChart;
import quadmean.chart.Picture;
import quadmean.design.Design;
import quadmean.plan.KindComparer;
import quadmean.plan.KindComparison;
import quadmean.plan.StratumOutlook;
import quadmean.support.SmallDesign;

/** The section of a page, and its chart. */
class KindsPartTest {
    private static final String KINDS = """
            [plan]
            cv = 40
            finite_population = "correct"
            [plan.kinds]
            plot_areas = [0.02, 0.1, 9]
            basal_area_factors = [2, 4, 8]
            basal_area = 24
            trees = 500
            setup = 3.5
            """;

    @TempDir
    Path folder;

    private Design design() {
        return new SmallDesign().plus(KINDS).valid(folder);
    }

    private static KindComparison kinds(Design design) {
        return KindComparer.compare(
                design,
                design.plan().kinds().orElseThrow(),
                List.of(new StratumOutlook("stand", 10, 1, 40)),
                null,
                List.of());
    }

    @Test
    void theSectionHasChartTableTimesAndNotes() {
        Design design = design();
        KindComparison kinds = kinds(design);
        String html = KindsPart.html(design, kinds);
        assertTrue(html.startsWith("<section id=\"kinds\">"), html);
        assertTrue(html.contains("<figure id=\"kinds-chart\">"), html);
        for (String words : List.of(
                "BAF 4 m²/ha",
                "3.5\u00a0min</td><td>the design",
                "common practice, no source",
                "fewer than 4 trees a point",
                "more than 8 trees a point",
                "Freese 1961, from memory",
                "symbols inferred")) {
            assertTrue(html.contains(words), words + " in " + html);
        }
        kinds.notes().forEach(n -> assertTrue(html.contains(Html.escape(n)), n));
        assertEquals(2, html.split("<table>", -1).length - 1);
    }

    /** 10 ha hold one plot of 9 ha. */
    @Test
    void aKindOutOfReachHasNoBarAndSaysWhy() {
        Design design = design();
        KindComparison kinds = kinds(design);
        Picture picture = KindsChart.picture(kinds, design.units());
        assertTrue(picture.svg().contains("Plot 9 ha: out of reach"), picture.svg());
        assertEquals(3 + 3 * 5, picture.svg().split("<rect", -1).length - 1, "legend and five bars of three parts");
        assertTrue(KindsPart.lines(design, kinds).stream()
                .anyMatch(l -> l.contains("plot 9 ha") && l.endsWith("no number of plots reaches the target")));
        assertTrue(KindsPart.html(design, kinds).contains("no number of plots reaches the target"));
    }
}
