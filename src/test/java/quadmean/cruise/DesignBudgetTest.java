package quadmean.cruise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.cruise.ErrorPart.Source;
import quadmean.design.DesignReader;
import quadmean.support.ShippedCruises;
import quadmean.support.Tolerance;

/** Error budgets under the sampling designs that are shipped. */
class DesignBudgetTest {
    @TempDir
    Path folder;

    private ErrorBudget budget(String name, String target, String more) throws IOException {
        String text = Files.readString(Path.of("designs", name + ".toml"))
                .replace(
                        "../datasets",
                        Path.of("datasets").toAbsolutePath().toString().replace('\\', '/'))
                .replaceAll("target_attribute = \"\\w+\"", "target_attribute = \"" + target + '"');
        return budget(Files.writeString(folder.resolve("design.toml"), text + "\n" + more));
    }

    private static ErrorBudget budget(Path file) throws IOException {
        CruiseRun run =
                Cruise.run(Objects.requireNonNull(DesignReader.read(file).design()));
        return Objects.requireNonNull(run.result()).budgets().get(0);
    }

    private static ErrorPart part(ErrorBudget budget, Source source) {
        return budget.parts().stream()
                .filter(p -> p.source() == source)
                .findFirst()
                .orElseThrow();
    }

    /**
     * A dbh 1 % too large makes basal area on fixed plots 2 % too large, under every design that is linear in the plots; and of trees
     * counted by a gauge (1/d²) 2 % too few, but for the ±2.5 % over which the slope is taken:
     * (0.975⁻² - 1.025⁻²)/0.05 = 2.0025023 (by algebra).
     */
    @ParameterizedTest
    @CsvSource({
        "simple-random, basal_area, 2",
        "stratified, basal_area, 2",
        "ratio, basal_area, 2",
        "post-stratified, basal_area, 2",
        "cluster, basal_area, 2",
        "unequal-probability, basal_area, 2",
        "idaho-points, trees, 2.0025023"
    })
    void aSharedErrorOfDbhMovesTheEstimateByItsPower(String name, String target, double percent) throws IOException {
        ErrorBudget b = budget(name, target, "[errors]\ndbh_bias_sd = 1\n");
        double expected = percent / 100 * b.sampling().mean();
        Tolerance.relative("digits of the slope", 1e-5)
                .check(expected, part(b, Source.DBH_BIAS).se(), name);
    }

    /** Gauges choose trees by their dbh, but basal area is a count times the factor: no dbh is asked for. */
    @Test
    void basalAreaByAGaugeAsksForNoDbh() throws IOException {
        ErrorBudget b = budget("idaho-points", "basal_area", "[errors]\ndbh_bias_sd = 1\n");
        assertTrue(
                b.parts().stream().noneMatch(p -> p.source() == Source.DBH_BIAS),
                b.parts().toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "demo",
                "idaho-points",
                "count-points",
                "two-factors",
                "half-sweep",
                "strip",
                "stratified",
                "systematic",
                "post-stratified",
                "ratio",
                "regression",
                "double-sampling",
                "double-stratified",
                "cluster",
                "two-stage",
                "unequal-probability"
            })
    void sharesThatCountMakeTheWhole(String name) {
        List<ErrorBudget> budgets =
                Objects.requireNonNull(ShippedCruises.run(name).result()).budgets();
        assertTrue(!budgets.isEmpty(), name);
        for (ErrorBudget b : budgets) {
            double counted = b.parts().stream()
                    .filter(ErrorPart::isCounted)
                    .filter(p -> !Double.isNaN(p.variance()))
                    .mapToDouble(b::share)
                    .sum();
            Tolerance.ROUNDING.check(1, counted, name);
            boolean clustered = name.equals("cluster") || name.equals("two-stage");
            assertEquals(clustered ? "clusters" : "plots", b.units());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"threep", "point-3p", "complete"})
    void someDesignsHaveNone(String name) {
        assertEquals(
                List.of(),
                Objects.requireNonNull(ShippedCruises.run(name).result()).budgets());
    }

    /** Clusters of one plot each are plots (by definition): curves fitted again to their resamples give the same part. */
    @Test
    void curvesAreFittedAgainUnderOtherDesignsToo() throws IOException {
        StringBuilder list = new StringBuilder("plot,cluster,cluster_size\n");
        for (int plot = 1; plot <= 72; plot++) {
            list.append(plot).append(',').append(plot).append(",1\n");
        }
        Files.writeString(folder.resolve("plots.csv"), list);
        String refit = "\n[estimate]\nbudget = \"bootstrap\"\nreplicates = 100\n";
        ErrorBudget plots = budget("idaho-points", "volume", refit);
        ErrorPart expected = part(plots, Source.CURVES);
        String text = Files.readString(folder.resolve("design.toml"))
                .replace("plots = [\"1-72\"]", "plot_list = \"plots.csv\"")
                .replace("\"systematic\"", "\"simple_random\"");
        Path file = Files.writeString(folder.resolve("clusters.toml"), text + "estimator = \"cluster\"\n");
        ErrorPart clusters = part(budget(file), Source.CURVES);
        assertTrue(clusters.words().contains("100 resamples of the clusters"), clusters.words());
        Tolerance.ROUNDING.check(expected.variance(), clusters.variance(), "curves");
    }
}
