package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.demo.DemoDays;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.stats.Moments;
import quadmean.stats.StudentT;
import quadmean.support.SmallDesign;
import quadmean.support.Tolerance;

/** {@code quadmean progress}. */
class ProgressCommandTest {
    private static final SmallDesign DESIGN = new SmallDesign()
            .with("area = 10\n", "area = 10\ntarget_error = 60\n")
            .plus("""
            [selection]
            plots = ["1-9"]

            [progress]
            minimum_plots = 3

            [[progress.subset]]
            plots = ["1-3"]

            [[progress.subset]]
            plots = ["4-6"]

            [[progress.subset]]
            plots = ["7-9"]
            """);

    @TempDir
    Path folder;

    private Run run(SmallDesign design, String tally) throws IOException {
        return Run.of("progress", Run.cruise(folder, design, tally), "--out", folder.resolve("out"));
    }

    private JsonNode stopping() throws IOException {
        return json().get("stopping");
    }

    private JsonNode json() throws IOException {
        return new ObjectMapper().readTree(folder.resolve("out/progress.json").toFile());
    }

    /** One tree of a dbh on each plot. */
    private static String plots(double... dbh) {
        StringBuilder text = new StringBuilder("plot,tree,species,dbh,height\n");
        for (int i = 0; i < dbh.length; i++) {
            text.append(i + 1).append(",1,PSME,").append(dbh[i]).append(",\n");
        }
        return text.toString();
    }

    @Test
    void theShippedTallyIsWhatTheGeneratorMakesAndTheDesignHasItsSubsets() throws IOException {
        assertEquals(DemoDays.tally(), Files.readString(Path.of("datasets/demo-days.csv")));
        Design design = DesignReader.read(Path.of("designs/demo-progress.toml")).design();
        for (int k = 1; k <= 4; k++) {
            assertEquals(
                    DemoDays.subset(k).stream().map(String::valueOf).toList(),
                    java.util.Objects.requireNonNull(design)
                            .followUp()
                            .progress()
                            .subsets()
                            .get(k - 1)
                            .plots());
        }
    }

    @Test
    void demoIsPartWalkedAndStoppingIsNotOffered() throws IOException {
        Run run = Run.of("progress", "designs/demo-progress.toml", "--out", folder.resolve("out"));
        run.assertCode(0);
        assertEquals(
                Set.of("progress.html", "progress.json", "progress.csv", "problems.csv"),
                Run.files(folder.resolve("out")).keySet());
        assertEquals("part_walked", stopping().get("state").asText());
        assertEquals("finish_subset", stopping().get("decision").asText());
        assertTrue(json().get("samplingErrorPercent").asDouble() < 20, "the usual limits would have stopped it");
        assertTrue(run.out().contains("no reason to stop before the rule says so"), run.out());
        assertFalse(run.out().contains("No more plots needed"), run.out());
        assertTrue(stopping().get("wholeSubsets").get("samplingErrorPercent").asDouble() > 20);
        assertEquals(17, json().get("plots_missing").asInt());
        assertTrue(json().get("crews").get(0).get("p").isNull(), "crews were not assigned at random");
        Run.of("progress", "designs/demo-progress.toml", "--out", folder.resolve("again"))
                .assertCode(0);
        assertEquals(Run.files(folder.resolve("out")), Run.files(folder.resolve("again")));
    }

    @ParameterizedTest
    @CsvSource({"two_stage", "sequential"})
    void aWholeSubsetOfPlotsAlikeMayBeTheLast(String rule) throws IOException {
        SmallDesign design = DESIGN.with("minimum_plots", "rule = \"" + rule + "\"\nminimum_plots");
        run(design, plots(30, 31, 29)).assertCode(0);
        assertEquals("whole_subsets", stopping().get("state").asText());
        assertEquals("may_stop", stopping().get("decision").asText());
    }

