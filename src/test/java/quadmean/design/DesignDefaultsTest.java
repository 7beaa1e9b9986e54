package quadmean.design;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quadmean.design.PlanSettings.Pilot;
import quadmean.model.CurveForm;
import quadmean.model.DegreesRule;
import quadmean.model.FinitePopulation;
import quadmean.model.PlotDesign;
import quadmean.model.PlotDesign.Ring;
import quadmean.model.Policy;
import quadmean.model.Rule;
import quadmean.model.SelectionMethod;
import quadmean.model.VolumeSpec;
import quadmean.support.SmallDesign;
import quadmean.units.Attribute;

/** Defaults as the tables of {@code designs/README.md} state them, and units of plots and rings. */
class DesignDefaultsTest {
    private static final SmallDesign SMALL = new SmallDesign();
    private static final String HONER =
            "[volume.\"*\"]\nform = \"honer\"\na = 0.7\nb = 344\ndbh_unit = \"in\"\nheight_unit = \"ft\"\n"
                    + "volume_unit = \"ft3\"\nsource = \"S\"\nstanding = \"invented\"\n";

    /** What the table says is kept by default. */
    private static final Set<Rule> KEPT = Set.of(
            Rule.SPECIES_RECODED,
            Rule.FORMAT_DETECTED,
            Rule.FORMULA_VALUE,
            Rule.DBH_CLASS,
            Rule.STAND_WITHOUT_PLOTS,
            Rule.BOUNDARY_AREA,
            Rule.BOUNDARY_READ);

    @TempDir
    Path folder;

    @Test
    void whatTheDesignLeavesOutIsFilledIn() {
        Design d = SMALL.valid(folder);
        assertAll(
                () -> assertEquals("", d.date()),
                () -> assertEquals(0.95, d.confidence()),
                () -> assertEquals(10, d.targetErrorPercent()),
                () -> assertEquals(Attribute.BASAL_AREA, d.targetAttribute()),
                () -> assertEquals(1, d.seed()),
                () -> assertEquals(SelectionMethod.SIMPLE_RANDOM, d.selection()),
                () -> assertEquals(FinitePopulation.IGNORE, d.finitePopulation()),
                () -> assertEquals(DegreesRule.PLOTS_MINUS_STRATA, d.degreesRule()),
                () -> assertEquals(',', d.tallies().get(0).separator()),
                () -> assertEquals('.', d.tallies().get(0).decimal()),
                () -> assertEquals(new Design.HeightEntry(1.3, 10, 4, ReadingSettings.COMMON_PRACTICE), d.height()),
                () -> assertEquals(Map.of(), d.policies()),
                () -> assertEquals(
                        PlanSettings.of(OptionalDouble.empty(), Pilot.NONE, FinitePopulation.IGNORE), d.plan()),
                () -> assertEquals(5, d.diameterClassCm()),
                () -> assertEquals(List.of(), d.strata().get(0).plots()));
    }

    @Test
    void usDefaultsAreFeetAndInches() {
        Design d = SMALL.with("\"metric\"", "\"us\"").valid(folder);
        assertEquals(4.5, d.height().breastHeight());
        assertEquals(5.08, d.diameterClassCm(), 1e-12, "2 in");
    }

    @Test
    void targetIsVolumeOnceThereIsAnEquation() {
        assertEquals(Attribute.VOLUME, SMALL.plus(HONER).valid(folder).targetAttribute());
    }

    @Test
    void speciesAndStrataAreCalledByTheirCodesWhereTheyHaveNoName() {
        Design d = SMALL.with("area = 10\n", "")
                .with("name = \"Douglas-fir\"", "group = \"g\"")
                .plus("[selection]\nmethod = \"stratified\"\n[[stratum]]\ncode = \"N\"\narea = 1\n[[stratum]]\n"
                        + "code = \"S\"\narea = 2")
                .valid(folder);
        assertEquals("N", d.stratumList().get(0).name());
        assertEquals("PSME", d.speciesName("PSME"));
    }

    @ParameterizedTest
    @EnumSource(Rule.class)
    void allRulesRefuseUnlessTheTableSaysOtherwise(Rule rule) {
        boolean stated = KEPT.contains(rule);
        assertEquals(stated ? Policy.KEEP : Policy.REFUSE, SMALL.valid(folder).policy(rule));
    }

    @Test
    void radiusMakesACircle() {
        PlotDesign plot =
                SMALL.with("area = 0.1", "radius = 12.62").valid(folder).plot();
        // π·12.62² = 500.3439 m²
        assertEquals(0.05003439, ((PlotDesign.Fixed) plot).areaHa(), 5e-9);
    }

    @Test
    void basalAreaFactorInFeetIsConverted() {
        PlotDesign plot = SMALL.with("\"metric\"", "\"us\"")
                .with("kind = \"fixed\"\narea = 0.1", "kind = \"point\"\nbasal_area_factor = 20")
                .valid(folder)
                .plot();
        // 1 ft²/ac = 1/4.356 m²/ha
        assertEquals(20 / 4.356, ((PlotDesign.Point) plot).basalAreaFactor(), 1e-12);
    }

    @Test
    void ringsTakeRadiusOrArea() {
        PlotDesign plot = SMALL.with("\"fixed\"\narea = 0.1", "\"nested\"")
                .plus("[[plot.ring]]\narea = 0.01\n[[plot.ring]]\nmin_dbh = 30\nradius = 20")
                .valid(folder)
                .plot();
        List<Ring> rings = ((PlotDesign.Nested) plot).rings();
        assertEquals(new Ring(0, 0.01), rings.get(0));
        assertEquals(30, rings.get(1).minDbhCm());
        assertEquals(Math.PI * 400 / 10_000, rings.get(1).areaHa(), 1e-15);
    }

    @Test
    void separatorsDecimalsCurvesAndLogarithmsAreRead() {
        Design d = SMALL.with("\"tally.csv\"", "\"tally.csv\"\nseparator = \"tab\"\ndecimal = \",\"")
                .plus("curve = \"wykoff\"\n[species.ABGR]\ncurve = \"auto\"\n"
                        + HONER.replace("\"honer\"", "\"schumacher_hall\"\nc = 1\nlog_base = \"e\"\nresidual_sd = 0.2"))
                .valid(folder);
        VolumeSpec volume = Objects.requireNonNull(d.volumes().get("*"));
        assertAll(
                () -> assertEquals('\t', d.tallies().get(0).separator()),
                () -> assertEquals(',', d.tallies().get(0).decimal()),
                () -> assertEquals(
                        CurveForm.WYKOFF,
                        Objects.requireNonNull(d.species().get("PSME")).curve()),
                () -> assertNull(Objects.requireNonNull(d.species().get("ABGR")).curve()),
                () -> assertEquals(VolumeSpec.LogBase.E, volume.logBase()),
                () -> assertEquals(0.2, volume.residualSd()));
    }

    @Test
    void plotListsTakeRangesAndNames() {
        Design d =
                SMALL.plus("[selection]\nplots = [\"1-3\", \" 7 \", \"A-1\"]").valid(folder);
        assertEquals(List.of("1", "2", "3", "7", "A-1"), d.strata().get(0).plots());
    }
}
