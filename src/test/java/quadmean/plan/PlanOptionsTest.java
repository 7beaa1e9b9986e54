package quadmean.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.example;
import static quadmean.support.ReferenceFiles.number;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.design.DesignReading;
import quadmean.plan.PlanOption.Size;
import quadmean.plan.PlanOption.Spread;
import quadmean.plan.PlanOption.Surer;
import quadmean.stats.ExpectedRange;
import quadmean.stats.SampleSearch;
import quadmean.stats.SampleSearch.Goal;
import quadmean.stats.SampleSize;
import quadmean.stats.TwoPhasePlan;

class PlanOptionsTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    @TempDir
    private Path folder;

    private CruisePlan plan(String more) throws IOException {
        Design design = design(more);
        StatedVariation stated = StatedVariation.of(design);
        return Planner.planAll(design, stated.words(), stated.targets());
    }

    private Design design(String more) throws IOException {
        return read("area = 40\n", "simple_random", more);
    }

    private Design stratified(String more) throws IOException {
        return read("", "stratified", more);
    }

    private Design read(String area, String method, String more) throws IOException {
        Path file = Files.writeString(folder.resolve("plan.toml"), """
                schema = 1
                [cruise]
                name = "plan"
                units = "metric"
                target_attribute = "basal_area"
                %s[plot]
                kind = "fixed"
                area = 0.1
                [selection]
                method = "%s"
                """.formatted(area, method) + more);
        DesignReading reading = DesignReader.read(file);
        Design design = reading.design();
        assertNotNull(design, () -> reading.problems().toString());
        return design;
    }

    private static PlanOption option(CruisePlan plan, SampleKind kind) {
        return plan.options().stream().filter(o -> o.kind() == kind).findFirst().orElseThrow();
    }

    /** Two targets: the larger number serves both, and each is told what it takes by itself (table of the formulary: 64 and 70). */
    @Test
    void theDearerTargetDecides() throws IOException {
        CruisePlan plan = plan("""
                [plan]
                cv = 40
                [[plan.target]]
                attribute = "trees"
                error = 10
                confidence = 0.9
                cv = 50
                """);
        PlanOption only = plan.options().get(0);
        assertEquals(70, only.total());
        assertEquals(64, only.results().get(0).plotsAlone().orElseThrow());
        assertEquals(70, only.results().get(1).plotsAlone().orElseThrow());
        assertTrue(only.results().stream()
                .allMatch(r -> r.expectedErrorPercent() <= r.target().errorPercent()));
    }

    /** A quarter of the range is the guess of the trade; a range seen on 25 plots is divided by what R gives, 3.9306. */
    @Test
    void aRangeGivesTheVariation() throws IOException {
        CruisePlan guess = plan("[plan]\nrange = [40, 220]\nrange_mean = 120\n");
        assertEquals(100 * 45.0 / 120, guess.targets().get(0).cvPercent(), 1e-12);
        assertTrue(guess.variation().contains("common practice, no source"), guess.variation());
        CruisePlan seen = plan("[plan]\nrange = [40, 220]\nrange_plots = 25\n");
        assertEquals(100 * 180 / 3.93062921951 / 130, seen.targets().get(0).cvPercent(), 1e-6);
        assertEquals(24, seen.targets().get(0).pilotDf());
        assertEquals(ExpectedRange.ofNormal(25), 3.93062921951, 1e-8);
    }

    /** A pilot of few plots asks for more, and the plan says what its uncertainty means. */
    @Test
    void anUncertainPilotAsksForMore() throws IOException {
        CruisePlan known = plan("[plan]\ncv = 40\n");
        CruisePlan pilot = plan("[plan]\ncv = 40\npilot_plots = 15\n");
        assertTrue(known.pilot().isEmpty());
        assertEquals(known.options().get(0).total(), pilot.options().get(0).total());
        List<Surer> surer = pilot.options().get(0).surer();
        assertEquals(
                List.of(Spread.KNOWN, Spread.KNOWN, Spread.FROM_PILOT, Spread.FROM_PILOT),
                surer.stream().map(Surer::spread).toList());
        assertEquals(SampleSize.assured(40, 10, 0.95, INFINITE, 0.9).orElseThrow(), plots(surer.get(1)));
        assertTrue(plots(surer.get(3)) > plots(surer.get(1)));
        PilotEffect effect = pilot.pilot().orElseThrow();
        // sqrt(14/qchisq(0.2, 14)) in R 4.2.2
        assertEquals(40 * 1.21604684772761, effect.limits().get(0).cvPercent(), 1e-9);
        assertEquals(
                SampleSize.simpleRandom(40 * 1.21604684772761, 10, 0.95, INFINITE),
                effect.limits().get(0).plots());
        assertTrue(Double.isNaN(known.options().get(0).results().get(0).chanceAfterPilot()));
        assertTrue(pilot.options().get(0).results().get(0).chanceAfterPilot() < 0.5);
    }

    private static int plots(Surer surer) {
        return surer.size().map(Size::plots).orElseThrow();
    }

    /** Without correlation clusters are as good as plots, up to their degrees of freedom; alike plots make them dear. */
    @Test
    void clustersOfAlikePlotsTakeMorePlots() throws IOException {
        String clusters = "[plan]\ncv = 40\n[plan.cluster]\nplots = 4\ncost = 1\ncorrelation = ";
        int none = option(plan(clusters + "0"), SampleKind.CLUSTER).total();
        int some = option(plan(clusters + "0.2"), SampleKind.CLUSTER).total();
        assertTrue(none >= 64 && none <= 76, none + " plots: 64 single ones do");
        assertTrue(some > 1.5 * none, some + " plots");
    }

    /** The number of plots in a cluster that a plan picks costs no more than its neighbours. */
    @Test
    void theClusterPickedCostsLeast() throws IOException {
        String clusters = "[plan]\ncv = 40\n[plan.cost]\nplot = 1\n[plan.cluster]\ncost = 9\ncorrelation = 0.2\n";
        PlanOption picked = option(plan(clusters), SampleKind.CLUSTER);
        assertEquals("clusters of 6 plots", picked.name());
        for (int m : new int[] {3, 12}) {
            PlanOption other = option(plan(clusters + "plots = " + m + "\n"), SampleKind.CLUSTER);
            assertTrue(cost(picked) < cost(other), m + " plots a cluster");
        }
    }

    private static double cost(PlanOption option) {
        return option.atTarget().map(Size::cost).orElseThrow();
    }

    /** What is fixed and what grows: fixed + n·plot within the budget, and one plot more beyond it. */
    @Test
    void theBudgetPaysForTheLargestSample() throws IOException {
        CruisePlan plan = plan("[plan]\ncv = 40\n[plan.cost]\nunit = \"hours\"\nfixed = 5\nplot = 0.75\nbudget = 50\n");
        Size paid = plan.options().get(0).inBudget().orElseThrow();
        assertEquals(60, paid.plots());
        assertEquals(50, paid.cost(), 1e-12);
        CruisePlan poor = plan("[plan]\ncv = 40\n[plan.cost]\nfixed = 5\nplot = 0.75\nbudget = 6\n");
        assertTrue(poor.options().get(0).inBudget().isEmpty());
    }

    /** 120 trees of mean prediction 100, 20 of them wanted: a limit of 600 (newsletter of John Bell & Associates, July 1995). */
    @Test
    void theLimitOf3PIsTheSumOverTheTreesWanted() throws IOException {
        JsonNode e = example("3p-kz-planning");
        CruisePlan plan =
                plan("""
                [plan]
                cv = 40
                [plan.threep]
                trees = %s
                mean_prediction = %s
                ratio_cv = 20
                tree_cost = 1
                """.formatted(e.get("inputs").get("trees"), e.get("inputs").get("mean_predicted_height_ft")));
        PlanOption threeP = option(plan, SampleKind.THREE_P);
        // t(0.975, 17) = 2.110 gives 9.95 % for 18 trees, t(16) = 2.120 gives 10.28 % for 17
        assertEquals(18, threeP.total());
        double limit = number(e.get("published").get("sum_KPI")) / 18;
        assertTrue(threeP.notes().toString().contains("Limit of the random numbers: " + Math.round(limit)));
        assertTrue(
                threeP.notes().toString().contains("about 10 to 26"),
                threeP.notes().toString());
    }

    /** No more trees are measured than stand on the plots. */
    @Test
    void threePOnPlotsMeasuresNoMoreTreesThanThereAre() throws IOException {
        CruisePlan plan =
                plan("[plan]\ncv = 40\n[plan.cost]\nplot = 1\n[plan.threep]\nwhere = \"on_plots\"\ntrees = 0.5\n"
                        + "ratio_cv = 40\ntree_cost = 0.01\n");
        Size size = option(plan, SampleKind.THREE_P_PLOTS).atTarget().orElseThrow();
        assertTrue(size.units().get(1) <= Math.ceil(0.5 * size.units().get(0)), size.toString());
    }

    /**
     * A cheap reading that says nearly all: by the rule for large samples 70 for each of three measured plots, though a few more of
     * these need fewer of those.
     */
    @Test
    void cheapReadingsAreNoMoreThanTheTargetTakes() throws IOException {
        String keys = "[plan]\ncv = 40\n[plan.cost]\nplot = 1\n[plan.double]\ncorrelation = ";
        PlanOption picked = option(plan(keys + "0.99\ncount_cost = 0.01\n"), SampleKind.DOUBLE);
        assertTrue(picked.expectedErrorPercent() <= 10);
        TwoPhasePlan byRule = new TwoPhasePlan(40, 0.99, TwoPhasePlan.bestRatio(0.99, 0.01, 1));
        int[] parts = byRule.parts(
                SampleSearch.smallest(byRule, Goal.expected(10, 0.95)).orElseThrow());
        assertTrue(cost(picked) <= SampleSearch.cost(parts, 0, new double[] {0.01, 1}));
        PlanOption sure = option(plan(keys + "0.999999999999\ncount_cost = 0.01\n"), SampleKind.DOUBLE);
        assertTrue(sure.atTarget().orElseThrow().units().get(0) < 300, sure.toString());
    }

    /** Numbers beyond what a search looks at end without a plan, not in an error. */
    @Test
    void costsAndSpreadsWithoutMeasureAreOutOfReach() throws IOException {
        CruisePlan counts = plan("[plan]\ncv = 40\n[plan.count]\nratio_cv = 1e12\ncount_cost = 1\ntree_cost = 0.001\n");
        assertFalse(option(counts, SampleKind.COUNT).isReachable());
        CruisePlan readings = plan("[plan]\ncv = 40\n[plan.cost]\nplot = 1e12\n[plan.double]\ncorrelation = 0.9999999\n"
                + "count_cost = 1e-12\n");
        assertTrue(option(readings, SampleKind.DOUBLE).isReachable());
    }

    /** 40 ha have room for 400 plots of 0.1 ha. */
    @Test
    void plotsThatCoverMoreThanTheTractAreSaid() throws IOException {
        String words = "more ground than the tract has";
        assertFalse(plan("[plan]\ncv = 40\n").notes().toString().contains(words));
        assertTrue(plan("[plan]\ncv = 120\n").notes().toString().contains(words));
        assertFalse(plan("[plan]\ncv = 120\nfinite_population = \"correct\"\n")
                .notes()
                .toString()
                .contains(words));
    }

    /** Sixty trees would be enough, and there are twelve: measuring all of them is another kind of cruise. */
    @Test
    void threePOfFewTreesIsOutOfReach() throws IOException {
        CruisePlan plan = plan("[plan]\ncv = 40\n[plan.threep]\ntrees = 12\nratio_cv = 40\ntree_cost = 1\n");
        assertFalse(option(plan, SampleKind.THREE_P).isReachable());
    }

    /** Few units leave no error between them once all are read: more plots in each reach what one in each does not. */
    @Test
    void fewUnitsTakeMorePlotsEach() throws IOException {
        String units =
                "[plan]\ncv = 60\n[plan.cost]\nplot = 20\n[plan.two_stage]\ncost = 10\ncorrelation = 0.5\nunits = 12\n";
        PlanOption two = option(plan(units), SampleKind.TWO_STAGE);
        assertTrue(two.isReachable(), two.name());
        assertTrue(two.expectedErrorPercent() <= 10);
        assertFalse(option(plan(units + "plots = 1\n"), SampleKind.TWO_STAGE).isReachable());
    }

    /** Readings that hardly agree are not worth taking twice. */
    @Test
    void doubleSamplingThatDoesNotPaySaysSo() throws IOException {
        CruisePlan plan = plan("[plan]\ncv = 40\n[plan.double]\ncorrelation = 0.3\ncount_cost = 1\n");
        PlanOption doubled = option(plan, SampleKind.DOUBLE);
        assertTrue(
                doubled.notes().get(0).endsWith("it does not pay."),
                doubled.notes().toString());
        List<Integer> units = doubled.plots();
        assertEquals(units.get(0), units.get(1));
    }

    /** Strata: costs draw plots away from the dear one, minima are kept, and what is laid out is what the design names. */
    @Test
    void strataWithCostsAndMinima() throws IOException {
        String strata = """
                [[stratum]]
                code = "A"
                area = 30
                expected_mean = 100
                expected_cv = 150
                plot_cost = 9
                [[stratum]]
                code = "B"
                area = 10
                expected_mean = 100
                expected_cv = 60
                plot_cost = 1
                fewest_plots = 7
                """;
        Design design = stratified(strata + "[plan]\nallocation = \"optimum\"\n[plan.cost]\nplot = 1\n");
        StatedVariation stated = StatedVariation.of(design);
        CruisePlan plan = Planner.planAll(design, stated.words(), stated.targets());
        assertEquals(
                List.of("proportional allocation", "Neyman allocation", "optimum allocation with costs"),
                plan.options().stream().map(PlanOption::name).toList());
        assertTrue(plan.options().stream().allMatch(o -> o.plots().get(1) >= 7));
        PlanOption optimum = plan.options().get(2);
        assertTrue(cost(optimum) <= cost(plan.options().get(1))
                && cost(optimum) <= cost(plan.options().get(0)));
        assertEquals(optimum, plan.laidOut().orElseThrow());
        assertEquals(optimum.plots(), List.copyOf(plan.plotsByStratum().values()));
        // by algebra: within √(0.75·150² + 0.25·60²)
        assertEquals(
                Math.sqrt(0.75 * 22500 + 0.25 * 3600), plan.targets().get(0).cvPercent(), 1e-12);
    }

    /** The curve falls, and passes the target where the option says. */
    @Test
    void theCurveFallsThroughTheTarget() throws IOException {
        PlanOption only = plan("[plan]\ncv = 40\n").options().get(0);
        for (int i = 1; i < only.curve().size(); i++) {
            assertTrue(
                    only.curve().get(i).errorPercent() < only.curve().get(i - 1).errorPercent());
            boolean reached = only.curve().get(i).plots() >= only.total();
            assertEquals(
                    reached,
                    only.curve().get(i).errorPercent() <= 10,
                    "at " + only.curve().get(i));
        }
        assertFalse(only.curve().isEmpty());
    }

    /** Fields that are alike in every respect but their order give the same plan. */
    @Test
    void theOrderOfStrataChangesNothing() throws IOException {
        String a = "[[stratum]]\ncode = \"A\"\narea = 30\nexpected_mean = 100\nexpected_cv = 50\n";
        String b = "[[stratum]]\ncode = \"B\"\narea = 11\nexpected_mean = 80\nexpected_cv = 70\n";
        Design one = stratified(a + b);
        Design other = stratified(b + a);
        CruisePlan first = Planner.planAll(one, "", StatedVariation.of(one).targets());
        CruisePlan second = Planner.planAll(other, "", StatedVariation.of(other).targets());
        for (int i = 0; i < first.options().size(); i++) {
            assertEquals(first.options().get(i).total(), second.options().get(i).total());
            assertEquals(
                    first.options().get(i).plots().get(0),
                    second.options().get(i).plots().get(1));
        }
    }
}
