package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.number;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.support.ReferenceFiles;
import quadmean.support.SmallDesign;
import quadmean.support.Tolerance;

/** Kinds of plot tried out on a pilot whose trees have their distance from the centre: 16 circles of 0.1 ha on the longleaf map. */
class PlanKindsPilotTest {
    private static final String KINDS = """
            [plan]
            pilot = "tally"
            [plan.kinds]
            plot_areas = [0.02, 0.05, 0.1, 0.2]
            basal_area_factors = [9, 6, 2]
            basal_area = 12
            trees = 146
            """;

    @TempDir
    Path folder;

    /** Every tree within the radius of 0.1 ha of its centre; {@code unknown} trees are without their distance. */
    private static String pilot(double radius, int unknown) {
        StringBuilder tally = new StringBuilder("plot,tree,species,dbh,distance_m\n");
        int left = unknown;
        for (int plot = 0; plot < 16; plot++) {
            int tree = 0;
            for (var row : ReferenceFiles.csv("longleaf.csv")) {
                double dx = number(row, "x_m") - 25 - 50 * (plot % 4);
                double dy = number(row, "y_m") - 25 - 50 * Math.floorDiv(plot, 4);
                double distance = Math.hypot(dx, dy);
                if (distance <= radius) {
                    String written = left-- > 0 ? "" : String.format(Locale.ROOT, "%.12f", distance);
                    tally.append(String.join(",", "" + plot, "" + ++tree, "PSME", row.getField("dbh_cm"), written))
                            .append('\n');
                }
            }
        }
        return tally.toString();
    }

    private Run plan(SmallDesign design, String tally) throws IOException {
        SmallDesign distances =
                design.with("height = { name = \"height\", unit = \"m\" }", "point_distance = \"distance_m\"");
        Path file = Run.cruise(folder, distances, tally);
        return Run.of("plan", file, "--out", folder.resolve("out"));
    }

    private JsonNode options() throws IOException {
        return new ObjectMapper()
                .readTree(folder.resolve("out/plan.json").toFile())
                .at("/kinds/options");
    }

    /** Script plot-sizes.R. What reaches beyond 17.84 m, 0.2 ha and factor 2 for the thickest tree, cannot be tried. */
    @Test
    void variationIsThatOfR() throws IOException {
        Run run = plan(new SmallDesign().plus(KINDS), pilot(Math.sqrt(1000 / Math.PI), 0));
        run.assertCode(0);
        JsonNode r = ReferenceFiles.json("plot-sizes.json").get("pilot_cv_percent");
        int[] at = {0, 1, 2, 4, 5};
        for (int i = 0; i < at.length; i++) {
            JsonNode option = options().get(at[i]);
            Tolerance.R_SCRIPT.check(
                    number(r.get(i)),
                    number(option.get("cvByPilotPercent")),
                    option.get("name").asText());
        }
        assertTrue(options().get(3).get("cvByPilotPercent").isNull(), "0.2 ha");
        assertTrue(options().get(6).get("cvByPilotPercent").isNull(), "factor 2");
        assertTrue(run.out().contains("16 plots of the pilot"), run.out());
    }

    /** At the pilot's own plot it shows what the plan starts from. */
    @Test
    void thePilotsOwnPlotVariesAsThePlanSays() throws IOException {
        plan(new SmallDesign().plus(KINDS), pilot(Math.sqrt(1000 / Math.PI), 0)).assertCode(0);
        JsonNode own = options().get(2);
        Tolerance.ROUNDING.check(
                number(own.get("cvByRulePercent")), number(own.get("cvByPilotPercent")), "CV of 0.1 ha");
    }

    @Test
    void pointsTakeLargerFactors() throws IOException {
        SmallDesign point = new SmallDesign()
                .plus(KINDS)
                .with(
                        "kind = \"fixed\"\narea = 0.1",
                        "kind = \"point\"\nbasal_area_factor = 6\nlimiting_distance = \"centre\"");
        Run run = plan(point, near6());
        run.assertCode(0);
        JsonNode r = ReferenceFiles.json("plot-sizes.json").get("pilot_cv_percent");
        Tolerance.R_SCRIPT.check(number(r.get(3)), number(options().get(4).get("cvByPilotPercent")), "factor 9");
        Tolerance.R_SCRIPT.check(number(r.get(4)), number(options().get(5).get("cvByPilotPercent")), "factor 6");
        assertTrue(options().get(0).get("cvByPilotPercent").isNull(), "a point has no fixed plots inside");
    }

    /** The trees that a gauge of factor 6 chooses, which all stand within 17.84 m. */
    private static String near6() {
        StringBuilder tally = new StringBuilder();
        pilot(Math.sqrt(1000 / Math.PI), 0).lines().forEach(line -> {
            String[] cell = line.split(",");
            boolean header = cell[0].equals("plot");
            if (header || Double.parseDouble(cell[4]) <= Double.parseDouble(cell[3]) / 2 / Math.sqrt(6)) {
                tally.append(line).append('\n');
            }
        });
        for (int plot = 0; plot < 16; plot++) {
            if (!tally.toString().contains("\n" + plot + ",")) {
                tally.append(plot).append(",,,,\n");
            }
        }
        return tally.toString();
    }

    @Test
    void aTreeWithoutDistanceEndsTheTrial() throws IOException {
        Run run = plan(new SmallDesign().plus(KINDS), pilot(Math.sqrt(1000 / Math.PI), 2));
        run.assertCode(0);
        assertTrue(options().get(0).get("cvByPilotPercent").isNull(), run.out());
        assertTrue(run.out().contains("2 of ") && run.out().contains("have no distance"), run.out());
    }
}
