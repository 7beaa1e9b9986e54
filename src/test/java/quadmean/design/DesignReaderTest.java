package quadmean.design;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quadmean.design.PlanSettings.Pilot;
import quadmean.model.DegreesRule;
import quadmean.model.FinitePopulation;
import quadmean.model.PlotDesign;
import quadmean.model.Policy;
import quadmean.model.Rule;
import quadmean.model.SelectionMethod;
import quadmean.model.Standing;
import quadmean.model.VolumeForm;
import quadmean.model.VolumeSpec;
import quadmean.units.AngleScale;
import quadmean.units.Attribute;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** The shipped designs, read as they stand; expected values are those of the files, converted by exact factors. */
class DesignReaderTest {
    /** 1 acre = 43 560 ft² at 0.3048 m to the foot, in hectares. */
    private static final double ACRE_HA = 43_560 * 0.3048 * 0.3048 / 10_000;

    private static final double EXACT = 1e-12;

    private static Design read(String name) throws IOException {
        DesignReading reading = DesignReader.read(Path.of("designs", name));
        assertEquals(List.of(), reading.problems());
        return Objects.requireNonNull(reading.design());
    }

    @Test
    void demoIsReadWithAllItsValues() throws IOException {
        Design d = read("demo.toml");
        assertAll(
                () -> assertEquals("Cobbler Ridge demonstration stand", d.name()),
                () -> assertEquals("2026-04-01 to 2026-04-07", d.date()),
                () -> assertEquals(UnitSystem.US, d.units()),
                () -> assertEquals(0.90, d.confidence()),
                () -> assertEquals(10, d.targetErrorPercent()),
                () -> assertEquals(Attribute.VOLUME, d.targetAttribute()),
                () -> assertEquals(20260401, d.seed()),
                () -> assertEquals(SelectionMethod.STRATIFIED, d.selection()),
                () -> assertEquals(FinitePopulation.IGNORE, d.finitePopulation()),
                () -> assertEquals(DegreesRule.PLOTS_MINUS_STRATA, d.degreesRule()),
                () -> assertEquals(new Design.HeightEntry(4.5, 10, 4, ReadingSettings.COMMON_PRACTICE), d.height()),
                () -> assertEquals(2 * 2.54, d.diameterClassCm(), EXACT),
                () -> assertEquals(0.1 * ACRE_HA, ((PlotDesign.Fixed) d.plot()).areaHa(), EXACT),
                () -> assertEquals(120 * ACRE_HA, d.areaHa(), 1e-10));
    }

    @Test
    void demoHasThreeStrataWithTheirPlotsAndExpectations() throws IOException {
        Design d = read("demo.toml");
        assertEquals(
                List.of("N", "B", "C"),
                d.stratumList().stream().map(s -> s.code()).toList());
        StratumEntry bench = d.strata().get(1);
        assertAll(
                () -> assertEquals("pine bench", bench.stratum().name()),
                () -> assertEquals(41 * ACRE_HA, bench.stratum().areaHa(), EXACT),
                () -> assertEquals(14, bench.plots().size()),
                () -> assertEquals("19", bench.plots().get(0)),
                () -> assertEquals("32", bench.plots().get(13)),
                () -> assertEquals(OptionalDouble.of(2000), bench.expectedMean()),
                () -> assertEquals(OptionalDouble.of(40), bench.expectedCvPercent()));
    }