    @Test
    void moreThanAWholeSubsetIsPartWalkedAndAllIsComplete() throws IOException {
        run(DESIGN, plots(30, 31, 29, 30)).assertCode(0);
        assertEquals("finish_subset", stopping().get("decision").asText());
        run(DESIGN, plots(30, 31, 29, 30, 31, 29, 30, 30, 30)).assertCode(0);
        assertEquals("done", stopping().get("decision").asText());
    }

    /** By hand: basal areas of one tree a plot; n·(t·SE/(0.6·mean))² with t(0.95; 2) of Student's t, rounded up. */
    @Test
    void theFirstSubsetSaysHowManyPlotsItTakes() throws IOException {
        double[] dbh = {20, 30, 44, 25, 33, 28};
        run(DESIGN, plots(dbh)).assertCode(0);
        double[] values = java.util.Arrays.stream(dbh)
                .limit(3)
                .map(d -> Math.PI / 4 * d * d / 1e4 / 0.1)
                .toArray();
        Moments m = Moments.of(values);
        double ratio = StudentT.critical(0.95, 2) * m.sd() / Math.sqrt(3) / m.mean() / 0.6;
        double needed = Math.ceil(3 * ratio * ratio);
        assertTrue(needed > 6, "the case asks for more than there are");
        assertEquals(needed, stopping().get("plotsNeeded").asDouble());
        assertEquals("go_on", stopping().get("decision").asText());
        JsonNode whole = stopping().get("wholeSubsets");
        assertEquals(6, whole.get("plots").asInt());
        assertEquals(2, whole.get("df").asInt());
        Tolerance.ROUNDING.check(m.sd() / Math.sqrt(6), whole.get("se").asDouble(), "error of the first stage");
    }

    @Test
    void withoutSubsetsThePlanIsWalkedToItsEnd() throws IOException {
        String text = DESIGN.text();
        SmallDesign none = new SmallDesign(text.substring(0, text.indexOf("[[progress.subset]]")));
        run(none, plots(30, 31, 29)).assertCode(0);
        assertEquals("finish_plan", stopping().get("decision").asText());
        SmallDesign open = new SmallDesign(none.text().replace("plots = [\"1-9\"]", ""));
        run(open, plots(30, 31, 29)).assertCode(0);
        assertEquals("cannot_tell", stopping().get("decision").asText());
    }

    /** Subsets may also stand in the list of plots. */
    @Test
    void theListOfPlotsMayNameSubsets() throws IOException {
        Files.writeString(folder.resolve("list.csv"), "plot,subset\n1,a\n2,a\n3,a\n4,b\n5,b\n6,b\n");
        String text = DESIGN.text();
        SmallDesign design = new SmallDesign(text.substring(0, text.indexOf("[[progress.subset]]"))
                .replace("plots = [\"1-9\"]", "plot_list = \"list.csv\""));
        run(design, plots(30, 31, 29)).assertCode(0);
        assertEquals("may_stop", stopping().get("decision").asText());
        assertEquals("b", json().get("subsets").get(1).get("name").asText());
    }

    @Test
    void subsetsAreWalkedInTheOrderOfTheDesign() throws IOException {
        String text = DESIGN.text();
        SmallDesign named = new SmallDesign(text.substring(0, text.indexOf("[[progress.subset]]")))
                .plus("[[progress.subset]]\nname = \"second loop\"\nplots = [\"1-3\"]\n"
                        + "[[progress.subset]]\nname = \"first loop\"\nplots = [\"4-6\"]\n");
        Run run = run(named, plots(30, 31, 29));
        run.assertCode(0);
        assertEquals("second loop", json().get("subsets").get(0).get("name").asText());
        assertEquals("may_stop", stopping().get("decision").asText());
        assertTrue(
                run.out().contains("In no subset, and so in no estimate from whole subsets: plots 7, 8, 9"), run.out());
    }

