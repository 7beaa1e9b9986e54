package quadmean.cruise;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.cruise.ErrorPart.Source;
import quadmean.cruise.SimulatedStand.Draw;
import quadmean.design.Design;
import quadmean.design.DesignReader;

/**
 * The budget against what estimates of simulated stands really miss their truth by. Each stand and cruise is drawn anew; a mean square is
 * compared with the mean of what the budgets say it is, within three and a half Monte Carlo errors of the difference, which must be
 * small beside the part, or the check would say nothing.
 */
@Tag("slow")
class SimulatedBudgetTest {
    private static final double ERRORS = 3.5;

    @TempDir
    private Path folder;

    /** One simulated cruise: its estimate, the truth, and what the sample would have given with true curve and readings. */
    private record Outcome(ErrorBudget budget, double truth, double measured) {
        double estimate() {
            return budget.sampling().mean();
        }

        double variance(Source source) {
            return budget.parts().stream()
                    .filter(p -> p.source() == source)
                    .mapToDouble(ErrorPart::variance)
                    .sum();
        }
    }

    private Outcome[] cruises(SimulatedStand stand, int many) throws IOException {
        List<Outcome> all = new ArrayList<>();
        for (int i = 0; i < many; i++) {
            Draw draw = stand.draw(1000 + i);
            Files.writeString(folder.resolve("tally.csv"), draw.tally());
            Path file = Files.writeString(folder.resolve("design.toml"), stand.design(draw.coefficient()));
            Design design = DesignReader.read(file).design();
            assertNotNull(design, "design in order");
            CruiseRun run = Cruise.run(design);
            CruiseResult result = run.result();
            assertNotNull(result, () -> run.tally().problems().toString());
            // heights that no curve fits leave volumes unknown, and so no budget: the variance is that of the other
            // cruises
            result.budgets().stream().limit(1).forEach(b -> all.add(new Outcome(b, draw.truth(), draw.measured())));
        }
        System.out.println(many - all.size() + " of " + many + " cruises without a budget");
        assertTrue(many - all.size() <= many / 100, "at most one cruise in a hundred has no budget");
        return all.toArray(Outcome[]::new);
    }

    /** Squares about their mean, n/(n-1) times. */
    private static double[] squares(Outcome[] all, ToDoubleFunction<Outcome> value) {
        double mean = Arrays.stream(all).mapToDouble(value).average().orElseThrow();
        double unbiased = all.length / (all.length - 1.0);
        return Arrays.stream(all)
                .mapToDouble(o -> unbiased * Math.pow(value.applyAsDouble(o) - mean, 2))
                .toArray();
    }

    private static double[] minus(double[] a, double[] b) {
        double[] c = a.clone();
        Arrays.setAll(c, i -> a[i] - b[i]);
        return c;
    }

    private static double mean(double[] x) {
        return Arrays.stream(x).average().orElseThrow();
    }

    /** Prints and compares; the limit must be within a share of the part. */
    private static void agree(
            String what, Outcome[] all, double[] seen, ToDoubleFunction<Outcome> budget, double finest) {
        double[] said = Arrays.stream(all).mapToDouble(budget).toArray();
        double[] off = minus(seen, said);
        double mean = mean(off);
        double sd =
                Math.sqrt(Arrays.stream(off).map(x -> (x - mean) * (x - mean)).sum() / (off.length - 1));
        double limit = ERRORS * sd / Math.sqrt(off.length);
        String words = String.format(
                Locale.ROOT,
                "%s: true variance %.4g, budget %.4g, off by %.3g, allowed %.3g",
                what,
                mean(seen),
                mean(said),
                mean,
                limit);
        System.out.println(words);
        assertTrue(limit < finest * mean(said), words + ": too coarse to tell");
        assertTrue(Math.abs(mean) <= limit, words);
    }

    /** All heights measured, no scatter, no bias: the variation between plots is all, with a quarter of the stand sampled. */
    @Test
    void samplingAlone() throws IOException {
        Outcome[] all = cruises(new SimulatedStand(40, 10, 1, 4, 1, 2, 0, 0, 0), 250);
        agree(
                "sampling alone",
                all,
                squares(all, o -> o.estimate() - o.truth()),
                o -> o.budget().totalVariance(),
                0.4);
    }

    /** Two heights of ten, site by site: the curve is fitted to the plots that are averaged. */
    @Test
    void curves() throws IOException {
        Outcome[] all = cruises(new SimulatedStand(400, 15, 5, 1, 1.5, 3, 0, 0, 0), 700);
        agree(
                "curves, total",
                all,
                squares(all, o -> o.estimate() - o.truth()),
                o -> o.budget().totalVariance(),
                0.4);
        agree(
                "curves alone",
                all,
                minus(squares(all, Outcome::estimate), squares(all, Outcome::measured)),
                o -> o.variance(Source.CURVES),
                0.4);
    }

    /** Three quarters of a stand of 200 trees: what trees scatter about the equation does not average out. */
    @Test
    void scatterOfTreesAboutTheEquation() throws IOException {
        Outcome[] all = cruises(new SimulatedStand(20, 15, 1, 1, 0, 1, 0.5, 0, 0), 250);
        agree(
                "equation scatter, total",
                all,
                squares(all, o -> o.estimate() - o.truth()),
                o -> o.budget().totalVariance(),
                0.4);
    }

    /** Crew, tape and equation each off by some 3 %, in all plots alike. */
    @Test
    void whatAllPlotsShare() throws IOException {
        Outcome[] all = cruises(new SimulatedStand(400, 30, 1, 2, 0, 1, 0, 0, 3), 250);
        agree(
                "common errors, total",
                all,
                squares(all, o -> o.estimate() - o.truth()),
                o -> o.budget().totalVariance(),
                0.4);
    }

    /** Readings of dbh: a share of the variation between plots, which is the whole error and holds them already. */
    @Test
    void readingsAreInsideTheVariationBetweenPlots() throws IOException {
        Outcome[] all = cruises(new SimulatedStand(400, 15, 1, 1, 0, 1, 0, 2, 0), 250);
        agree(
                "readings, total",
                all,
                squares(all, o -> o.estimate() - o.truth()),
                o -> o.budget().totalVariance(),
                0.4);
        agree(
                "readings alone",
                all,
                squares(all, o -> o.estimate() - o.measured()),
                o -> o.variance(Source.DBH_READINGS),
                0.4);
    }
}
