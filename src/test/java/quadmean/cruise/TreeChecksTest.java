package quadmean.cruise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.design.DesignReader;
import quadmean.design.DesignReading;
import quadmean.estimate.EstimateRow;
import quadmean.model.Problem;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/** Checks that see all trees together, statuses, broken tops, cut plots, and the list of trees to measure again. */
class TreeChecksTest {
    private static final String VOLUME = """
            [volume."*"]
            form = "combined_variable"
            a = 0
            b = 0.00003
            dbh_unit = "cm"
            height_unit = "m"
            volume_unit = "m3"
            source = "made up for this test"
            standing = "invented"
            """;

    @TempDir
    private Path folder;

    /** Tree 1-5 is 30 cm thick and 21.4 m tall on the curve that made the tally. */
    @ParameterizedTest
    @CsvSource({
        "30.0;2.1, unit-slip, a decimal point",
        "30.0;70.2, unit-slip, feet and metres",
        "30.0;5.5, height-off-curve, robust standard deviations",
    })
    void whatDoesNotFitIsFoundAndExplained(String values, String rule, String words) throws IOException {
        String[] pair = values.split(";");
        String tally = tally().replaceFirst("1,5,X,30.0,\\d+\\.\\d", "1,5,X," + pair[0] + "," + pair[1]);
        List<Problem> problems = Cruise.check(design(tally, "").design()).problems();
        Problem found = problems.stream()
                .filter(p -> p.row() == 6 && p.rule().code().equals(rule))
                .findFirst()
                .orElseThrow(() -> new AssertionError(problems.toString()));
        assertTrue(found.detail().contains(words), found.detail());
    }

    /** A plantation of 20 to 25 cm with one tree ten times as thick, one in inches, and one three times as thick. */
    @ParameterizedTest
    @CsvSource({"225, unit-slip", "8.9, unit-slip", "70, dbh-unlikely", "27, "})
    void aDbhFarFromThoseOfItsSpeciesIsFound(String dbh, String rule) throws IOException {
        StringBuilder rows = new StringBuilder("plot,tree,species,dbh,height\n");
        for (int i = 0; i < 24; i++) {
            rows.append(String.format(Locale.ROOT, "%d,%d,X,%.1f,\n", 1 + i % 2, i, 20 + 0.2 * i));
        }
        rows.append("1,99,X,").append(dbh).append(",\n");
        List<String> found = Cruise.check(design(rows.toString(), "").design()).problems().stream()
                .map(p -> p.row() + " " + p.rule().code())
                .toList();
        assertEquals(rule == null ? List.of() : List.of("26 " + rule), found);
    }

    @Test
    void aHeightThatNoTreeOfThatThicknessHasIsUnlikely() throws IOException {
        // a species of its own with too few heights for a curve, and the pooled curve too scattered to judge
        String rows = "plot,tree,species,dbh,height\n1,1,X,30,3.2\n1,2,X,20,1.5\n2,1,X,10,30\n";
        List<String> rules = Cruise.check(design(rows, "").design()).problems().stream()
                .map(p -> p.row() + " " + p.rule().code())
                .toList();
        assertEquals(List.of("2 ratio-unlikely", "3 ratio-unlikely", "4 ratio-unlikely"), rules);
    }

    @Test
    void statusesCountAsTheDesignSays() throws IOException {
        String rows = "plot,tree,species,dbh,height,status\n1,1,X,30,20,live\n1,2,X,30,20,dead\n1,3,X,30,20,cull\n"
                + "2,1,X,30,20,\n2,2,X,30,20,snag\n2,3,X,30,20,9\n";
        CruiseResult usual = run(rows, "[cruise.status_codes]\n9 = \"dead\"\n");
        // plot 1: live and cull, plot 2: live; 10 trees/ha each on 0.1 ha
        assertEquals(15, value(usual, Attribute.TREES), 1e-9);
        // volume: one sound living tree on each plot, 0.00003·30²·20 = 0.54 m³
        assertEquals(5.4, value(usual, Attribute.VOLUME), 1e-9);
        CruiseResult dead = run(
                rows,
                "[cruise.status_codes]\n9 = \"dead\"\n[output]\ncounts_volume = [\"live\", \"dead\"]\nmerchantable_dbh = 10\n");
        assertEquals(10.8, value(dead, Attribute.VOLUME), 1e-9);
        CruiseResult big = run(rows, "[cruise.status_codes]\n9 = \"dead\"\n[output]\nmerchantable_dbh = 31\n");
        assertEquals(0, value(big, Attribute.VOLUME), 1e-9);
    }

