package quadmean.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quadmean.chart.SampleCruise;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.WoodUsed;
import quadmean.design.EquationLibrary;
import quadmean.model.Provenance;
import quadmean.model.Standing;
import quadmean.model.ValidRange;
import quadmean.model.VolumeForm;
import quadmean.model.VolumeSpec;
import quadmean.model.VolumeSpec.LogBase;
import quadmean.model.VolumeTable;
import quadmean.units.Unit;

/** Equations as they are printed and written: with library name, sizes, source and standing. */
class VolumeSectionTest {
    private static final VolumeSpec CHERRY = library("black-cherry-1976/schumacher-hall");
    private static final VolumeSpec TABLE = new VolumeSpec(
            "ACSA3",
            VolumeForm.TABLE,
            List.of(),
            Optional.of(new VolumeTable(
                    List.of(10.0, 20.0),
                    VolumeTable.Entry.LOGS,
                    List.of(1.0, 3.5),
                    List.of(List.of(3.0, 5.0), List.of(9.0, 14.0)))),
            LogBase.E,
            0,
            Unit.INCH,
            Unit.METRE,
            Unit.CUBIC_FOOT,
            ValidRange.NOT_STATED,
            new Provenance("made up", Standing.INVENTED),
            "");

    private static VolumeSpec library(String name) {
        return (VolumeSpec) EquationLibrary.shipped().find(name).orElseThrow().equation();
    }

    private static CruiseResult with(Map<String, VolumeSpec> equations) {
        CruiseResult r = SampleCruise.us();
        return new CruiseResult(
                r.design(),
                r.tally(),
                r.curves(),
                r.trees(),
                r.wood(),
                WoodUsed.ofVolumes(equations),
                r.estimate(),
                r.remeasure());
    }

    @Test
    void thePageNamesLibrarySizesAndWhatATableHolds() {
        String page = VolumeSection.markup(with(Map.of("PRSE2", CHERRY.forCode("PRSE2"), "ACSA3", TABLE)))
                .replaceAll("<[^>]+>", " ")
                .replace('\u00a0', ' ');
        for (String said : List.of(
                "Library: black-cherry-1976/schumacher-hall.",
                "D from 8.3 to 20.6 in, H from 63 to 87 ft",
                "corrected for a residual standard deviation of 0.081386",
                "verified",
                "2 × 2 volumes, D 10 to 20, L 1 to 3.5",
                "D in, L 16-ft logs, V ft³",
                "sizes not stated",
                "invented")) {
            assertTrue(page.contains(said), said + " in " + page);
        }
    }

    @Test
    void theJsonHasWhatThePageSays() {
        JsonNode list = JsonEquations.of(Map.of("PRSE2", CHERRY.forCode("PRSE2"), "ACSA3", TABLE));
        JsonNode table = list.get(0);
        JsonNode cherry = list.get(1);
        assertEquals("black-cherry-1976/schumacher-hall", cherry.get("library").asText());
        assertEquals(8.3 * 2.54, cherry.get("minDbhCm").asDouble(), 1e-12);
        assertEquals(87 * 0.3048, cherry.get("maxHeightM").asDouble(), 1e-12);
        assertEquals(14, table.at("/table/volumes/1/1").asDouble());
        assertEquals(3.5, table.at("/table/logs/1").asDouble());
        for (String key : List.of("library", "minDbhCm", "maxHeightM", "heightUnit")) {
            assertFalse(table.has(key), key);
        }
    }
}
