package quadmean.cruise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.cruise.ErrorPart.Kind;
import quadmean.cruise.ErrorPart.Source;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.estimate.EstimateRow;
import quadmean.height.HeightedTree;
import quadmean.height.SharedError;
import quadmean.stats.StudentT;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/** Intervals and error budget of the shipped real cruise, against algebra and against a bootstrap that refits the curves. */
class IdahoBudgetTest {
    private static CruiseResult byFormula;

    @TempDir
    private static Path folder;

    @BeforeAll
    static void cruise() throws IOException {
        byFormula = run("");
    }

    private static CruiseResult run(String more) throws IOException {
        String text = Files.readString(Path.of("designs/idaho-points.toml"))
                .replace("../datasets/", Path.of("datasets").toAbsolutePath() + "/");
        Path file = Files.writeString(folder.resolve("design.toml"), text + more);
        Design design = DesignReader.read(file).design();
        assertNotNull(design);
        CruiseResult result = Cruise.run(design).result();
        assertNotNull(result);
        return result;
    }

    private static ErrorPart part(CruiseResult result, Source source) {
        return result.budgets().get(0).parts().stream()
                .filter(p -> p.source() == source)
                .findFirst()
                .orElseThrow();
    }

    private static EstimateRow total(CruiseResult result) {
        return result.estimate().row("*", "*", Attribute.VOLUME, Basis.TOTAL).orElseThrow();
    }

    /** By definition: gᵀVg of one tree is the square of its standard error of the curve. */
    @Test
    void sharedErrorsOfOneTreeMakeItsStandardError() {
        for (HeightedTree t : byFormula.trees()) {
            double variance = byFormula.curves().sharedErrors(t.tree()).stream()
                    .mapToDouble(s -> SharedError.variance(s.gradientM(), s.covariance()))
                    .sum();
            if (t.tree().height() == null) {
                Tolerance.ROUNDING.check(
                        t.curveSeM(), Math.sqrt(variance), t.tree().label());
            }
        }
    }

    /**
     * The bootstrap fits the curves again to each resample, a computation that knows nothing of gradients. 6000 resamples: the part is
     * a difference of paired variances, 2·Cov(mean, shift) + Var(shift), with a Monte Carlo error near
     * 2·√(Var(mean)·Var(shift)/R) = 2·√(469·4/6000) = 1.1 (m³/ha)²; four of them.
     */
    @Test
    @Tag("slow")
    void curvesByFormulaAgreeWithCurvesFittedAgain() throws IOException {
        CruiseResult refitted = run("\n[estimate]\nbudget = \"bootstrap\"\nreplicates = 6000\n");
        Tolerance.absolute("four Monte Carlo errors of 6000 resamples", 4.5)
                .check(
                        part(refitted, Source.CURVES).variance(),
                        part(byFormula, Source.CURVES).variance(),
                        "curves");
    }

    @Test
    void onlyPartsThatCountMakeTheTotal() {
        ErrorBudget budget = byFormula.budgets().get(0);
        double sum = part(byFormula, Source.PLOTS).variance()
                + part(byFormula, Source.CURVES).variance()
                + part(byFormula, Source.HEIGHT_SCATTER).variance();
        Tolerance.ROUNDING.check(sum, budget.totalVariance(), "total");
        assertEquals(Kind.INSIDE, part(byFormula, Source.DBH_READINGS).kind());
        assertEquals(Remedy.MORE_PLOTS, budget.best().orElseThrow());
    }

    /** Errors that all trees share, by algebra: p % of all volumes is p % of the mean. */
    @Test
    void anErrorOfAllVolumesIsThatShareOfTheMean() throws IOException {
        CruiseResult r = run("\n[errors]\nequation_sd = 3\nheight_bias_sd = 2\n");
        double mean = r.budgets().get(0).sampling().mean();
        Tolerance.ROUNDING.check(0.03 * mean, part(r, Source.EQUATIONS).se(), "equations");
        // V ~ H^c with c from 0.977 to 1.166 in the design, so 2 % of height is 1.95 to 2.34 % of volume
        double percent = 100 * part(r, Source.HEIGHT_BIAS).se() / mean;
        assertTrue(percent > 1.95 && percent < 2.34, "height bias " + percent);
    }

    @Test
    void limitsOnALogScale() throws IOException {
        EstimateRow row = total(run("\n[estimate]\ninterval = \"log\"\n"));
        double factor = Math.exp(StudentT.critical(0.95, 71) * row.se() / row.mean());
        Tolerance.ROUNDING.check(row.mean() / factor, row.lower(), "lower");
        Tolerance.ROUNDING.check(row.mean() * factor, row.upper(), "upper");
        Tolerance.ROUNDING.check(
                50 * (row.upper() - row.lower()) / row.mean(), row.samplingErrorPercent(), "half the width");
    }

    /** The same seed gives the same limits; the number of replicates is the default. */
    @Test
    void bootstrapLimitsRepeat() throws IOException {
        String bca = "\n[estimate]\ninterval = \"bca\"\nbudget = \"none\"\n";
        CruiseResult first = run(bca);
        assertEquals(first.estimate().rows(), run(bca).estimate().rows());
        assertTrue(first.budgets().isEmpty());
        assertTrue(total(first).lower() < total(first).mean()
                && total(first).mean() < total(first).upper());
    }
}