    @Test
    void aBrokenTreeKeepsItsHeightAndStaysOutOfTheCurve() throws IOException {
        String broken = tally().replace("species,dbh,height", "species,dbh,height,broken")
                .replaceAll("(\\d)\n", "$1,\n")
                .replaceFirst("1,5,X,30.0,\\d+\\.\\d,", "1,5,X,30.0,6.0,yes");
        CruiseResult result = run(broken, "");
        assertTrue(
                result.tally().problems().isEmpty(), result.tally().problems().toString());
        assertEquals(6.0, result.trees().get(4).heightM(), 1e-9);
        assertEquals(19, result.curves().curve("X").heights());
    }

    @Test
    void aCutPlotIsExpandedByItsShareInside() throws IOException {
        String rows = "plot,tree,species,dbh,height\n1,1,X,30,20\n2,1,X,30,20\n";
        String cut = "[selection]\n[[selection.cut]]\nplot = \"2\"\ninside = 0.5\n[policy]\nplot-cut = \"keep\"\n";
        CruiseResult result = run(rows, cut);
        assertEquals((10 + 20) / 2.0, value(result, Attribute.TREES), 1e-9);
        assertTrue(result.estimate().notes().toString().contains("expanded by the share"), "said in the notes");
        CruiseResult dropped = run(rows + "3,1,X,30,20\n", cut.replace("keep", "drop"));
        assertTrue(dropped.estimate().notes().toString().contains("biases the estimate"), "said in the notes");
    }

    @Test
    void plotsNotReachedAreSaidToLimitTheEstimate() throws IOException {
        CruiseResult result = run(
                "plot,tree,species,dbh,height\n1,1,X,30,20\n2,1,X,30,20\n",
                "[selection]\nnot_reached = [\"3\"]\n[policy]\nplot-not-reached = \"drop\"\n");
        assertTrue(result.estimate().notes().toString().contains("can be reached"), "said in the notes");
    }

    @Test
    void plotsOfThePlanComeFromAFile() throws IOException {
        Files.writeString(folder.resolve("plan.csv"), "plot,x\n1,5\n2,6\n3,7\n");
        DesignReading reading = design(
                "plot,tree,species,dbh,height\n1,1,X,30,20\n4,1,X,30,20\n", "[selection]\nplot_list = \"plan.csv\"\n");
        List<String> found = Cruise.check(reading.design()).problems().stream()
                .map(p -> p.rule().code() + " " + p.value())
                .toList();
        assertEquals(List.of("plot-not-listed 4", "plot-not-in-tally 2", "plot-not-in-tally 3"), found);
    }

    @Test
    void noRowOfThePlanIsLostSilently() throws IOException {
        Files.writeString(folder.resolve("plan.csv"), "plot,x\n1,5\n,6\n3\n1,8\n");
        DesignReading reading =
                design("plot,tree,species,dbh,height\n1,1,X,30,20\n", "[selection]\nplot_list = \"plan.csv\"\n");
        List<String> found = Cruise.check(reading.design()).problems().stream()
                .map(p -> p.file() + ":" + p.row() + " " + p.rule().code())
                .toList();
        assertEquals(List.of("plan.csv:3 plot-missing", "plan.csv:4 row-length", "plan.csv:5 row-repeated"), found);
    }

