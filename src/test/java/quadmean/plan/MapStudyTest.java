package quadmean.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.number;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quadmean.model.MappedStem;
import quadmean.model.PlotDesign;
import quadmean.model.StemMap;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.Unit;

class MapStudyTest {
    private static final List<PlotDesign> KINDS = Stream.concat(
                    Stream.of(0.05, 0.1, 0.2)
                            .map(a -> (PlotDesign) new PlotDesign.Fixed(Unit.ACRE.convert(a, Unit.HECTARE))),
                    Stream.of(20, 10, 5).map(f -> (PlotDesign) new PlotDesign.Point(f / 4.356)))
            .toList();

    private static StemMap longleaf() {
        return new StemMap(
                "longleaf.csv",
                0,
                0,
                200,
                200,
                ReferenceFiles.csv("longleaf.csv").stream()
                        .map(r -> new MappedStem(number(r, "x_m"), number(r, "y_m"), number(r, "dbh_cm")))
                        .toList());
    }

    /** Script plot-sizes.R, which tries each stem at each place. */
    @Test
    void variationOnTheLongleafMapIsThatOfR() {
        JsonNode r = ReferenceFiles.json("plot-sizes.json");
        MapStudy ofBasalArea = MapStudy.of(longleaf(), Attribute.BASAL_AREA, KINDS);
        MapStudy ofTrees = MapStudy.of(longleaf(), Attribute.TREES, KINDS);
        Tolerance.R_SCRIPT.check(number(r.get("reach_m")), ofTrees.reachM(), "reach");
        for (int i = 0; i < KINDS.size(); i++) {
            JsonNode expected = r.get("kinds").get(i);
            String kind = KINDS.get(i).toString();
            Tolerance t = Tolerance.R_SCRIPT;
            t.check(
                    number(expected.get("cv_basal_area_percent")),
                    ofBasalArea.of(KINDS.get(i)).cvPercent(),
                    kind);
            t.check(
                    number(expected.get("cv_trees_percent")),
                    ofTrees.of(KINDS.get(i)).cvPercent(),
                    kind);
            t.check(
                    number(expected.get("trees_per_plot")),
                    ofTrees.of(KINDS.get(i)).treesPerPlot(),
                    kind);
        }
    }

    /**
     * With one stem a share p of the places has it: mean p, variance p·(1 - p) with divisor n. Gauss: a circle of radius r on a
     * square grid holds between π(r - √½)² and π(r + √½)² of its places.
     */
    @Test
    void oneStemIsAYesOrNo() {
        StemMap map = new StemMap("one", -10, 20, 150, 180, List.of(new MappedStem(67, 99, 30)));
        for (PlotDesign plot : KINDS) {
            MapStudy study = MapStudy.of(map, Attribute.TREES, List.of(plot));
            MapStudy.Finding finding = study.of(plot);
            double n = study.places();
            double p = finding.treesPerPlot();
            double radius = study.reachM() / ((160 - 2 * study.reachM()) / Math.sqrt(n));
            Tolerance.ROUNDING.check(100 * Math.sqrt((1 - p) / p * n / (n - 1)), finding.cvPercent(), plot + " CV");
            assertTrue(p * n >= Math.PI * Math.pow(radius - Math.sqrt(0.5), 2), plot + ": " + p);
            assertTrue(p * n <= Math.PI * Math.pow(radius + Math.sqrt(0.5), 2), plot + ": " + p);
        }
    }

    @Test
    void stemsOutOfReachLeaveNoVariation() {
        StemMap map = new StemMap("corner", 0, 0, 100, 100, List.of(new MappedStem(0, 0, 10)));
        PlotDesign plot = new PlotDesign.Fixed(0.1);
        assertTrue(Double.isNaN(
                MapStudy.of(map, Attribute.TREES, List.of(plot)).of(plot).cvPercent()));
    }

    @Test
    void theLargestPlotNeedsRoom() {
        StemMap map = new StemMap("small", 0, 0, 30, 200, List.of(new MappedStem(1, 1, 40)));
        assertEquals(
                "the map is 30.0 m by 200.0 m, and the largest plot compared reaches 17.8 m to each side of its centre",
                MapStudy.fault(map, List.of(new PlotDesign.Fixed(0.01), new PlotDesign.Fixed(0.1)))
                        .orElseThrow());
        assertTrue(MapStudy.fault(map, List.of(new PlotDesign.Fixed(0.01))).isEmpty());
        assertTrue(MapStudy.fault(map, List.of(new PlotDesign.Point(1))).isPresent(), "20 m for 40 cm");
        assertTrue(MapStudy.fault(map, List.of(new PlotDesign.Point(4))).isEmpty(), "10 m for 40 cm");
    }
}
