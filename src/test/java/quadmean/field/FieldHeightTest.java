package quadmean.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.model.FieldHeight;
import quadmean.model.Tree;
import quadmean.support.Tolerance;

/** Heights that come out of tally rows, by every way a crew reads them. */
class FieldHeightTest {
    @TempDir
    Path folder;

    /**
     * Formulary examples, computed from the definitions: 30 m, +72 %, -6 %; tape 32 m on a 20 % slope, +65 %, -22 %. The
     * laser and the tape to the base follow from the same tree seen from 30 m: slope distance 30·√(1 + tan²).
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "top,base,distance | 72,-6,30 | 23.40",
                "top,base,slope_distance,ground_slope | 65,-22,32,20 | 27.299",
                "top,base,base_distance | 72,-6,30.0539515538 | 23.40",
                "top,base,top_distance,base_distance | 72,-6,36.9669311133,30.0539515538 | 23.40",
                "top,base,distance,top_2,base_2,distance_2 | 72,-6,30,78,-6,30 | 24.30"
            })
    void everyWayOfReading(String columns, String values, double expected) throws IOException {
        Tolerance.printed(2).check(expected, height(columns, values).metres(), columns);
    }

    /** Percent scale, 20 m, half a point on both marks: 20·√2·0.5/100 = 0.141 m (formulary 6.2), here 0.25° and 0.10 m. */
    @Test
    void theErrorOfAReadingComesWithIt() throws IOException {
        FieldHeight height = height("top,base,distance", "72,-6,30");
        // dH² = (H/D·0.1)² + (D·sec²α·σ)² + (D·sec²β·σ)², σ = 0.25° in radians
        double sigma = Math.toRadians(0.25);
        double expected = Math.sqrt(Math.pow(23.4 / 30 * 0.1, 2)
                + Math.pow(30 * (1 + 0.72 * 0.72) * sigma, 2)
                + Math.pow(30 * (1 + 0.06 * 0.06) * sigma, 2));
        Tolerance.relative("the same formula by hand", 1e-9).check(expected, height.sdM(), "sd");
    }

    @Test
    void aDistanceShorterThanTheTreeIsRemarkedWithABetterOne() throws IOException {
        List<String> remarks = height("top,base,distance", "160,-8,15").remarks();
        assertTrue(remarks.get(0).startsWith("distance-short: "), remarks.toString());
        assertTrue(remarks.get(1).startsWith("angle-steep: "), remarks.toString());
        assertTrue(remarks.get(remarks.size() - 1).matches("best distance about \\d+ m"), remarks.toString());
        assertEquals(List.of(), height("top,base,distance", "72,-5,30").remarks());
    }

    @Test
    void readingsThatDisagreeAreRemarked() throws IOException {
        List<String> remarks =
                height("top,base,distance,top_2,base_2", "72,-5,30,78,-5").remarks();
        assertTrue(remarks.get(0).startsWith("readings-disagree: "), remarks.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "top,base,distance,merchantable_top | 72,-6,30,44 | 15.0",
                "top,base,distance,merchantable_height | 72,-6,30,14.5 | 14.5"
            })
    void merchantableHeightIsTheSameSightingToAnotherMark(String columns, String values, double expected)
            throws IOException {
        Tolerance.ROUNDING.check(
                expected, tree(columns, values).detail().merchantableM().orElseThrow(), columns);
    }

    private FieldHeight height(String columns, String values) throws IOException {
        return Objects.requireNonNull(tree(columns, values).height());
    }

    private Tree tree(String columns, String values) throws IOException {
        String csv = "plot,tree,species,dbh," + columns.strip() + "\n1,1,PSME,30," + values.strip() + "\n";
        var tally = new TallyCase("height", List.of(), csv, List.of()).read(folder);
        assertEquals(List.of(), tally.problems());
        return tally.plots().get(0).trees().get(0);
    }
}
