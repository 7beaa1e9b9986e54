package quadmean.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quadmean.design.Design;
import quadmean.model.MappedTree;
import quadmean.model.PlotDesign;
import quadmean.simulate.PlotTaker.Seen;
import quadmean.simulate.Trials.Stand;

/**
 * A square grid with a random start gives every place the same chance, and yet the mean of its plots has a bias: where lines do not
 * divide the tract evenly the start decides how many plots there are, and with what weight each counts. Worked out here over all starts,
 * without chance; and the mean of a number that is the same for every start has none ({@link Methods#EVEN_GRID}).
 */
class GridBiasTest {
    /** Of √12 spacings to a side 0.4641 are left over, nearly 13 of 28 steps: the line of the tract falls between two starts. */
    private static final int STARTS = 28;

    private static final int PLOTS = 12;
    private static final double ERRORS = 3;

    @TempDir
    private Path folder;

    /** Mean over all starts of the mean of the plots, and of their sum over the number expected. */
    private record Exact(double mean, double sum) {}

    private static Exact exact(Design design, Forest forest, Stand stand) {
        PlotTaker taker = PlotTaker.of(design, forest);
        double spacing = Math.sqrt(10_000 * stand.areaHa / PLOTS);
        double means = 0;
        double sums = 0;
        for (int a = 0; a < STARTS; a++) {
            for (int b = 0; b < STARTS; b++) {
                double sum = 0;
                int n = 0;
                for (double x = (a + 0.5) * spacing / STARTS; x < stand.eastM(); x += spacing) {
                    for (double y = (b + 0.5) * spacing / STARTS; y < stand.northM(); y += spacing) {
                        sum += value(design, taker, forest, x, y);
                        n++;
                    }
                }
                means += sum / n;
                sums += sum / PLOTS;
            }
        }
        return new Exact(means / (STARTS * STARTS), sums / (STARTS * STARTS));
    }

    private static double value(Design design, PlotTaker taker, Forest forest, double x, double y) {
        return taker.at(x, y, forest.whole(), -1).stream().mapToInt(Seen::times).sum()
                * ((PlotDesign.Point) design.plot()).perTree();
    }

    @ParameterizedTest
    @EnumSource(names = {"WAKA", "CLUSTERED", "REGULAR"})
    void theMeanOverAGridIsBiasedByItsVaryingNumber(Stand stand) throws IOException {
        String text = Methods.SYSTEMATIC.design(stand, PLOTS);
        Design design = Trials.design(folder, text);
        Forest forest = stand.forest(design);
        Exact exact = exact(design, forest, stand);
        AttributeOutcome o = Trials.run(folder, stand, text, 1500).target().orElseThrow();
        String words = stand + ": over all starts " + 100 * (exact.mean() / o.truth() - 1) + " %, simulated "
                + o.biasPercent() + " % ± " + 100 * o.biasError() / o.truth();
        assertEquals(exact.mean(), o.mean(), ERRORS * o.biasError(), words);
        assertTrue(Math.abs(exact.mean() / o.truth() - 1) > 0.004, "a bias that is there: " + words);
        double known = forest.trees().stream()
                        .mapToDouble(MappedTree::dbhCm)
                        .map(d -> d * d)
                        .sum()
                * Math.PI
                / 40_000
                / forest.areaHa();
        assertEquals(known, exact.sum(), 0.003 * known, "the sum over the expected number has none");
    }
}
