package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.cruise.Cruise;
import quadmean.cruise.CruiseResult;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.model.Estimator;
import quadmean.model.VarianceForm;
import quadmean.support.ReferenceFiles;
import quadmean.support.SmallDesign;
import quadmean.support.Tolerance;

/** What the report says of each sampling design. */
class SamplingReportTest {
    @TempDir
    Path folder;

    private static CruiseResult run(String name) throws IOException {
        Design design = DesignReader.read(Path.of("designs", name + ".toml")).design();
        return Objects.requireNonNull(Cruise.run(Objects.requireNonNull(design)).result());
    }

    private Design design(String selection, String estimate) {
        return new SmallDesign()
                .plus("[selection]\nplot_list = \"p.csv\"\n" + selection + "\n[estimate]\n" + estimate)
                .valid(folder);
    }

    /** Words that only this estimator's description has. */
    @ParameterizedTest
    @CsvSource({
        "systematic, side by side",
        "stratified, Stratum means are weighted by area",
        "post-stratified, sorted into classes",
        "ratio, The ratio of plot values to the auxiliary",
        "regression, A straight line of plot values",
        "double-sampling, The line of these is read at the mean auxiliary of all",
        "double-stratified, The class is known of every plot",
        "cluster, read whole",
        "two-stage, plots at random within each",
        "unequal-probability, with replacement and known chances"
    })
    void methodsTellHowTheNumbersCameAbout(String name, String words) throws IOException {
        String page = MethodSection.markup(run(name));
        assertTrue(page.contains(words), page);
        assertFalse(MethodSection.markup(run("simple-random")).contains(words), words);
    }

    @ParameterizedTest
    @ValueSource(strings = {"double_ratio", "horvitz_thompson"})
    void estimatorsWithoutAnExampleAreToldToo(String estimator) {
        Design design = design("", "estimator = \"" + estimator + "\"");
        assertTrue(EstimatorWords.estimator(design).length() > 150, estimator);
        assertEquals("Plots minus one.", EstimatorWords.degrees(design));
        assertFalse(EstimatorWords.hasPlotsNeeded(design));
    }

    @ParameterizedTest
    @EnumSource(VarianceForm.class)
    void everyVarianceSaysWhatItTakesForGranted(VarianceForm form) {
        Set<String> all =
                Stream.of(VarianceForm.values()).map(EstimatorWords::assumption).collect(Collectors.toSet());
        assertEquals(VarianceForm.values().length, all.size());
        assertTrue(EstimatorWords.assumption(form).endsWith("."), form.id());
    }

    @Test
    void unequalChancesAreNoSimpleRandomSample() {
        assertEquals(
                Estimator.HORVITZ_THOMPSON.label(),
                EstimatorWords.selection(design("", "estimator = \"horvitz_thompson\"")));
        assertTrue(EstimatorWords.selection(design("method = \"systematic\"", "variance = \"overlapping_blocks\""))
                .contains("overlapping squares of four"));
        assertTrue(
                EstimatorWords.selection(design("method = \"systematic\"", "")).contains("as if it were random"));
    }

    /** Standard errors of the grid of longleaf-estimates.json (R, script estimators.R), per quadrat of 0.0625 ha. */
    @ParameterizedTest
    @CsvSource({"simple_random, se_as_simple_random", "neighbour_differences, se_neighbour_differences"})
    void theVariancesOfAGridStandSideBySide(String variance, String entry) throws IOException {
        CruiseResult result = run("systematic");
        String page = VarianceSection.markup(result);
        assertTrue(page.contains("differences of neighbours (in use)"), page);
        assertFalse(page.contains("Volume"), "nothing is known of volume here");
        JsonNode rows = new ObjectMapper()
                .readTree(Written.text(EstimateJson.of(result)))
                .get("alternatives");
        JsonNode row = StreamSupport.stream(rows.spliterator(), false)
                .filter(r -> r.get("variance").asText().equals(variance)
                        && r.get("attribute").asText().equals("basal_area")
                        && r.get("unit").asText().equals("m2/ha"))
                .findFirst()
                .orElseThrow();
        double expected = ReferenceFiles.number(ReferenceFiles.json("longleaf-estimates.json")
                .get("systematic_grid")
                .get(entry));
        Tolerance.R_SCRIPT.check(expected, row.get("se").doubleValue() * 0.0625, variance);
        assertEquals(variance.equals("neighbour_differences"), row.get("inUse").asBoolean());
    }

    @Test
    void oneVarianceMakesNoTable() throws IOException {
        assertEquals("", VarianceSection.markup(run("cluster")));
        assertFalse(Written.text(HtmlReport.of(run("simple-random"))).contains("id=\"variances\""));
        assertTrue(Written.text(HtmlReport.of(run("systematic"))).contains("href=\"#variances\""));
    }
}
