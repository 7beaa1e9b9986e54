package quadmean.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.cruise.Cruise;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.CruiseRun;
import quadmean.cruise.RepeatedCruise;
import quadmean.design.Design;
import quadmean.estimate.EstimateRow;
import quadmean.model.FieldHeight;
import quadmean.model.IntervalRule;
import quadmean.model.Plot;
import quadmean.model.Tally;
import quadmean.model.Tree;
import quadmean.simulate.Trials.Stand;

/** A cruise on paper, written down as a crew would and worked through as a real one, gives the same numbers. */
class SameAsRealCruiseTest {
    private static final double DIGITS = 1e-9;

    private static final String HEAD = """
            schema = 1
            [cruise]
            name = "On paper"
            units = "metric"
            area = 6
            target_attribute = "volume"
            [species.PIPO]
            [species.ABCO]
            [height]
            calibrate = "never"
            off_curve = 1000
            [policy]
            unit-slip = "keep"
            dbh-unlikely = "keep"
            height-off-curve = "keep"
            [output]
            sheet_height_every = 3
            [volume."*"]
            form = "schumacher_hall"
            log_base = "e"
            a = -10.1
            b = 2
            c = 1
            dbh_unit = "cm"
            height_unit = "m"
            volume_unit = "m3"
            source = "made up"
            standing = "invented"
            """;

    private static final String TALLY = """
            [[tally]]
            file = "tally.csv"
            [tally.columns]
            plot = "plot"
            species = "species"
            dbh = { name = "dbh", unit = "cm" }
            height = { name = "height", unit = "m" }
            edge = "edge"
            """;

    @TempDir
    private Path folder;

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.13f", value);
    }

    private static String csv(Tally tally) {
        List<String> lines = new ArrayList<>(List.of("plot,species,dbh,height,edge"));
        for (Plot plot : tally.plots()) {
            for (Tree t : plot.trees()) {
                FieldHeight h = t.height();
                lines.add(String.join(
                        ",",
                        plot.id(),
                        t.species(),
                        number(t.dbhCm()),
                        h == null ? "" : number(h.metres()),
                        String.valueOf(t.detail().edge())));
            }
            plot.counted()
                    .forEach(c -> lines.add(
                            plot.id() + "," + c.species() + ",,," + c.detail().edge()));
            if (plot.trees().isEmpty() && plot.counted().isEmpty()) {
                lines.add(plot.id() + ",,,,");
            }
        }
        return String.join("\n", lines) + "\n";
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "kind = \"point\"\nbasal_area_factor = 4\nboundary = \"mirage\"\n",
                "kind = \"point\"\nbasal_area_factor = 4\nmeasure_factor = 12\nboundary = \"mirage\"\n",
                "kind = \"fixed\"\narea = 0.05\nboundary = \"walkthrough\"\n"
            })
    void theSameTallyGivesTheSameRows(String plot) throws IOException {
        String text = HEAD + "[plot]\n" + plot + "[simulate]\nplots = 15\n";
        Design design = Trials.design(folder, text);
        Forest forest = Stand.CLUSTERED.forest(design);
        PaperDesign paper = PaperDesign.of(design, forest, 1);
        Tally tally =
                new PaperCrew(paper, forest).cruise(new SplittableRandom(5)).tally();
        List<EstimateRow> onPaper = RepeatedCruise.of(paper.design())
                .rows(tally, EnumSet.of(IntervalRule.STUDENT_T), 1)
                .get(IntervalRule.STUDENT_T);
        Files.writeString(folder.resolve("tally.csv"), csv(tally));
        CruiseRun run = Cruise.run(Trials.design(folder, text + TALLY));
        CruiseResult real = run.result();
        assertNotNull(real, () -> run.tally().problems().toString());
        assertTrue(onPaper.size() >= 7, "trees, basal area and volume in two ways, and the diameter");
        for (EstimateRow row : onPaper) {
            EstimateRow other = real.estimate()
                    .row(EstimateRow.ALL, EstimateRow.ALL, row.attribute(), row.basis())
                    .orElseThrow();
            String what = row.attribute() + " " + row.basis();
            assertEquals(other.mean(), row.mean(), DIGITS * Math.abs(other.mean()), what);
            assertEquals(other.se(), row.se(), DIGITS * other.se(), what);
            assertEquals(other.upper(), row.upper(), DIGITS * other.upper(), what);
        }
    }
}