    @Test
    void subsetsThatDoNotFitThePlanAreSaid() throws IOException {
        Run run = run(DESIGN.with("plots = [\"1-3\"]", "name = \"2\"\nplots = [\"1-3\"]"), plots(30, 31, 29));
        run.assertCode(1);
        assertTrue(run.err().contains("two subsets are called 2"), run.err());
        SmallDesign more = DESIGN.plus("[[progress.subset]]\nplots = [\"77\"]\n");
        assertTrue(run(more, plots(30, 31, 29)).out().contains("Subsets name plots that are not in the plan: 77"));
    }

    @Test
    void aSubsetThatLeavesAStratumOutIsNoSampleOfTheTract() throws IOException {
        SmallDesign design = new SmallDesign()
                .with("area = 10\n", "")
                .plus(
                        "[selection]\nmethod = \"stratified\"\n\n[[stratum]]\ncode = \"A\"\narea = 6\nplots = [\"1-3\"]\n\n"
                                + "[[stratum]]\ncode = \"B\"\narea = 4\nplots = [\"4-6\"]\n\n"
                                + "[[progress.subset]]\nplots = [\"1-3\"]\n\n[[progress.subset]]\nplots = [\"4-6\"]\n");
        Run run = run(design, plots(30, 31, 29, 40));
        run.assertCode(0);
        assertTrue(run.out().contains("No plot in B in subset 1: it is no sample of the whole tract"), run.out());
    }

    /** A stratum that nobody has been to is no mistake, and leaves the stand without an estimate, with the reason. */
    @Test
    void aStratumWithoutPlotsYetIsSaid() throws IOException {
        SmallDesign design = new SmallDesign()
                .with("area = 10\n", "")
                .plus(
                        "[selection]\nmethod = \"stratified\"\n\n[[stratum]]\ncode = \"A\"\narea = 6\nplots = [\"1-3\"]\n\n"
                                + "[[stratum]]\ncode = \"B\"\narea = 4\nplots = [\"4-6\"]\n");
        Run run = run(design, plots(30, 31, 29));
        run.assertCode(0);
        assertTrue(run.out().contains("missing in B: 4, 5, 6"), run.out());
        assertTrue(run.out().contains("No plot yet in B: the estimate is of the other strata alone"), run.out());
        assertFalse(run.out().contains("NaN"), run.out());
    }

    /** Welch's test against R 4.2.2: t.test(c(20, 24, 31, 28), c(35, 30, 41, 38, 33))$p.value after the common mean is taken off. */
    @Test
    void crewsAreTestedWherePlotsWereGivenAtRandom() throws IOException {
        SmallDesign design = DESIGN.with("minimum_plots", "crews_assigned = \"random\"\nminimum_plots")
                .plus("[[crew]]\nname = \"a\"\nplots = [\"1-4\"]\n[[crew]]\nname = \"b\"\nplots = [\"5-9\"]\n");
        double[] values = {20, 24, 31, 28, 35, 30, 41, 38, 33};
        run(
                        design,
                        plots(java.util.Arrays.stream(values)
                                .map(v -> Math.sqrt(v * 100))
                                .toArray()))
                .assertCode(0);
        JsonNode crew = json().get("crews").get(0);
        assertEquals(4, crew.get("plots").asInt());
        Tolerance.absolute("digits of the R reference", 1e-8)
                .check(R_WELCH, crew.get("p").asDouble(), "p");
    }

    private static final double R_WELCH = 0.019107809281585;

    @Test
    void mistakesInTheDesignAreListedTogether() {
        Set<String> found = DESIGN
                .with("minimum_plots = 3", "minimum_plots = 2\nrule = \"never\"\ncrews_assigned = \"so\"")
                .with("plots = [\"4-6\"]", "plots = [\"3-6\"]")
                .problems(folder)
                .stream()
                .map(p -> p.column())
                .collect(Collectors.toSet());
        assertEquals(
                Set.of("progress.minimum_plots", "progress.rule", "progress.crews_assigned", "progress.subset.plots"),
                found);
    }
}
