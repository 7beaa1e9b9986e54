package quadmean.cruise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.design.DesignReader;
import quadmean.design.DesignReading;
import quadmean.estimate.EstimateRow;
import quadmean.model.RowCount;
import quadmean.model.Rule;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/** What the pipeline does where a cruise is not as it should be. */
class CruiseTest {
    private static final String COMBINED = """
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

    @Test
    void withoutHeightsVolumesAreUnknownAndTheRestIsNot() throws IOException {
        CruiseResult result =
                run("", "[volume.\"*\"]\n" + COMBINED, tally("X", 6, 0)).result();
        assertNotNull(result);
        EstimateRow volume = row(result, Attribute.VOLUME);
        assertTrue(Double.isNaN(volume.mean()));
        assertEquals("no height and no height curve for X", volume.reason());
        assertEquals(6, row(result, Attribute.BASAL_AREA).mean(), 1e-9, "six trees on each point, factor 1");
    }

    @Test
    void withoutEquationsVolumesAreUnknown() throws IOException {
        CruiseResult result = run("", "", tally("X", 6, 6)).result();
        assertNotNull(result);
        assertEquals(
                "the design has no volume equation",
                row(result, Attribute.VOLUME).reason());
        assertTrue(result.equations().isEmpty());
    }

    @Test
    void aSpeciesWithoutAnEquationIsRefused() throws IOException {
        CruiseRun run = run(
                "",
                "[species.Y]\n[volume.Y]\n" + COMBINED + "[policy]\nspecies-unknown = \"keep\"\n",
                tally("X", 6, 6));
        assertNull(run.result());
        assertTrue(run.tally().problems().stream()
                .anyMatch(p ->
                        p.rule() == Rule.VOLUME_EQUATION_MISSING && p.value().equals("X")));
    }

    @Test
    void checkFindsAMissingEquationToo() throws IOException {
        DesignReading reading = design(
                "",
                "[species.Y]\n[volume.Y]\n" + COMBINED + "[policy]\nspecies-unknown = \"keep\"\n",
                tally("X", 6, 6));
        assertTrue(Cruise.check(reading.design()).problems().stream()
                .anyMatch(p -> p.rule() == Rule.VOLUME_EQUATION_MISSING));
    }

    @Test
    void morePlotsThanHaveRoomAreRefusedWhereTheCorrectionIsWanted() throws IOException {
        String text = "[selection]\nfinite_population = \"correct\"\n";
        String fixed = "kind = \"fixed\"\narea = 4";
        DesignReading reading = design("", text, tally("X", 2, 0) + "3,1,X,30,\n", fixed);
        // 10 ha have room for 2.5 plots of 4 ha
        assertTrue(Cruise.check(reading.design()).problems().stream()
                .anyMatch(p -> p.detail().contains("3 plots were run in stratum stand, which has room for 2.5")));
    }

    @Test
    void withoutTreesThatCountInVolumeTheReasonSaysSo() throws IOException {
        CruiseResult result = run("", "[output]\nmerchantable_dbh = 200\n[volume.\"*\"]\n" + COMBINED, tally("X", 6, 6))
                .result();
        assertNotNull(result);
        assertEquals(
                "no volume: no tree here that counts in volume",
                row(result, Attribute.VOLUME).reason());
    }

    @Test
    void aGroupSharesItsEquation() throws IOException {
        CruiseResult result = run("", "[species.X]\ngroup = \"pines\"\n[volume.pines]\n" + COMBINED, tally("X", 6, 6))
                .result();
        assertNotNull(result);
        assertEquals("pines", result.equations().get("X").code());
    }

    @Test
    void anEquationThatGivesNothingCountsAsNothingAndIsNoted() throws IOException {
        String negative = COMBINED.replace("a = 0", "a = -900");
        CruiseResult result =
                run("", "[volume.\"*\"]\n" + negative, tally("X", 6, 6)).result();
        assertNotNull(result);
        assertEquals(0, row(result, Attribute.VOLUME).mean());
        assertTrue(result.estimate().notes().stream()
                .anyMatch(n -> n.startsWith("12 trees with no volume, as the equation gives nothing above zero")));
    }

    /** 20 heights on a smooth curve, one of them a quarter of what it should be. */
    @ParameterizedTest
    @CsvSource({"keep, 20, 20, 0, 1", "drop, 19, 19, 1, 0", "refuse, 20, 19, 1, 0"})
    void aHeightOffTheCurveFollowsThePolicy(String policy, int trees, long used, long dropped, long kept)
            throws IOException {
        String tally = tally("X", 10, 10).replaceFirst("30.0,\\d+\\.\\d", "30.0,5.5");
        CruiseRun run = run("", "[policy]\nheight-off-curve = \"" + policy + "\"\n", tally);
        assertEquals(new RowCount(20, used, dropped, kept), run.tally().rows());
        assertEquals(1, run.tally().problems().size());
        if (policy.equals("refuse")) {
            assertNull(run.result());
        } else {
            assertNotNull(run.result());
            assertEquals(trees, run.result().trees().size());
        }
    }

    @Test
    void theFormThatTheDesignAsksForIsUsed() throws IOException {
        CruiseResult result =
                run("", "[species.X]\ncurve = \"wykoff\"\n", tally("X", 10, 10)).result();
        assertNotNull(result);
        assertEquals("wykoff", result.curves().curve("X").form().id());
    }

    @Test
    void checkFindsTheSameProblemsAsARun() throws IOException {
        DesignReading reading = design("", "", tally("X", 10, 10).replaceFirst("30.0,\\d+\\.\\d", "30.0,5.5"));
        assertNotNull(reading.design());
        assertEquals(
                Cruise.run(reading.design()).tally().problems(),
                Cruise.check(reading.design()).problems());
    }

    private CruiseRun run(String cruise, String more, String tally) throws IOException {
        DesignReading reading = design(cruise, more, tally);
        assertNotNull(reading.design(), () -> reading.problems().toString());
        return Cruise.run(reading.design());
    }

    private DesignReading design(String cruise, String more, String tally) throws IOException {
        return design(cruise, more, tally, "kind = \"point\"\nbasal_area_factor = 1");
    }

    private DesignReading design(String cruise, String more, String tally, String plot) throws IOException {
        Files.writeString(folder.resolve("tally.csv"), tally);
        String text = """
                schema = 1
                [cruise]
                name = "test"
                units = "metric"
                area = 10
                target_attribute = "basal_area"
                %s
                [plot]
                %s
                [[tally]]
                file = "tally.csv"
                [tally.columns]
                plot = "plot"
                tree = "tree"
                species = "species"
                dbh = { name = "dbh", unit = "cm" }
                height = { name = "height", unit = "m" }
                %s
                """.formatted(cruise, plot, more);
        Path file = Files.writeString(folder.resolve("test.toml"), text);
        return DesignReader.read(file);
    }

    /** Two plots alike, with trees of 10, 15, 20... cm; the first so many of each plot have a height. */
    private static String tally(String species, int trees, int heights) {
        StringBuilder rows = new StringBuilder("plot,tree,species,dbh,height\n");
        for (String plot : List.of("1", "2")) {
            for (int i = 0; i < trees; i++) {
                double dbh = 10 + 5 * i;
                double height = 1.3 + dbh * dbh / Math.pow(1.5 + 0.17 * dbh, 2) + (i % 3 - 1) * 0.4;
                String h = i < heights ? String.format(java.util.Locale.ROOT, "%.1f", height) : "";
                rows.append(String.format(java.util.Locale.ROOT, "%s,%d,%s,%.1f,%s%n", plot, i + 1, species, dbh, h));
            }
        }
        return rows.toString();
    }

    private static EstimateRow row(CruiseResult result, Attribute attribute) {
        return result.estimate().row("*", "*", attribute, Basis.PER_AREA).orElseThrow();
    }
}