    @Test
    void demoNamesItsColumnsSpeciesAndPolicies() throws IOException {
        Design d = read("demo.toml");
        TallyFile tally = d.tallies().get(0);
        assertAll(
                () -> assertEquals(Path.of("datasets/demo-tally.csv").toAbsolutePath(), tally.path()),
                () -> assertEquals("demo-tally.csv", tally.name()),
                () -> assertEquals(',', tally.separator()),
                () -> assertEquals('.', tally.decimal()),
                () -> assertEquals(10, tally.columns().size()),
                () -> assertEquals(
                        new ColumnSpec("dbh_in", Unit.INCH, null),
                        tally.columns().get(ColumnRole.DBH)),
                () -> assertEquals(
                        new ColumnSpec("base_pct", null, AngleScale.PERCENT),
                        tally.columns().get(ColumnRole.BASE)),
                () -> assertEquals(
                        new SpeciesEntry("PSME", "Douglas-fir", "", List.of("PSMF"), null),
                        d.species().get("PSME")),
                () -> assertEquals("lodgepole pine", d.speciesName("PICO")),
                () -> assertEquals("XX", d.speciesName("XX")),
                () -> assertEquals(
                        Map.of(
                                Rule.ROW_REPEATED, Policy.DROP,
                                Rule.TREE_REPEATED, Policy.KEEP,
                                Rule.DBH_MISSING, Policy.DROP,
                                Rule.READING_UNUSABLE, Policy.KEEP,
                                Rule.HEIGHT_OFF_CURVE, Policy.KEEP),
                        d.policies()),
                () -> assertEquals(Policy.REFUSE, d.policy(Rule.DBH_IMPOSSIBLE)),
                () -> assertEquals(Policy.KEEP, d.policy(Rule.SPECIES_RECODED)));
    }

    @Test
    void demoHasFourVolumeEquations() throws IOException {
        Map<String, VolumeSpec> volumes = read("demo.toml").volumes();
        assertEquals(4, volumes.size());
        VolumeSpec fir = volumes.get("PSME");
        assertEquals("browne-1962/douglas-fir-interior", fir.library());
        assertEquals(VolumeForm.SCHUMACHER_HALL, fir.form());
        assertEquals(List.of(-2.734532, 1.739418, 1.166033), fir.coefficients());
        assertEquals(VolumeSpec.LogBase.TEN, fir.logBase());
        assertEquals(Standing.FROM_MEMORY, fir.standing());
        VolumeSpec rest = Objects.requireNonNull(volumes.get("*"));
        assertEquals(VolumeForm.COMBINED_VARIABLE, rest.form());
        assertEquals(Standing.INVENTED, rest.standing());
    }

    @Test
    void idahoIsReadInMetricUnits() throws IOException {
        Design d = read("idaho-points.toml");
        assertAll(
                () -> assertEquals(UnitSystem.METRIC, d.units()),
                () -> assertEquals(161.87, d.areaHa()),
                () -> assertEquals(new PlotDesign.Point(7), d.plot()),
                () -> assertEquals(SelectionMethod.SYSTEMATIC, d.selection()),
                () -> assertEquals("stand", d.stratumList().get(0).code()),
                () -> assertEquals(72, d.strata().get(0).plots().size()),
                () -> assertEquals(
                        Unit.DECIMETRE,
                        Objects.requireNonNull(d.tallies().get(0).columns().get(ColumnRole.HEIGHT))
                                .unit()),
                () -> assertEquals(
                        List.of("F", "FG"),
                        Objects.requireNonNull(d.species().get("GF")).recodeFrom()),
                () -> assertEquals(
                        "true firs",
                        Objects.requireNonNull(d.species().get("SF")).group()),
                () -> assertNull(Objects.requireNonNull(d.species().get("SF")).curve()),
                () -> assertTrue(d.volumes().containsKey("true firs")),
                () -> assertEquals(10, d.diameterClassCm()));
    }

    @Test
    void pilotPlanTakesItsVariationFromTheTally() throws IOException {
        Design d = read("pilot-plan.toml");
        assertEquals(PlanSettings.of(OptionalDouble.empty(), Pilot.TALLY, FinitePopulation.CORRECT), d.plan());
        assertEquals(Attribute.BASAL_AREA, d.targetAttribute());
    }

    @Test
    void hashIsThatOfTheFile() throws IOException {
        Design d = read("demo.toml");
        assertEquals(64, d.sha256().length());
        assertNotNull(d.file());
        assertTrue(d.text().startsWith("# Demonstration stand"));
    }
}