    @Test
    void theMostHarmfulDoubtComesFirst() throws IOException {
        // readings from 10 m: both trees are taller than that; the thicker one moves the volume more
        String rows = "plot,tree,species,dbh,top,base,distance\n1,1,X,20,150,-15,10\n1,2,X,60,150,-15,10\n"
                + "2,1,X,30,60,-6,30\n2,2,X,30,,-6,30\n";
        CruiseResult result = run(rows, "[policy]\nreading-unusable = \"keep\"\n");
        List<String> order =
                result.remeasure().stream().map(r -> r.tree().tree().label()).toList();
        assertEquals(List.of("1-2", "1-1", "2-2"), order);
        Remeasure first = result.remeasure().get(0);
        assertTrue(
                first.remarks().get(0).startsWith("distance-short: "),
                first.remarks().toString());
        // V = 0.00003·d²·h: half the swing is 0.00003·60²·doubt, on 10 trees/ha and 5 ha for each of the two plots
        assertEquals(0.00003 * 3600 * first.doubtM() * 10 * 5, first.effectM3(), 1e-9);
        assertTrue(result.remeasure().get(2).problems().get(0).contains("top is missing"), "2-2");
    }

    /** Tree 1-1 is dead: it counts in no volume, and so its doubt moves none. */
    @Test
    void aTreeThatCountsInNoVolumeHarmsNone() throws IOException {
        String rows = "plot,tree,species,dbh,top,base,distance,status\n1,1,X,60,150,-15,10,dead\n1,2,X,20,150,-15,10,\n"
                + "2,1,X,30,60,-6,30,\n";
        CruiseResult result = run(rows, "");
        List<String> order =
                result.remeasure().stream().map(r -> r.tree().tree().label()).toList();
        assertEquals(List.of("1-2", "1-1"), order);
        assertEquals(0, result.remeasure().get(1).effectM3());
    }

    private CruiseResult run(String tally, String more) throws IOException {
        DesignReading reading = design(tally, more);
        assertNotNull(reading.design(), () -> reading.problems().toString());
        CruiseRun run = Cruise.run(reading.design());
        assertNotNull(run.result(), () -> run.tally().problems().toString());
        return run.result();
    }

    private DesignReading design(String tally, String more) throws IOException {
        Files.writeString(folder.resolve("tally.csv"), tally);
        String header = tally.lines().findFirst().orElse("");
        String columns = "height = { name = \"height\", unit = \"m\" }\n";
        if (header.contains("top")) {
            columns = "top = { name = \"top\", unit = \"percent\" }\nbase = { name = \"base\", unit = \"percent\" }\n"
                    + "distance = { name = \"distance\", unit = \"m\" }\n";
        }
        for (String extra : List.of("status", "broken")) {
            columns += header.contains(extra) ? extra + " = \"" + extra + "\"\n" : "";
        }
        String text = """
                schema = 1
                [cruise]
                name = "test"
                units = "metric"
                area = 10
                target_attribute = "basal_area"
                [plot]
                kind = "fixed"
                area = 0.1
                [[tally]]
                file = "tally.csv"
                [tally.columns]
                plot = "plot"
                tree = "tree"
                species = "species"
                dbh = { name = "dbh", unit = "cm" }
                """ + columns + more + VOLUME;
        return DesignReader.read(Files.writeString(folder.resolve("test.toml"), text));
    }

    /** Two plots alike with trees of 10, 15 ... 55 cm near h = 1.3 + d²/(1.5 + 0.17 d)². */
    private static String tally() {
        StringBuilder rows = new StringBuilder("plot,tree,species,dbh,height\n");
        for (String plot : List.of("1", "2")) {
            for (int i = 0; i < 10; i++) {
                double dbh = 10 + 5 * i;
                double height = 1.3 + dbh * dbh / Math.pow(1.5 + 0.17 * dbh, 2) + (i % 3 - 1) * 0.4;
                rows.append(String.format(Locale.ROOT, "%s,%d,X,%.1f,%.1f\n", plot, i + 1, dbh, height));
            }
        }
        return rows.toString();
    }

    private static double value(CruiseResult result, Attribute attribute) {
        return result.estimate()
                .row(EstimateRow.ALL, EstimateRow.ALL, attribute, Basis.PER_AREA)
                .orElseThrow()
                .mean();
    }
}
