package quadmean.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.design.Design;
import quadmean.model.MappedStem;
import quadmean.model.PlotDesign;
import quadmean.model.StemMap;
import quadmean.plan.KindOption.TreeCount;
import quadmean.stats.SampleSize;
import quadmean.support.SmallDesign;
import quadmean.support.Tolerance;

class KindComparerTest {
    private static final String KINDS = """
            [plan]
            cv = 40
            [plan.kinds]
            plot_areas = [0.02, 0.04, 0.08, 0.1]
            basal_area_factors = [2, 4, 8]
            basal_area = 24
            trees = 500
            """;

    @TempDir
    Path folder;

    private Design design(String kinds) {
        return new SmallDesign().plus(kinds).valid(folder);
    }

    private static KindComparison compare(Design design) {
        return KindComparer.compare(
                design,
                design.plan().kinds().orElseThrow(),
                List.of(new StratumOutlook("stand", 10, 1, 40)),
                null,
                List.of());
    }

    private static KindOption option(KindComparison kinds, PlotDesign plot) {
        return kinds.options().stream()
                .filter(o -> o.plot().equals(plot))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void plotsNeededAreThoseOfTheSampleSize() {
        Design design = design(KINDS);
        for (KindOption o : compare(design).options()) {
            assertEquals(
                    SampleSize.simpleRandom(
                            o.cvPercent(), design.targetErrorPercent(), design.confidence(), Double.POSITIVE_INFINITY),
                    o.plots());
        }
    }

    @Test
    void theDesignsOwnPlotNeedsWhatThePlanSays() {
        Design design = design(KINDS);
        CruisePlan plan = Planner.plan(design, "test", List.of(new StratumOutlook("stand", 10, 1, 40)));
        assertEquals(
                plan.options().get(0).total(),
                option(compare(design), new PlotDesign.Fixed(0.1)).plots().orElseThrow());
    }

    /** 10 ha tile into 500 plots of 0.02 ha and 100 of 0.1 ha. */
    @Test
    void theSizeOfTheTractCountsWhereTheDesignSaysSo() {
        Design design = design(KINDS.replace("cv = 40", "cv = 40\nfinite_population = \"correct\""));
        KindComparison kinds = compare(design);
        assertEquals(
                SampleSize.simpleRandom(40, 10, 0.95, 100),
                option(kinds, new PlotDesign.Fixed(0.1)).plots());
        KindOption small = option(kinds, new PlotDesign.Fixed(0.02));
        assertEquals(SampleSize.simpleRandom(small.cvPercent(), 10, 0.95, 500), small.plots());
    }

    /** 24 m²/ha and factor 4 count 6 trees; 500 trees/ha put 10 on 0.02 ha: definitions. 4 to 8: common practice, no source. */
    @Test
    void treesExpectedAreThoseOfTheDensity() {
        KindComparison kinds = compare(design(KINDS));
        Tolerance.ROUNDING.check(6, option(kinds, new PlotDesign.Point(4)).treesPerPlot(), "trees of factor 4");
        Tolerance.ROUNDING.check(10, option(kinds, new PlotDesign.Fixed(0.02)).treesPerPlot(), "trees of 0.02 ha");
        assertEquals(TreeCount.TOO_MANY, option(kinds, new PlotDesign.Point(2)).treeCount());
        assertEquals(TreeCount.USUAL, option(kinds, new PlotDesign.Point(4)).treeCount());
        assertEquals(TreeCount.TOO_FEW, option(kinds, new PlotDesign.Point(8)).treeCount());
        assertEquals(
                TreeCount.NOT_JUDGED, option(kinds, new PlotDesign.Fixed(0.02)).treeCount());
        String notes = String.join("\n", kinds.notes());
        assertTrue(notes.contains("BAF 8 m²/ha: under 4 trees"), notes);
        assertTrue(notes.contains("BAF 2 m²/ha: over 8 trees"), notes);
    }

    /** Worked by hand: 4 plots on 10 ha walk √(100 000·4) = 632.46 m; 2 km/h; 6 min a plot; (0.5 + 0.5·1 + 0.2·5) = 2 min a tree. */
    @Test
    void workIsWalkingSettingUpAndTrees() {
        Design design =
                design(KINDS + "setup = 6\ncount = 0.5\nmeasure = 1\nmeasured = 50\nheight = 5\nheights = 20\n");
        for (KindOption o : compare(design).options()) {
            double n = o.plots().orElseThrow();
            Tolerance.ROUNDING.check(
                    632.455532033676 * Math.sqrt(n / 4), o.work().walkM(), "walk");
            Tolerance.ROUNDING.check(o.work().walkM() / 2000, o.work().walkingHours(), "walking");
            Tolerance.ROUNDING.check(n / 10, o.work().setUpHours(), "set-up");
            Tolerance.ROUNDING.check(n * o.treesPerPlot() / 30, o.work().treeHours(), "trees");
            Tolerance.ROUNDING.check(
                    o.work().walkingHours() + o.work().setUpHours() + o.work().treeHours(),
                    o.work().hours(),
                    "all");
        }
    }

    /** Of sums a + c·b the one chosen has no larger b when c grows: the quickest kind has no more trees in all. */
    @ParameterizedTest
    @ValueSource(strings = {"cv = 25", "cv = 40", "cv = 90"})
    void longerTimesForTreesNeverFavourMoreTreesOrLargerPlots(String cv) {
        double trees = Double.POSITIVE_INFINITY;
        double size = Double.POSITIVE_INFINITY;
        for (double minutes = 0.05; minutes < 30; minutes *= 2) {
            String times = "count = " + minutes + "\nmeasured = 0\nheights = 0\n";
            KindComparison kinds = compare(design(KINDS + cv + "\n" + times));
            KindOption quickest = kinds.quickest().orElseThrow();
            assertTrue(quickest.treesInAll() <= trees, cv + " at " + minutes + " min: " + quickest);
            assertTrue(quickest.areaHa() <= size, cv + " at " + minutes + " min: " + quickest);
            trees = quickest.treesInAll();
            size = quickest.areaHa();
        }
    }

    @Test
    void slowWalkersRunFewerPlots() {
        int before = Integer.MAX_VALUE;
        for (double pace = 8; pace > 0.1; pace /= 2) {
            int plots = compare(design(KINDS + "walking = " + pace + "\n"))
                    .quickest()
                    .orElseThrow()
                    .plots()
                    .orElseThrow();
            assertTrue(plots <= before, plots + " plots at " + pace + " km/h");
            before = plots;
        }
    }

    /** By hand: 30 ha of mean 10 and sd 2, 10 ha of mean 20 and sd 10: √((30·4 + 10·100)/40) = 5.2915 over 12.5. */
    @Test
    void overStrataTheVariationWithinThemCounts() {
        List<StratumOutlook> outlook =
                List.of(new StratumOutlook("A", 30, 10, 20), new StratumOutlook("B", 10, 20, 50));
        Tolerance.ROUNDING.check(Math.sqrt(28) / 0.125, KindComparer.pooledCvPercent(outlook), "CV");
        Tolerance.ROUNDING.check(37, KindComparer.pooledCvPercent(List.of(new StratumOutlook("A", 3, 7, 37))), "CV");
    }

    @ParameterizedTest
    @CsvSource({"0.1, 40", "0.4, 56.568542494923804"}) // 40 % of 0.4 ha are 40·4^¼ of 0.1 ha
    void theRuleMayStartFromAnotherPlot(double area, double expected) {
        KindComparison kinds = compare(design(KINDS + "cv = 40\ncv_area = " + area + "\n"));
        Tolerance.ROUNDING.check(
                expected, option(kinds, new PlotDesign.Fixed(0.1)).cvPercent(), "CV");
    }

    @Test
    void aKindOutOfReachSaysSo() {
        KindComparison kinds = compare(design(KINDS + "cv = 1e9\n"));
        assertEquals(Optional.empty(), kinds.quickest());
        assertTrue(kinds.options().stream().allMatch(o -> Double.isNaN(o.work().hours())));
        assertTrue(
                kinds.notes().stream().anyMatch(n -> n.contains("no number of plots reaches the target")),
                kinds.notes().toString());
    }

    /** Stems on the corners of squares of 4 m: 625 trees/ha of 20 cm. */
    @Test
    void withAMapItsVariationAndDensityCount() {
        List<MappedStem> stems = new ArrayList<>();
        for (int i = 0; i < 25; i++) {
            for (int j = 0; j < 25; j++) {
                stems.add(new MappedStem(4 * i + 2, 4 * j + 2, 20));
            }
        }
        StemMap map = new StemMap("even.csv", 0, 0, 100, 100, stems);
        String mapped = "stem_map = \"even.csv\"\n[plan.kinds.columns]\nx = \"x_m\"\ny = \"y_m\"\ndbh = \"dbh_cm\"\n";
        Design design = design(KINDS.replace("basal_area = 24\ntrees = 500\n", mapped));
        KindComparison kinds = KindComparer.compare(
                design,
                design.plan().kinds().orElseThrow(),
                List.of(new StratumOutlook("stand", 10, 1, 40)),
                Objects.requireNonNull(map),
                List.of());
        Tolerance.ROUNDING.check(625, kinds.density().trees(), "trees/ha");
        Tolerance.ROUNDING.check(625 * Math.PI / 100, kinds.density().basalArea(), "m²/ha");
        for (KindOption o : kinds.options()) {
            assertEquals(o.cvByMapPercent(), o.cvPercent());
            assertTrue(o.cvByMapPercent() < 100 / Math.sqrt(o.treesPerPlot()), "less than by chance (Poisson): " + o);
        }
        Tolerance.ROUNDING.check(40, option(kinds, new PlotDesign.Fixed(0.1)).cvByRulePercent(), "by rule");
    }
}
